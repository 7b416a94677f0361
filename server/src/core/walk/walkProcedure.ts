import type { FamilyView } from '../analysis/familyView';
import type { ProcedureView } from '../analysis/procedureView';
import type { ItemRange } from '../syntax/node';
import { atTheEnd } from './atTheEnd';
import { carryOut } from './carryOut';
import type { Failure, Happening } from './failure';
import { startOf } from './start';
import { UnitModel } from './unitModel';
import { Walker } from './walker';
import { isSamePlan, type PlanEntry, planOf, type WalkPlan } from './walkPlan';
import type { WalkState } from './walkState';

/** What the walk of a procedure gives: everything that fails, in the order in which it shows, and the unit at the end. */
export interface Trace {
  readonly failures: readonly Failure[];
  readonly end: WalkState;
}

interface Walked {
  readonly plan: WalkPlan;
  readonly trace: Trace;
}

const remembered = new WeakMap<ProcedureView, { trace: Trace | undefined }>();
/** The last walks of a family's procedures: few are worked on at a time. */
const recent = new WeakMap<FamilyView, readonly Walked[]>();
const MOST = 6;

/**
 * Walks a procedure step by step for every build and outcome at once. Undefined where the family cannot be read. It
 * knows no rules: it says what fails and why, and goes on as if it had been right. What does not change the walk, such
 * as a title that is typed, does not walk it again.
 */
export function walkOf(procedure: ProcedureView): Trace | undefined {
  const known = remembered.get(procedure);
  if (known !== undefined) return known.trace;
  const trace = procedure.family === undefined ? undefined : traceOf(new UnitModel(procedure, procedure.family));
  remembered.set(procedure, { trace });
  return trace;
}

function traceOf(unit: UnitModel): Trace {
  const plan = planOf(unit);
  const last = recent.get(unit.family) ?? [];
  const same = last.find((one) => isSamePlan(one.plan, plan));
  const trace = same === undefined ? walk(plan) : placedAnew(same, plan);
  recent.set(unit.family, [{ plan, trace }, ...last.filter((one) => one !== same)].slice(0, MOST));
  return trace;
}

function walk({ unit, entries, whole }: WalkPlan): Trace {
  const walker = new Walker(unit);
  startOf(walker);
  for (const [index, entry] of entries.entries()) {
    if (entry.is === 'act') carryOut(walker, { ...entry, index });
    if (entry.is === 'gap' || !entry.resolved) walker.skipped(index);
  }
  if (whole) atTheEnd(walker);
  return { failures: walker.failures, end: walker.state };
}

/** The same failures where the instructions now stand. */
function placedAnew(same: Walked, plan: WalkPlan): Trace {
  const indexOf = new Map(
    same.plan.entries.flatMap((entry, i) => (entry.is === 'act' ? [[entry.at, i] as const] : [])),
  );
  const placeAt = (index: number | undefined): ItemRange | undefined => placeIn(plan.entries, index);
  const failures = same.trace.failures.map((failure): Failure => {
    const at = failure.at === undefined ? undefined : (placeAt(indexOf.get(failure.at)) ?? failure.at);
    return {
      ...failure,
      at,
      because: failure.because && happenedAnew(failure.because, placeAt(failure.because.index)),
    };
  });
  return { failures, end: same.trace.end };
}

function happenedAnew(happening: Happening, at: ItemRange | undefined): Happening {
  return at === undefined ? happening : { ...happening, at };
}

function placeIn(entries: readonly PlanEntry[], index: number | undefined): ItemRange | undefined {
  const entry = index === undefined ? undefined : entries[index];
  return entry?.is === 'act' ? entry.at : undefined;
}
