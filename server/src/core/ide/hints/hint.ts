import type { Span } from '../../text/span';
import type { Description } from '../thingHover';
import type { Scene } from '../things/scene';

/** What is written between the words of a line, by what it says. */
export type HintKind = 'second-unit' | 'turn' | 'kit-item';

/** A text that an editor shows behind a word and that is not in the document. */
export interface InlayHint {
  readonly kind: HintKind;
  /** It stands behind the character before this offset. */
  readonly offset: number;
  readonly label: string;
  /** What it rests on, worked out when somebody points at it. */
  detail(): Description | undefined;
}

/** Finds the hints of one kind in a stretch of a document. */
export type HintFinder = (scene: Scene, within: Span) => InlayHint[];
