import type { AdjustInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, sentences, strong } from '../grammar';
import type { SentenceFacts } from '../language';
import { act, directionWords, helpedBy, parts } from './words';

/** Turns that English writes out. */
const TURNS: Readonly<Record<string, string>> = {
  'half a turn': 'eine halbe Umdrehung',
  'a quarter turn': 'eine Vierteldrehung',
  'a quarter of a turn': 'eine Vierteldrehung',
  'one turn': 'eine Umdrehung',
  'a turn': 'eine Umdrehung',
};

export function adjusting(one: AdjustInstruction, facts: SentenceFacts): Prose {
  return sentences(
    act(
      parts(one.adjust, facts),
      helpedBy(one, facts),
      ' einstellen',
      one.until && join(', bis ', facts.prose(one.until)),
    ),
    one.backOff && backOffSentence(one.backOff.text, facts),
    one.backOff === undefined && facts.turn.kind === 'known' && 'Das Gewinde ist linksgängig.',
  );
}

/** Back is the way that loosens; it is said where the hand of the thread is the unusual one. */
function backOffSentence(written: string, { turn }: SentenceFacts): Piece {
  const angle = TURNS[written.trim()] ?? written;
  if (turn.kind !== 'known') return `Dann um ${angle} zurückdrehen.`;
  const direction = directionWords(turn.direction).toLowerCase().replace('uhr', 'Uhr');
  return join('Dann ', strong(direction), ` um ${angle} zurückdrehen (Linksgewinde).`);
}
