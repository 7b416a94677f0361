import type { SignedTerm } from '../../../model/values';
import type { Prose } from '../../sheet';
import { closed, join, type Piece, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { foundWord } from './foundWords';
import { spanishGrammar as grammar, numberWord } from './grammar';
import { helpedBy, parts, things, withinSentence } from './words';

/** Verbs that find something out. */
export const finding: Pick<
  VerbWriters,
  'identify' | 'inspect' | 'measure' | 'calculate' | 'choose' | 'balance' | 'check'
> = {
  identify: (one, facts) => {
    const thing = one.identify && facts.value(one.identify);
    const found = grammar.or(facts.findable.map((value) => [strong(foundWord(value, thing?.name))]));
    const what = thing === undefined ? join('…') : grammar.the(thing);
    return sentences(
      join('Averigüe ', what, helpedBy(one, facts), found.length > 0 && join(': ', found), '.'),
      'Marque lo que encuentre.',
    );
  },
  inspect: (one, facts) => {
    const looked = (one.lookFor ?? []).map((item) => unclosed(withinSentence(facts.prose(item))));
    return sentences(
      join('Inspeccione ', parts(one.inspect, facts), helpedBy(one, facts), '.'),
      looked.length > 0 && join('Busque ', inspectionList(looked), '.'),
    );
  },
  measure: (one, facts) =>
    join(
      'Mida ',
      one.measure ? grammar.the(facts.value(one.measure)) : '…',
      helpedBy(one, facts),
      atPlaces(facts.places),
      '.',
    ),
  calculate: (one, facts) => {
    const formula = facts.from.length === 0 ? undefined : join(': ', formulaWords(facts.from, facts));
    return join('Calcule ', one.calculate ? grammar.the(facts.value(one.calculate)) : '…', formula, '.');
  },
  choose: (one, facts) => {
    const size =
      (one.size ?? []).length === 0 ? undefined : join('La medida es ', formulaWords(one.size ?? [], facts), '.');
    return sentences(
      join('Elija ', one.choose ? things([{ ...facts.part(one.choose), count: 1 }]) : '…', '.'),
      size,
      sizesWords(facts),
    );
  },
  balance: (one, facts) =>
    join(
      'Equilibre ',
      one.balance ? grammar.the(facts.value(one.balance)) : '…',
      facts.grade && join(' al grado ', strong(facts.grade)),
      helpedBy(one, facts),
      '.',
    ),
  check: (one, facts) => {
    const said = facts.check ?? (one.check?.is === 'prose' ? facts.prose(one.check.prose) : join('…'));
    const help = helpedBy(one, facts);
    return join('Compruebe', help, ': ', closed(withinSentence(said)));
  },
};

/** Semicolons where an item has a comma or a conjunction of its own. */
function inspectionList(items: readonly Prose[]): Prose {
  const parted =
    items.length > 1 &&
    items.some((item) => item.some(({ text }) => /,|(?<!\p{L})(?:[yeou]|and|or)(?!\p{L})/u.test(text)));
  if (!parted) return grammar.or(items);
  return join(...items.flatMap((item, place) => (place === 0 ? [item] : ['; ', item])));
}

function unclosed(written: Prose): Prose {
  const last = written.at(-1);
  if (last === undefined) return [];
  return [...written.slice(0, -1), { ...last, text: last.text.replace(/\.\s*$/u, '') }];
}

function atPlaces(places: readonly string[]): Piece {
  if (places.length === 0) return undefined;
  if (places.every((place, index) => place === String(index + 1))) {
    return places.length === 1 ? ' en un punto' : ` en ${numberWord(places.length)} puntos`;
  }
  return join(' ', grammar.and(places.map((place) => join('en ', grammar.withArticle(join(place))))));
}

function formulaWords(terms: readonly SignedTerm[], facts: SentenceFacts): Prose {
  const pieces = terms.map(facts.term).toSorted((a, b) => b.sign - a.sign);
  return join(
    ...pieces.flatMap(({ sign, name }, place) =>
      place === 0 ? [sign < 0 && 'menos ', name] : [sign < 0 ? ' menos ' : ' más ', name],
    ),
  );
}

function sizesWords({ sizes }: SentenceFacts): Piece {
  if (sizes === undefined) return undefined;
  const step = sizes.step === undefined ? '' : `, en pasos de ${sizes.step}`;
  return `Medidas disponibles: ${sizes.range}${step}.`;
}
