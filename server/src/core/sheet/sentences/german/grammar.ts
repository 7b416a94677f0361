import type { Prose } from '../../sheet';
import { type Grammar, join, nameRun, plain, type Thing } from '../grammar';
import { mentioned } from './mentions';
import { article, type Determiner, decline, type GrammaticalCase, type Noun, nameIn, nounOf } from './nouns';

/** What a shop calls things: a name in a document means the same noun from one sentence to the next. */
const known = new Map<string, Noun | undefined>();
const MOST_KNOWN = 4096;

/** The noun of a thing; undefined for a name that is in another language or that nothing tells the gender of. */
export function nounOfThing({
  name,
  entry = name,
  language,
}: Pick<Thing, 'name' | 'entry' | 'language'>): Noun | undefined {
  if (language !== undefined && language !== 'de') return undefined;
  if (known.has(entry)) return known.get(entry);
  if (known.size >= MOST_KNOWN) known.clear();
  const noun = nounOf(entry);
  known.set(entry, noun);
  return noun;
}

export function isPlural(thing: Thing): boolean {
  return nounOfThing(thing)?.isPlural === true || isCounted(thing);
}

function isCounted({ count }: Thing): boolean {
  return count !== undefined && count > 1;
}

/** A name without its article, in a case: `8-mm-Einsatz`, `4 Deckelschrauben`; with `neu`, `4 neue Deckelschrauben`. */
export function named(thing: Thing, of: GrammaticalCase, { isNew = false } = {}): Prose {
  const noun = nounOfThing(thing);
  const count = isCounted(thing) ? counted(thing) : '';
  if (noun === undefined) return foreign(thing, isNew);
  if (count !== '' && noun.headPlural === undefined) return join(`${thing.count} × `, name(thing, noun, of, isNew));
  return join(count, name(thing, noun, of, isNew));
}

