import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Lane } from '../../walk/lane';
import type { Stretch } from '../../walk/trace';
import { UnitModel } from '../../walk/unitModel';
import { walkOf } from '../../walk/walkProcedure';

export type Lanes = ReadonlyMap<string, Lane>;

/** The work of the sheet as the walk carries it out. */
export interface WalkedWork {
  readonly unit: UnitModel;
  readonly end: Lanes;
  readonly stretches: readonly Stretch[];
  /** The builds, outcomes and ways of the sheet on which the work comes to its end. */
  readonly known: BuildSet;
}

/** Undefined where the family cannot be read: then nothing is known of any part. */
export function walkedWork(procedure: ProcedureView, set: BuildSet): WalkedWork | undefined {
  const trace = walkOf(procedure);
  if (trace === undefined || procedure.family === undefined) return undefined;
  const { end, stretches } = trace;
  const unit = new UnitModel(procedure, procedure.family);
  return { unit, end, stretches, known: set.and(trace.alive) };
}
