import { plain, type Thing, text } from '../grammar';
import type { Alternative, Way } from '../language';
import { foundWord } from './foundWords';
import { germanGrammar as grammar, withDefinite } from './grammar';
import type { GrammaticalCase } from './nouns';

const and = (items: readonly string[]): string => plain(grammar.and(items.map((item) => [text(item)])));
const or = (items: readonly string[]): string => plain(grammar.or(items.map((item) => [text(item)])));

const the = (thing: Thing, of: GrammaticalCase): string => plain(withDefinite({ ...thing, count: 1 }, of));

/** Clauses to stand behind `wenn`, so that each ends with its verb. */
export function clauseWords(alternatives: readonly Alternative[]): string {
  return alternatives.map(alternativeWords).join(', oder wenn ');
}

function alternativeWords({ variants, finished, arrived, found, ways }: Alternative): string {
  return and([
    ...(variants.length === 0 ? [] : [`die Variante ${or(variants)} ist`]),
    ...optionWords(finished, 'ausgeliefert wird'),
    ...optionWords(arrived, 'angeliefert wurde'),
    ...found.map(foundWords),
    ...ways.map(wayWords),
  ]);
}

function optionWords(options: Alternative['finished'], verb: string): string[] {
  const present = options.filter((one) => one.present).map(({ option }) => the(option, 'dative'));
  const absent = options.filter((one) => !one.present).map(({ option }) => `ohne ${the(option, 'accusative')}`);
  return [
    ...(present.length === 0 ? [] : [`der Turbolader mit ${and(present)} ${verb}`]),
    ...(absent.length === 0 ? [] : [`der Turbolader ${and(absent)} ${verb}`]),
  ];
}

function foundWords({ what, values, kind }: Alternative['found'][number]): string {
  const verb = kind === 'renewal' ? 'wird' : 'ist';
  return `${the(what, 'nominative')} ${or(values.map(foundWord))} ${verb}`;
}

function wayWords(way: Way): string {
  if (way.is === 'optional') return `Schritt „${way.title}“ ${way.done ? 'ausgeführt' : 'ausgelassen'} wird`;
  if (way.is === 'check') return `„${way.said}“ ${way.holds ? 'zutrifft' : 'nicht zutrifft'}`;
  const what = way.what === undefined ? 'die Prüfung' : the(way.what, 'nominative');
  return `${what} ${way.right ? 'in Ordnung' : 'nicht in Ordnung'} ist`;
}
