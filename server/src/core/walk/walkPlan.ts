import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Asked } from './decisions';
import type { Fork } from './trace';
import type { UnitModel } from './unitModel';

/** An instruction to carry out in its turn. */
export interface PlanAct {
  readonly is: 'act';
  readonly step: StepView;
  readonly instruction: Instruction;
  readonly where: BuildSet;
  /** Where its result is not right and the work goes another way. */
  readonly fails: BuildSet;
  /** What its conditions look at. */
  readonly asked: readonly Asked[];
  readonly resolved: boolean;
  readonly at: ItemRange;
  /** Set where it is walked for the second time: the number of the loop that goes back before it. */
  readonly loop: number | undefined;
}

/** One thing of the walk in its turn: an instruction, a loop that leads nowhere, or a place where nobody knows what is meant. */
export type PlanEntry = PlanAct | { readonly is: 'gap' } | LostLoop;

/** `go-to` names no step that comes before it. */
export interface LostLoop {
  readonly is: 'lost-loop';
  readonly target: string;
  readonly where: BuildSet;
  readonly at: ItemRange;
}

/** An instruction that goes back to an earlier step when its result is not right. */
export interface Loop {
  readonly target: string;
  readonly at: ItemRange;
}

/** Everything that a walk depends on. Two walks of equal plans give the same, wherever the text stands. */
export interface WalkPlan {
  readonly unit: UnitModel;
  readonly entries: readonly PlanEntry[];
  readonly forks: readonly Fork[];
  readonly loops: readonly Loop[];
  /** The ways that come to the end of the work. */
  readonly alive: BuildSet;
  /** The whole document resolves, so that what must be true at the end can be looked at. */
  readonly whole: boolean;
  readonly startsAndEnds: string;
  readonly stores: readonly SyntaxDocument[];
}

/** Whether two plans walk the same unit from the same start, so that what one found is of use to the other. */
export function isSameGround(one: WalkPlan, other: WalkPlan): boolean {
  return (
    one.unit.family === other.unit.family &&
    one.unit.space === other.unit.space &&
    one.startsAndEnds === other.startsAndEnds &&
    one.stores.length === other.stores.length &&
    one.stores.every((document, i) => document === other.stores[i])
  );
}

/** Whether two entries do the same, wherever they stand. */
export function isSameEntry(one: PlanEntry | undefined, other: PlanEntry | undefined): boolean {
  if (one === other) return true;
  if (one === undefined || other === undefined || one.is !== other.is) return false;
  if (one.is === 'gap' || other.is === 'gap') return true;
  if (one.where !== other.where) return false;
  if (one.is === 'lost-loop' || other.is === 'lost-loop')
    return 'target' in one && 'target' in other && one.target === other.target;
  if (one.fails !== other.fails || one.resolved !== other.resolved || one.loop !== other.loop) return false;
  if (one.asked.length !== other.asked.length) return false;
  if (one.asked.some((ask, i) => ask.outcome !== other.asked[i]?.outcome)) return false;
  return one.instruction === other.instruction || sourceOf(one.instruction) === sourceOf(other.instruction);
}

function sourceOf({ node }: Instruction): string {
  return node.item.text.slice(node.from, node.to);
}
