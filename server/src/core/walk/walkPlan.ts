import { namedRefs } from '../analysis/instructions';
import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Asked } from './decisions';
import type { NamesKnown } from './namesKnown';
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
  /** Set where it is walked for the second time: the loop that goes back before it. */
  readonly loop: Loop | undefined;
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

/** What a step was laid out as. The same object as long as nothing that this depended on has changed. */
export interface LaidStep extends BeforeStep {
  readonly view: StepView;
  readonly entries: readonly PlanEntry[];
  readonly forks: readonly Fork[];
  /** The ways on which the work has been broken off behind it. */
  readonly deadAfter: BuildSet;
  /** Nothing in it is of the wrong shape. */
  readonly isSound: boolean;
  /** What it goes back through. */
  readonly spans: readonly Span[];
  /** It goes back to what is not found before it, and may be found behind it or nowhere. */
  readonly isLost: boolean;
}

/** All that the layout of a step depends on besides its view and what it goes back through. */
export interface BeforeStep {
  readonly names: NamesKnown;
  /** The ways on which the work has been broken off. */
  readonly dead: BuildSet;
  /** How many forks come before it; of no matter where it has none itself. */
  readonly forksBefore: number;
  /** Its text cannot be read as a whole. */
  readonly isTorn: boolean;
}

/** The steps from the one that a step goes back to up to itself. */
export interface Span {
  readonly target: string;
  readonly steps: readonly LaidStep[];
}

/** Everything that a walk depends on. Two walks of equal plans give the same, wherever the text stands. */
export interface WalkPlan {
  readonly unit: UnitModel;
  readonly steps: readonly LaidStep[];
  readonly forks: readonly Fork[];
  readonly names: NamesKnown;
  /** Where a part would be renewed, and nothing renews it. */
  readonly never: BuildSet;
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
    one.names.readings === other.names.readings &&
    one.stores.length === other.stores.length &&
    one.stores.every((document, i) => document === other.stores[i])
  );
}

/** Whether two entries do the same, wherever they stand and however often they are walked. */
export function isSameEntry(one: PlanEntry | undefined, other: PlanEntry | undefined): boolean {
  if (one === other) return true;
  if (one === undefined || other === undefined || one.is !== other.is) return false;
  if (one.is === 'gap' || other.is === 'gap') return true;
  if (one.where !== other.where) return false;
  if (one.is === 'lost-loop' || other.is === 'lost-loop')
    return 'target' in one && 'target' in other && one.target === other.target;
  if (one.fails !== other.fails || one.resolved !== other.resolved) return false;
  if (one.asked.length !== other.asked.length) return false;
  if (one.asked.some((ask, i) => ask.outcome !== other.asked[i]?.outcome)) return false;
  return one.instruction === other.instruction || sourceOf(one.instruction) === sourceOf(other.instruction);
}

function sourceOf({ node }: Instruction): string {
  return node.item.text.slice(node.from, node.to);
}

/**
 * Where an entry names the part, or one of its conditions, or where it stands. Only the plan says so, for what an entry
 * did may be older than its place.
 */
export function placeIn(entry: PlanEntry | undefined, part: string, asked?: number): ItemRange | undefined {
  if (entry === undefined || entry.is === 'gap') return undefined;
  if (entry.is === 'lost-loop') return entry.at;
  if (asked !== undefined) return entry.asked[asked]?.at;
  return namedRefs(entry.instruction).find((ref) => ref.id === part)?.range ?? entry.at;
}
