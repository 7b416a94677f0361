import type { InstallInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, quantity, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { englishGrammar as grammar } from './grammar';
import { helpedBy, holdSentence, parts, placingSentences, things, turnSentence } from './words';

/** Verbs that take a part off, put it on or set it in its place. */
export const fitting: Pick<VerbWriters, 'remove' | 'install' | 'press' | 'align' | 'mark' | 'adjust'> = {
  remove: (one, facts) =>
    sentences(
      join('Remove ', parts(one.remove, facts, one.count?.value), helpedBy(one, facts), '.'),
      turnSentence(facts),
      holdSentence(facts),
      discardSentence(facts, one.remove?.length ?? 0),
    ),
  install: (one, facts) => {
    const placed = (one.install ?? []).map(facts.part);
    return sentences(
      join(
        one.trial?.value === true && 'For a trial, install ',
        one.trial?.value !== true && 'Install ',
        installed(one, facts),
        placeOf(one.place && facts.part(one.place)),
        helpedBy(one, facts),
        '.',
      ),
      ...placingSentences(facts, placed),
      turnSentence(facts),
      one.trial?.value === true && `${grammar.pronoun(placed) === 'it' ? 'It comes' : 'They come'} off again.`,
    );
  },
  press: (one, facts) =>
    sentences(
      join(
        'Press ',
        parts(one.press, facts),
        placeOf(one.place && facts.part(one.place)),
        one.to && join(' to ', grammar.withArticle(facts.prose(one.to))),
        helpedBy(one, facts),
        '.',
      ),
      one.force && join('Do not use a force of more than ', quantity(facts.quantity(one.force)), '.'),
      ...placingSentences(facts, (one.press ?? []).map(facts.part)),
    ),
  align: (one, facts) =>
    one.to === undefined
      ? join('Align the marks on ', parts(one.align, facts), helpedBy(one, facts), '.')
      : join(
          'Align the mark on ',
          parts(one.align, facts),
          ' with the mark on ',
          parts(one.to, facts),
          helpedBy(one, facts),
          '.',
        ),
  mark: (one, facts) =>
    one.across === undefined
      ? join('Mark ', parts(one.mark, facts), helpedBy(one, facts), '.')
      : join(
          'Make a mark across ',
          things([...(one.mark ?? []), ...one.across].map(facts.part)),
          helpedBy(one, facts),
          '.',
        ),
  adjust: (one, facts) =>
    sentences(
      join(
        'Adjust ',
        parts(one.adjust, facts),
        helpedBy(one, facts),
        one.until && join(' until ', facts.prose(one.until)),
        '.',
      ),
      one.backOff && backOffSentence(one.backOff.text, grammar.pronoun((one.adjust ?? []).map(facts.part)), facts),
      one.backOff === undefined && facts.turn.kind === 'known' && 'The thread is left-hand.',
    ),
};

/** Back is the way that loosens; it is said where the hand of the thread is the unusual one. */
function backOffSentence(angle: string, pronoun: string, { turn }: SentenceFacts): Piece {
  if (turn.kind !== 'known') return `Then turn ${pronoun} back by ${angle}.`;
  return join(`Then turn ${pronoun} back `, strong(turn.direction), ` by ${angle} (left-hand thread).`);
}

function installed(one: InstallInstruction, facts: SentenceFacts): Prose {
  const refs = one.install ?? [];
  const [only] = refs;
  if (only === undefined || (refs.length === 1 && one.count?.value !== undefined)) return newPieces(one, facts);
  return grammar.and(refs.map((ref) => (facts.alwaysRenewed(ref) ? grammar.theNew : grammar.the)(facts.part(ref))));
}

/** `one new journal bearing`: with a count, the pieces are not yet told apart. */
function newPieces(one: InstallInstruction, facts: SentenceFacts): Prose {
  const [ref] = one.install ?? [];
  const count = one.count?.value;
  if (ref === undefined || count === undefined) return parts(one.install, facts, count);
  const thing = { ...facts.part(ref), count };
  const name = facts.alwaysRenewed(ref) ? grammar.theNew(thing) : grammar.the(thing);
  return facts.part(ref).count === count ? name : piecesWithoutArticle(name, count);
}

function piecesWithoutArticle(name: Prose, count: number): Prose {
  const [first, ...rest] = name;
  if (first === undefined) return [];
  return join({ ...first, text: first.text.replace(/^the /u, count === 1 ? 'one ' : '') }, rest);
}

function placeOf(place: ReturnType<SentenceFacts['part']> | undefined): Piece {
  return place && join(place.sort === 'housing' ? ' in ' : ' on ', grammar.the({ ...place, count: 1 }));
}

function discardSentence(facts: SentenceFacts, removed: number): Piece {
  const { discarded } = facts;
  if (discarded.length === 0) return undefined;
  if (discarded.length < removed) return join('Discard ', parts(discarded, facts), '.');
  return `Discard ${grammar.pronoun(discarded.map(facts.part))}.`;
}
