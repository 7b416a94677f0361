import type { Snapshot } from '../analysis/snapshot';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import type { HintFinder, HintKind, InlayHint } from './hints/hint';
import { kitItemHints } from './hints/kitItem';
import { secondUnitHints } from './hints/secondUnit';
import { turnHints } from './hints/turn';
import type { Description } from './thingHover';
import { sceneOf } from './things/scene';

export type { HintKind, InlayHint } from './hints/hint';

/** Which hints somebody wants to see. */
export interface HintChoices {
  /** A quantity in its second unit. */
  readonly secondUnit: boolean;
  /** Which way a fastener turns. */
  readonly turn: boolean;
  /** The line of the kit that a part comes from. */
  readonly kitItem: boolean;
}

const FINDERS: Readonly<Record<HintKind, { readonly choice: keyof HintChoices; readonly find: HintFinder }>> = {
  'second-unit': { choice: 'secondUnit', find: secondUnitHints },
  turn: { choice: 'turn', find: turnHints },
  'kit-item': { choice: 'kitItem', find: kitItemHints },
};

/** The hints in a stretch of a document, in the order of the text. Only what stands there is looked at. */
export function inlayHintsIn(
  snapshot: Snapshot,
  document: SyntaxDocument,
  within: Span,
  choices: HintChoices,
): InlayHint[] {
  const scene = sceneOf(snapshot, document);
  const found = Object.values(FINDERS).flatMap(({ choice, find }) => (choices[choice] ? find(scene, within) : []));
  return found
    .filter(({ offset }) => within.start <= offset && offset <= within.end)
    .sort((a, b) => a.offset - b.offset || a.kind.localeCompare(b.kind));
}

/** What a hint rests on, found again by its kind and place; undefined where the text has moved on. */
export function hintDetail(
  snapshot: Snapshot,
  document: SyntaxDocument,
  kind: HintKind,
  offset: number,
): Description | undefined {
  const there = FINDERS[kind]?.find(sceneOf(snapshot, document), { start: offset, end: offset });
  return there?.find((hint) => hint.offset === offset)?.detail();
}
