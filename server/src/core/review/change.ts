import type { Uri } from '../analysis/uri';
import type { Span } from '../text/span';

/**
 * What a change can do, worst first. `hurt`: someone or the unit could come to harm by it; `fits`: another part, tool,
 * consumable, place or build; `says`: the same work in other words; `looks`: nothing that a sheet shows.
 */
export const CHANGE_CLASSES = ['hurt', 'fits', 'says', 'looks'] as const;
export type ChangeClass = (typeof CHANGE_CLASSES)[number];

/** `renamed` is a thing under another id, or a document under another path, with everything else of it compared. */
export type ChangeKind = 'added' | 'removed' | 'changed' | 'moved' | 'renamed';

/** What a change is a change of. */
export interface Subject {
  /** As the trade names it: `part`, `limit`, `kit line`, `step`, `instruction`, `procedure`. */
  readonly kind: string;
  /** Its id in the newer version, else in the older one; empty where it has none. */
  readonly id: string;
  /** What a person calls it. */
  readonly name: string;
  /** Id of the step that it belongs to. */
  readonly step: string | undefined;
}

/** One half of a change: where it stands in that version, and as it is written there. */
export interface ChangeSide {
  readonly uri: Uri;
  readonly span: Span;
  readonly text: string;
}

/** A procedure that a change comes to, with the steps that meet it and the builds whose sheets differ. */
export interface Reached {
  readonly uri: Uri;
  /** The document number, for example `OP-410`. */
  readonly document: string;
  readonly steps: readonly string[];
  /** Ids of the builds, at most a dozen; `more` counts the rest. */
  readonly builds: readonly string[];
  readonly more: number;
}

export interface Change {
  readonly class: ChangeClass;
  readonly kind: ChangeKind;
  readonly of: Subject;
  /** The key whose value differs; undefined where the whole thing came, went or moved. */
  readonly key: string | undefined;
  readonly before: ChangeSide | undefined;
  readonly after: ChangeSide | undefined;
  /** What the two values are to each other, for example `ten times`, `wider`, `the same value in another unit`. */
  readonly note: string | undefined;
  /** The builds for which it holds, in words; empty where it holds for all. */
  readonly builds: string;
  readonly reached: readonly Reached[];
}

/** The worse of two. */
export function worse(a: ChangeClass, b: ChangeClass): ChangeClass {
  return CHANGE_CLASSES.indexOf(a) <= CHANGE_CLASSES.indexOf(b) ? a : b;
}

/** The place of a class from the worst, 0, to the least. */
export function rankOf(one: ChangeClass): number {
  return CHANGE_CLASSES.indexOf(one);
}
