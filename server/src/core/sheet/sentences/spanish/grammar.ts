import type { Prose } from '../../sheet';
import { type Grammar, join, nameRun, plain, type Thing } from '../grammar';
import { type Noun, nounOf, pluralName, takesMasculineArticle } from './nouns';
import { nounOfThing } from './thingNouns';

const NUMBERS = [
  'cero',
  'uno',
  'dos',
  'tres',
  'cuatro',
  'cinco',
  'seis',
  'siete',
  'ocho',
  'nueve',
  'diez',
  'once',
  'doce',
];
const DETERMINERS =
  /^(?:el|la|los|las|un|una|unos|unas|este|esta|estos|estas|ese|esa|su|sus|cada|todo|toda|todos|todas|ambos|ambas|ningún|ninguna|uno|dos|tres|cuatro|cinco|seis|algunos|algunas)(?=\s|$)/iu;
/** Words after which a name stands without an article of its own: articles, what acts as one, and adjectives before it. */
const BEFORE_BARE_NAME =
  /(?:^|[\s(«“])(?:el|la|los|las|un|una|unos|unas|del|al|este|esta|estos|estas|ese|esa|su|sus|cada|ambos|ambas|ningún|ninguna|otro|otra|mismo|misma|nuevo|nueva|nuevos|nuevas|viejo|vieja|antiguo|antigua|primer|primera|segundo|segunda|último|última|dos|tres|cuatro|cinco|seis|sin|[\d.,]+)\s+$/iu;
const OPENED = /[(«“/]\s*$/u;

/** How a person writes a small count, agreeing with what is counted; figures from thirteen on. */
export function numberWord(count: number, gender: Noun['gender'] = 'm'): string {
  if (count === 1) return gender === 'f' ? 'una' : 'uno';
  return NUMBERS[count] ?? String(count);
}

/** `y`, but `e` before the sound of an i: `horquilla e hilo`; `hierro` starts with another sound. */
export function andWord(next: string): 'y' | 'e' {
  return /^(?:i(?![aeou])|í|hi(?![aeou])|hí)/iu.test(next) ? 'e' : 'y';
}

/** `o`, but `u` before the sound of an o, also in figures: `7 u 8`. */
export function orWord(next: string): 'o' | 'u' {
  return /^(?:h?[oó]|8|11(?!\d))/iu.test(next) ? 'u' : 'o';
}

export function isPlural(thing: Thing): boolean {
  return nounOfThing(thing).plural || (thing.count !== 1 && thing.count !== undefined);
}

export function isFeminine(thing: Thing): boolean {
  return nounOfThing(thing).gender === 'f';
}

/** `el`, `la`, `los` or `las` for the number that is meant; `adjective` says that one stands before the noun. */
export function articleFor(noun: Noun, plural: boolean, adjective = false): string {
  if (plural) return noun.gender === 'f' ? 'las' : 'los';
  return noun.gender === 'm' || (!adjective && takesMasculineArticle(noun)) ? 'el' : 'la';
}

function definite(thing: Thing, adjective: string): Prose {
  const noun = nounOfThing(thing);
  const plural = isPlural(thing);
  // A pair of pliers is one thing in the plural, and is not counted.
  const isCounted = thing.kind !== 'value' && thing.count !== undefined && thing.count > 1;
  const before = [
    ...(DETERMINERS.test(noun.name) ? [] : [articleFor(noun, plural, adjective !== '')]),
    ...(isCounted ? [numberWord(thing.count ?? 0, noun.gender)] : []),
    ...(adjective === '' ? [] : [agreeing(adjective, noun, plural)]),
  ];
  const words = plural ? pluralName(noun) : noun.name;
  return join(before.map((word) => `${word} `).join(''), nameRun(thing, words));
}

/** An adjective in -o that agrees with its noun: `nuevo`, `nueva`, `nuevos`, `nuevas`. */
export function agreeing(adjective: string, { gender }: Pick<Noun, 'gender'>, plural: boolean): string {
  return `${adjective.replace(/o$/u, gender === 'f' ? 'a' : 'o')}${plural ? 's' : ''}`;
}

function listed(items: readonly Prose[], last: (next: string) => string): Prose {
  const [first, ...rest] = items;
  if (first === undefined) return [];
  return join(
    first,
    ...rest.flatMap((item, place) => [place === rest.length - 1 ? ` ${last(plain(item))} ` : ', ', item]),
  );
}

/** `de el` becomes `del` and `a el` becomes `al`, also where the article stands before a name. */
export function contracted(prose: Prose): Prose {
  return prose.map((run) => (run.kind === 'text' ? { ...run, text: contractedText(run.text) } : run));
}

export function contractedText(words: string): string {
  return words.replace(/(?<=^|[\s(«“])(de|a) el (?=\S|$)/giu, '$1l ');
}

export const spanishGrammar: Grammar = {
  nameIn: (entry) => nounOf(entry).name,
  the: (thing) => definite(thing, ''),
  theNew: (thing) => definite(thing, 'nuevo'),
  someOf: (count, thing) => {
    const noun = nounOfThing(thing);
    return join(`${numberWord(count, noun.gender)} de ${articleFor(noun, true)} `, nameRun(thing, pluralName(noun)));
  },
  bare: (thing) => [nameRun(thing, nounOfThing(thing).name)],
  and: (items) => listed(items, andWord),
  or: (items) => listed(items, orWord),
  withArticle: (phrase) => {
    const [first] = phrase;
    const start = first?.text ?? '';
    if (start === '' || first?.lang !== undefined || DETERMINERS.test(start) || !/^\p{Ll}/u.test(start)) return phrase;
    const noun = nounOf(start);
    return join(`${articleFor(noun, noun.plural)} `, phrase);
  },
  pronoun: (things) => {
    const plural = things.length !== 1 || things.some(isPlural);
    const vowel = things.length > 0 && things.every(isFeminine) ? 'a' : 'o';
    return plural ? `l${vowel}s` : `l${vowel}`;
  },
  mention: (thing, before) => {
    // What is used up is named without an article: `con desengrasante`.
    const wantsArticle = thing.kind !== 'consumable' && !BEFORE_BARE_NAME.test(before) && !OPENED.test(before);
    return wantsArticle ? definite({ ...thing, count: 1 }, '') : [nameRun(thing, nounOfThing(thing).name)];
  },
  asItem: (written) => written.replace(/^\p{Lu}(?=\p{Ll})/u, (letter) => letter.toLowerCase()),
  series: (items) => items.join(', '),
  contract: contracted,
};
