import type { Phase } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { ShapeProblem } from '../model/shapeProblem';
import type { Item, ItemRange, MapNode, Node } from '../syntax/node';
import { areSame } from './sameParts';

/**
 * What is written of a phase itself. It is the same object as long as that is the same, whatever becomes of the steps:
 * a phase is read anew with each key pressed in one of them, and what rests on its head need not be.
 */
export interface PhaseHead extends Omit<Phase, 'steps' | 'node'> {
  /** Where it stands. What stands in it is not to be had from here, since the steps come and go. */
  readonly node: ItemRange;
  readonly problems: readonly ShapeProblem[];
}

interface KnownHead {
  readonly head: PhaseHead;
  readonly written: readonly Node[];
}

/** By the item in which a phase begins, which has one place in a document. */
const known = new WeakMap<Item, KnownHead>();

export function phaseHeadOf(phase: Phase): PhaseHead {
  const { item } = phase.node;
  const already = known.get(item);
  const written = writtenOf(phase.node);
  // What is wrong with a phase may be wrong with its steps as a whole, so such a head is not kept.
  const problems = unitOf(phase.node)?.problems ?? [];
  if (already !== undefined && problems.length === 0 && areSame(already.written, written)) return already.head;
  const { steps: _, ...own } = phase;
  const head: PhaseHead = { ...own, problems };
  if (problems.length === 0) known.set(item, { head, written });
  return head;
}

/** Keys and values but those of the steps; each keeps its identity while its text stays. */
function writtenOf(node: Node): Node[] {
  return ((node as MapNode).pairs ?? []).flatMap(({ key, value }) =>
    key.text === 'steps' || value === undefined ? [key] : [key, value],
  );
}
