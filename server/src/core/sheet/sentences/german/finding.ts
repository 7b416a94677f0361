import type { SignedTerm } from '../../../model/values';
import type { Prose } from '../../sheet';
import { capitalised, closed, join, type Piece, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { foundWord } from './foundWords';
import { germanGrammar as grammar, named } from './grammar';
import { decimalComma } from './numbers';
import { act, helpedBy, parts, sentence, things, trimmed } from './words';

/** Verbs that find something out. */
export const finding: Pick<
  VerbWriters,
  'identify' | 'inspect' | 'measure' | 'calculate' | 'choose' | 'balance' | 'check'
> = {
  identify: (one, facts) => {
    const found = grammar.or(facts.findable.map((value) => [strong(foundWord(value))]));
    return sentences(
      act(value(one.identify, facts), helpedBy(one, facts), ' feststellen', found.length > 0 && join(': ', found)),
      'Zutreffendes ankreuzen.',
    );
  },
  inspect: (one, facts) => {
    const looked = (one.lookFor ?? []).map((item) => asItem(facts.prose(item)));
    return sentences(
      act(parts(one.inspect, facts), helpedBy(one, facts), ' prüfen'),
      looked.length > 0 && join('Achten auf: ', inspectionList(looked), '.'),
    );
  },
  measure: (one, facts) =>
    sentences(
      act(value(one.measure, facts), helpedBy(one, facts), atPlaces(facts.places), ' messen'),
      isNumbered(facts.places) ? undefined : sentence('Messstellen: ', grammar.and(facts.places.map((at) => join(at)))),
    ),
  calculate: (one, facts) =>
    sentence(
      value(one.calculate, facts),
      ' berechnen',
      facts.from.length > 0 && join(': ', formulaWords(facts.from, facts)),
    ),
  choose: (one, facts) => {
    const size = one.size ?? [];
    return sentences(
      sentence(one.choose ? things([{ ...facts.part(one.choose), count: 1 }]) : '…', ' auswählen'),
      size.length > 0 && join('Größe: ', formulaWords(size, facts), '.'),
      sizesWords(facts),
    );
  },
  balance: (one, facts) =>
    act(
      value(one.balance, facts),
      helpedBy(one, facts),
      facts.grade && join(' auf Gütestufe ', strong(decimalComma(facts.grade))),
      ' auswuchten',
    ),
  check: (one, facts) => {
    const said = facts.check ?? (one.check?.is === 'prose' ? facts.prose(one.check.prose) : join('…'));
    const help = helpedBy(one, facts);
    const start = help.length === 0 ? join('Prüfen') : capitalised(join(...trimmed(help), ' prüfen'));
    return join(start, ': ', closed(capitalised(said)));
  },
};

function value(ref: Parameters<SentenceFacts['value']>[0] | undefined, facts: SentenceFacts): Prose {
  return ref === undefined ? join('…') : named(facts.value(ref), 'accusative');
}

/** Semicolons where an item has a comma or an `und` of its own, or is in another language. */
function inspectionList(items: readonly Prose[]): Prose {
  const parted =
    items.length > 1 &&
    items.some((item) => item.some(({ text, lang }) => lang !== undefined || /,|\b(?:und|oder)\b/u.test(text)));
  if (!parted) return grammar.or(items);
  return join(...items.flatMap((item, place) => (place === 0 ? [item] : ['; ', item])));
}

/** What starts a sentence and is no noun: an article, or an adjective before a noun. */
const SMALL_AT_HEART = /^(?:\p{Lu}\p{Ll}*(?:e|er|es|en)(?=\s\p{Lu})|(?:Ein|Eine|Kein|Keine|Der|Die|Das)(?=\s))/u;

/** An item of a list within a sentence starts small, unless it starts with a noun, and is not closed. */
function asItem(written: Prose): Prose {
  const [first, ...rest] = written;
  if (first === undefined) return [];
  const start = first.text.replace(SMALL_AT_HEART, (word) => word.toLowerCase());
  const runs = [{ ...first, text: start }, ...rest];
  const last = runs.at(-1) ?? first;
  return [...runs.slice(0, -1), { ...last, text: last.text.replace(/\.\s*$/u, '') }];
}

function isNumbered(places: readonly string[]): boolean {
  return places.every((place, index) => place === String(index + 1));
}

function atPlaces(places: readonly string[]): Piece {
  if (places.length === 0 || !isNumbered(places)) return undefined;
  return places.length === 1 ? ' an 1 Stelle' : ` an ${places.length} Stellen`;
}

function formulaWords(terms: readonly SignedTerm[], facts: SentenceFacts): Prose {
  const pieces = terms.map(facts.term).toSorted((a, b) => b.sign - a.sign);
  return join(
    ...pieces.flatMap(({ sign, name }, place) =>
      place === 0 ? [sign < 0 && 'minus ', name] : [sign < 0 ? ' minus ' : ' plus ', name],
    ),
  );
}

function sizesWords({ sizes }: SentenceFacts): Piece {
  if (sizes === undefined) return undefined;
  const step = sizes.step === undefined ? '' : ` in Stufen von ${sizes.step}`;
  return `Lieferbare Größen: ${sizes.range}${step}.`;
}
