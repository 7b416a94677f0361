import type { SignedTerm } from '../../../model/values';
import type { Prose } from '../../sheet';
import { capitalised, closed, join, type Piece, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { englishGrammar as grammar, numberWord } from './grammar';
import { helpedBy, parts, things } from './words';

/** Verbs that find something out. */
export const finding: Pick<
  VerbWriters,
  'identify' | 'inspect' | 'measure' | 'calculate' | 'choose' | 'balance' | 'check'
> = {
  identify: (one, facts) => {
    const found = grammar.or(facts.findable.map((value) => [strong(value)]));
    const what = one.identify === undefined ? join('…') : grammar.the(facts.value(one.identify));
    return sentences(
      join('Find out ', what, helpedBy(one, facts), found.length > 0 && join(': ', found), '.'),
      'Tick what you find.',
    );
  },
  inspect: (one, facts) => {
    const looked = (one.lookFor ?? []).map((item) => asItem(facts.prose(item)));
    return sentences(
      join('Inspect ', parts(one.inspect, facts), helpedBy(one, facts), '.'),
      looked.length > 0 && join('Look for ', inspectionList(looked), '.'),
    );
  },
  measure: (one, facts) =>
    join(
      'Measure ',
      one.measure ? grammar.the(facts.value(one.measure)) : '…',
      helpedBy(one, facts),
      atPlaces(facts.places),
      '.',
    ),
  calculate: (one, facts) => {
    const formula = facts.from.length === 0 ? undefined : join(': ', formulaWords(facts.from, facts));
    return join('Calculate ', one.calculate ? grammar.the(facts.value(one.calculate)) : '…', formula, '.');
  },
  choose: (one, facts) => {
    const size =
      (one.size ?? []).length === 0 ? undefined : join('The size is ', formulaWords(one.size ?? [], facts), '.');
    return sentences(
      join('Choose ', one.choose ? things([{ ...facts.part(one.choose), count: 1 }]) : '…', '.'),
      size,
      sizesWords(facts),
    );
  },
  balance: (one, facts) =>
    join(
      'Balance ',
      one.balance ? grammar.the(facts.value(one.balance)) : '…',
      facts.grade && join(' to grade ', strong(facts.grade)),
      helpedBy(one, facts),
      '.',
    ),
  check: (one, facts) => {
    const said = facts.check ?? (one.check?.is === 'prose' ? facts.prose(one.check.prose) : join('…'));
    const help = helpedBy(one, facts);
    return join('Check', help, ': ', closed(capitalised(said)));
  },
};

/** Semicolons where an item has a comma or an `and` of its own. */
function inspectionList(items: readonly Prose[]): Prose {
  const parted = items.length > 1 && items.some((item) => item.some(({ text }) => /,|\b(?:and|or)\b/u.test(text)));
  if (!parted) return grammar.or(items);
  return join(...items.flatMap((item, place) => (place === 0 ? [item] : ['; ', item])));
}

/**
 * An item of a list within a sentence: in lower case, unless it starts with an acronym, a symbol or a letter that
 * stands for a shape (`EGR`, `N·m`, `V-band`), and not closed.
 */
function asItem(written: Prose): Prose {
  const [first, ...rest] = written;
  if (first === undefined) return [];
  const start = first.text.replace(/^(?:A(?=\s)|[A-Z](?=[a-z]+(?:[^A-Za-z\d]|$)))/u, (letter) => letter.toLowerCase());
  const runs = [{ ...first, text: start }, ...rest];
  const last = runs.at(-1) ?? first;
  return [...runs.slice(0, -1), { ...last, text: last.text.replace(/\.\s*$/u, '') }];
}

function atPlaces(places: readonly string[]): Piece {
  if (places.length === 0) return undefined;
  if (places.every((place, index) => place === String(index + 1))) return ` at ${numberWord(places.length)} places`;
  return join(' at ', grammar.and(places.map((place) => grammar.withArticle(join(place)))));
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
  const step = sizes.step === undefined ? '' : ` in steps of ${sizes.step}`;
  return `The sizes are ${sizes.range}${step}.`;
}
