import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Lane } from '../../walk/lane';
import type { Moment } from '../../walk/trace';
import { UnitModel } from '../../walk/unitModel';
import { walkOf } from '../../walk/walkProcedure';
import { type Instruction, ifNotValue } from './instructionKeys';

export type Lanes = ReadonlyMap<string, Lane>;

/** The work of the sheet as the walk carries it out. */
export interface WalkedWork {
  readonly unit: UnitModel;
  readonly start: Lanes;
  readonly end: Lanes;
  readonly moments: readonly Moment[];
  /** The builds, outcomes and ways of the sheet on which the work comes to its end. */
  readonly known: BuildSet;
}

/** Undefined where the family cannot be read: then nothing is known of any part. */
export function walkedWork(procedure: ProcedureView, set: BuildSet): WalkedWork | undefined {
  const trace = walkOf(procedure);
  if (trace === undefined || procedure.family === undefined) return undefined;
  const { start, end, moments } = trace;
  const unit = new UnitModel(procedure, procedure.family);
  return { unit, start, end, moments, known: set.minus(rejectedWays(moments, procedure)) };
}

/**
 * Ways on which the work ends with a rejected part. What would be left open there is nobody's business any more. The way
 * is read off what is done on it: it looks at one fork more than the instruction that rejects.
 */
function rejectedWays(moments: readonly Moment[], { space }: ProcedureView): BuildSet {
  const forksOf = (set: BuildSet) => space.aspectsOf(set).flatMap((one) => (one.kind === 'fork' ? [one.id] : []));
  let rejected = space.nothing;
  let here: Moment | undefined;
  for (const moment of moments) {
    if (endsTheWork(moment.instruction)) here = moment;
    if (here === undefined || !isWithin(moment.instruction, here.instruction)) continue;
    const known = new Set(forksOf(here.where));
    for (const fork of forksOf(moment.where)) {
      if (!known.has(fork)) rejected = rejected.or(here.where.and(space.fork(Number(fork))));
    }
  }
  return rejected;
}

function endsTheWork(one: Instruction): boolean {
  const ifNot = ifNotValue(one);
  return ifNot?.reject?.value === true && ifNot.goTo === undefined && (ifNot.do ?? []).length > 0;
}

function isWithin(one: Instruction, outer: Instruction): boolean {
  return ifNotValue(outer)?.do?.includes(one) === true;
}