const WORDS = ['', '', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn', 'elf', 'zwölf'];

/** A line never ends behind a figure. */
const NO_BREAK = '\u00a0';

/** The number with the space behind it; a word where a figure would run into the next: `zwei 8-mm-Einsätze`. */
function counted({ name: next, count = 1 }: Thing): string {
  return /^\d/u.test(next) ? `${WORDS[count] ?? count} ` : `${count}${NO_BREAK}`;
}

function name(thing: Thing, noun: Noun, of: GrammaticalCase, isNew: boolean): Prose {
  const plural = isCounted(thing) && noun.headPlural !== undefined;
  const whole = decline(noun, of, 'none', plural, isNew ? ['neu'] : []);
  if (!isNew) return [nameRun(thing, whole)];
  const adjective = /^\S+\s/u.exec(whole)?.[0] ?? '';
  return join(adjective, nameRun(thing, whole.slice(adjective.length)));
}

/** A name that no rule of German fits stands as it is written. */
function foreign(thing: Thing, isNew: boolean): Prose {
  return join(isCounted(thing) ? `${thing.count} × ` : '', nameRun(thing, thing.name), isNew && ' (neu)');
}

/** With its article, where its gender is known: `der Welle`, `die 4 Deckelschrauben`, `die Verdichtermutter`. */
export function withDefinite(thing: Thing, of: GrammaticalCase): Prose {
  const noun = nounOfThing(thing);
  if (noun === undefined) return named(thing, of);
  const plural = (isCounted(thing) && noun.headPlural !== undefined) || noun.isPlural;
  if (isCounted(thing) && !plural) return named(thing, of);
  const count = isCounted(thing) ? counted(thing) : '';
  return join(
    `${article(noun.gender, of, plural)} ${count}`,
    nameRun(thing, decline(noun, of, 'definite', isCounted(thing))),
  );
}

const CONTRACTED: Readonly<Record<string, string>> = {
  'in dem': 'im',
  'an dem': 'am',
  'bei dem': 'beim',
  'von dem': 'vom',
  'zu dem': 'zum',
  'zu der': 'zur',
};

/** A preposition with what it governs, drawn together as German does: `im Ultraschallbad`, `an der Welle`. */
export function behind(preposition: string, thing: Thing, of: GrammaticalCase): Prose {
  return contracted(preposition, withDefinite(thing, of));
}

export function contracted(preposition: string, governed: Prose): Prose {
  const [first, ...rest] = governed;
  const [word = '', ...others] = (first?.text ?? '').split(' ');
  const short = CONTRACTED[`${preposition} ${word}`];
  if (first === undefined || short === undefined) return join(`${preposition} `, governed);
  return join({ ...first, text: [short, ...others].join(' ') }, rest);
}

/** Whose it is: ` der Verdichtermutter`, or ` von compressor nut` for a name without a gender. */
export function whose(things: readonly Thing[]): Prose {
  if (things.length === 0) return [];
  if (things.some((thing) => nounOfThing(thing) === undefined)) {
    return join(' von ', germanGrammar.and(things.map((thing) => named(thing, 'dative'))));
  }
  return join(' ', germanGrammar.and(things.map((thing) => withDefinite(thing, 'genitive'))));
}

const PHRASE = /^(?:(?<article>der|die|das|ein|eine)\s+)?(?<rest>.+)$/su;

/** Words of the writer, written in the first case, put into another; an article of theirs is left out or put before. */
export function phrase(written: Prose, of: GrammaticalCase, wanted: 'bare' | 'definite' | 'as written'): Prose {
  const [first, ...rest] = written;
  if (first === undefined || first.kind !== 'text' || first.lang !== undefined) return written;
  const { article: own, rest: words = first.text } = PHRASE.exec(first.text)?.groups ?? {};
  const isIndefinite = own === 'ein' || own === 'eine';
  const entry = own === undefined || isIndefinite ? words : first.text;
  const noun = nounOf(entry) ?? nounOf(words);
  if (noun === undefined) return wanted === 'bare' && own !== undefined && !isIndefinite ? join(words, rest) : written;
  const determiner = determinerOf(own, wanted, isIndefinite);
  const before =
    determiner === 'definite'
      ? `${article(noun.gender, of, noun.isPlural)} `
      : determiner === 'indefinite'
        ? `${indefinite(noun, of)} `
        : '';
  return join({ ...first, text: `${before}${decline(noun, of, determiner, noun.isPlural)}` }, rest);
}

function determinerOf(
  own: string | undefined,
  wanted: 'bare' | 'definite' | 'as written',
  isIndefinite: boolean,
): Determiner {
  if (isIndefinite) return 'indefinite';
  if (wanted === 'definite') return 'definite';
  return wanted === 'as written' && own !== undefined ? 'definite' : 'none';
}

function indefinite({ gender }: Noun, of: GrammaticalCase): string {
  if (gender === 'f') return of === 'dative' || of === 'genitive' ? 'einer' : 'eine';
  if (of === 'accusative' && gender === 'm') return 'einen';
  if (of === 'dative') return 'einem';
  return of === 'genitive' ? 'eines' : 'ein';
}

function listed(items: readonly Prose[], last: string): Prose {
  const [first, ...rest] = items;
  if (first === undefined) return [];
  return join(first, ...rest.flatMap((item, place) => [place === rest.length - 1 ? ` ${last} ` : ', ', item]));
}

function pronounOf(things: readonly Thing[]): string {
  const [only, ...others] = things;
  if (only === undefined || others.length > 0 || isPlural(only)) return 'sie';
  const gender = nounOfThing(only)?.gender;
  if (gender === 'm') return 'er';
  return gender === 'f' ? 'sie' : 'es';
}

/** German of the workshop names things without an article: `Verdichtermutter anziehen`. */
export const germanGrammar: Grammar = {
  nameIn,
  the: (thing) => named(thing, 'nominative'),
  theNew: (thing) => named(thing, 'nominative', { isNew: true }),
  someOf: (count, thing) => {
    const of = thing.count === undefined ? '' : ` von ${thing.count}`;
    if (thing.count === undefined || thing.count < 2) return named({ ...thing, count }, 'accusative');
    const [, ...name] = named(thing, 'dative');
    return join(`${count}${of}${NO_BREAK}`, name);
  },
  bare: (thing) => [nameRun(thing, plain(named({ ...thing, count: 1 }, 'nominative')))],
  and: (items) => listed(items, 'und'),
  or: (items) => listed(items, 'oder'),
  withArticle: (written) => written,
  pronoun: pronounOf,
  mention: (thing, before) => {
    const noun = nounOfThing(thing);
    return [nameRun(thing, noun === undefined ? thing.name : mentioned(noun, before))];
  },
  // German writes its nouns with a capital, wherever they stand.
  asItem: (written) => written,
  series: (items) => items.join(', '),
};
