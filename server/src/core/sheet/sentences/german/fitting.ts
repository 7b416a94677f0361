import type { AlignInstruction, InstallInstruction, PressInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, quantity, sentences, type Thing } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { adjusting } from './adjusting';
import { behind, contracted, germanGrammar as grammar, named, phrase } from './grammar';
import type { GrammaticalCase } from './nouns';
import {
  act,
  helpedBy,
  holdSentence,
  parts,
  places,
  placingSentences,
  sentence,
  things,
  trimmed,
  turnSentence,
} from './words';

/** Verbs that take a part off, put it on or set it in its place. */
export const fitting: Pick<VerbWriters, 'remove' | 'install' | 'press' | 'align' | 'mark' | 'adjust'> = {
  remove: (one, facts) =>
    sentences(
      act(parts(one.remove, facts, one.count?.value), helpedBy(one, facts), ' ausbauen'),
      turnSentence(facts),
      holdSentence(facts),
      discardSentence(facts, one.remove ?? [], one.count?.value),
    ),
  install: (one, facts) =>
    sentences(
      sentence(
        installed(one, facts),
        placeOf(one.place && facts.part(one.place), 'dative'),
        helpedBy(one, facts),
        one.trial?.value === true ? ' zur Probe einbauen' : ' einbauen',
      ),
      ...placingSentences(facts),
      turnSentence(facts),
      one.trial?.value === true && 'Später wieder ausbauen.',
    ),
  press: (one, facts) =>
    sentences(
      sentence(
        parts(one.press, facts),
        helpedBy(one, facts),
        placeOf(one.place && facts.part(one.place), 'accusative'),
        pressedTo(one, facts),
        ' pressen',
      ),
      one.force && join('Presskraft: höchstens ', quantity(facts.quantity(one.force)), '.'),
      ...placingSentences(facts),
    ),
  align: (one, facts) => sentence(alignedWith(one, facts)),
  mark: (one, facts) =>
    one.across === undefined
      ? act(parts(one.mark, facts), helpedBy(one, facts), ' markieren')
      : sentence(
          led(helpedBy(one, facts)),
          'durchgehende Markierung über ',
          things([...(one.mark ?? []), ...one.across].map(facts.part).map(single)),
          ' anbringen',
        ),
  adjust: adjusting,
};

/** At the start of a sentence. */
const led = (help: Prose): Piece => help.length > 0 && join(...trimmed(help), ' ');
const single = (thing: Thing): Thing => ({ ...thing, count: 1 });

function alignedWith(one: AlignInstruction, facts: SentenceFacts): Prose {
  const own = places('an', one.align, 'dative', facts);
  if (one.to === undefined) return join('Markierungen ', own, helpedBy(one, facts), ' zueinander ausrichten');
  const other = places('an', one.to, 'dative', facts);
  return join('Markierung ', own, helpedBy(one, facts), ' auf die Markierung ', other, ' ausrichten');
}

/** `bis zum Wellenbund`. */
function pressedTo({ to }: PressInstruction, facts: SentenceFacts): Piece {
  if (to === undefined) return undefined;
  const written = facts.prose(to);
  const governed = phrase(written, 'dative', 'definite');
  return join(' bis ', contracted('zu', governed));
}

function installed(one: InstallInstruction, facts: SentenceFacts): Prose {
  const refs = one.install ?? [];
  const count = one.count?.value;
  const [only] = refs;
  if (only === undefined) return join('…');
  const isNew = (ref: typeof only) => facts.alwaysRenewed(ref);
  if (refs.length > 1 || count === undefined) {
    return grammar.and(refs.map((ref) => named(facts.part(ref), 'accusative', { isNew: isNew(ref) })));
  }
  const thing = facts.part(only);
  // With a count, the pieces are not yet told apart: one of two is `1 neues Radiallager`.
  const figure = count === 1 && thing.count !== 1 ? '1\u00a0' : '';
  return join(figure, named({ ...thing, count }, 'accusative', { isNew: isNew(only) }));
}

/** In a housing, on anything else: where it is, or where it goes. */
function placeOf(place: Thing | undefined, of: GrammaticalCase): Piece {
  if (place === undefined) return undefined;
  return join(' ', behind(place.sort === 'housing' ? 'in' : 'auf', single(place), of));
}

/** What comes off and is spent. */
function discardSentence(facts: SentenceFacts, removed: readonly unknown[], count: number | undefined): Piece {
  const { discarded } = facts;
  if (discarded.length === 0) return undefined;
  if (discarded.length < removed.length) return sentence(parts(discarded, facts), ' entsorgen');
  const pieces = discarded.length === 1 && discarded[0] ? (count ?? facts.part(discarded[0]).count ?? 1) : 2;
  return pieces > 1 ? 'Altteile entsorgen.' : 'Altteil entsorgen.';
}
