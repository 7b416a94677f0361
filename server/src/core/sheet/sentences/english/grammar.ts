import type { Prose, Run } from '../../sheet';
import { type Grammar, join, nameRun, type Thing } from '../grammar';

const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const DETERMINERS =
  /^(?:the|a|an|this|that|these|those|its|their|your|each|every|both|all|any|no|one|two|three|four|five|six|some)(?=\s|$)/iu;
/** Words after which English wants an article before the name of a thing. */
const BEFORE_ARTICLE =
  /(?:^|[.:;!?]\s+|\b(?:about|above|across|after|against|along|and|around|as|at|before|behind|below|beside|between|by|clean|close|fit|for|from|hold|if|in|inside|install|into|loosen|near|of|off|on|onto|or|out|outside|over|press|push|put|remove|seat|set|take|than|that|through|tighten|to|towards|turn|under|until|when|where|while|with|without))\s*$/iu;
/** Words before a name that belong to it, so that no article may stand between. */
const BELONGS =
  /^(?:new|old|used|worn|same|other|first|last|next|clean|dry|loose|left|right|upper|lower|inner|outer)$/iu;
/** Where the head of a name ends: a preposition, or the figures of a size behind it. */
const TAIL = /\s(?:of|for|with|at|in|on|to|from|towards|\d).*$/u;

/** How a person writes a small count; figures from thirteen on. */
export function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}

/** The plural of a name by its head: `nut of the clamp` gives `nuts of the clamp`. Names that are plural stay. */
export function plural(name: string): string {
  const tail = TAIL.exec(name)?.[0] ?? '';
  const head = name.slice(0, name.length - tail.length);
  return `${pluralWord(head)}${tail}`;
}

function pluralWord(word: string): string {
  if (/[^s]s$/u.test(word)) return word;
  if (/(?:s|x|z|ch|sh)$/iu.test(word)) return `${word}es`;
  if (/[^aeiou]y$/iu.test(word)) return `${word.slice(0, -1)}ies`;
  return `${word}s`;
}

/** The one word of a sentence before a mention is its command: `Pull <nut> up`. */
function isCommandBefore(before: string): boolean {
  const word = /(?:^|[.:;!?]\s+)([A-Z][a-z]+)\s+$/u.exec(before)?.[1];
  return word !== undefined && !DETERMINERS.test(word) && !BELONGS.test(word);
}

function isPlural(thing: Thing): boolean {
  return thing.count !== 1 && thing.count !== undefined;
}

function name(thing: Thing, words = thing.name): Run {
  return nameRun(thing, words);
}

/** A name in another language stays as it is written. */
export function pluralName({ name: words, language }: Thing): string {
  return language === undefined ? plural(words) : words;
}

function definite(thing: Thing, adjective: string): Prose {
  const count = thing.kind !== 'value' && isPlural(thing) ? `${numberWord(thing.count ?? 0)} ` : '';
  const already = DETERMINERS.test(thing.name) ? '' : 'the ';
  return join(already, count, adjective, name(thing, isPlural(thing) ? pluralName(thing) : thing.name));
}

function listed(items: readonly Prose[], last: string): Prose {
  const [first, ...rest] = items;
  if (first === undefined) return [];
  return join(first, ...rest.flatMap((item, place) => [place === rest.length - 1 ? ` ${last} ` : ', ', item]));
}

export const englishGrammar: Grammar = {
  nameIn: (entry) => entry,
  the: (thing) => definite(thing, ''),
  theNew: (thing) => definite(thing, 'new '),
  someOf: (count, thing) => join(`${numberWord(count)} of the `, name(thing, pluralName(thing))),
  bare: (thing) => [name(thing)],
  and: (items) => listed(items, 'and'),
  or: (items) => listed(items, 'or'),
  withArticle: (phrase) => {
    const start = phrase[0]?.text ?? '';
    return start === '' || DETERMINERS.test(start) || /^[\d<]/u.test(start) ? phrase : join('the ', phrase);
  },
  pronoun: (things) => (things.length === 1 && things[0] !== undefined && !isPlural(things[0]) ? 'it' : 'them'),
  mention: (thing, before) => {
    // What is used up is named without an article: `with threadlocker`.
    const wantsArticle = thing.kind !== 'consumable' && (BEFORE_ARTICLE.test(before) || isCommandBefore(before));
    return wantsArticle ? definite({ ...thing, count: 1 }, '') : [name(thing)];
  },
  asItem: (written) => written.replace(/^[A-Z](?=[a-z])/u, (letter) => letter.toLowerCase()),
  series: (items) => items.join(', '),
};
