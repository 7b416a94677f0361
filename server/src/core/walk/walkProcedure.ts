import type { FamilyView } from '../analysis/familyView';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../builds';
import { CellTable } from './cellTable';
import type { Failure } from './failure';
import { failuresOf } from './failuresOf';
import { emptyLane, type Lane } from './lane';
import { planOf } from './layOut';
import { rewalk, type Walked } from './rewalk';
import type { PlacedStretch, Values } from './stretch';
import type { Fork, Moment, Trace } from './trace';
import { UnitModel } from './unitModel';
import { WalkState } from './walkState';

/** What is kept of a family's procedures: numbers for their cells, and the last walks, for few are worked on at a time. */
interface Ground {
  readonly table: CellTable;
  recent: readonly Walked[];
}

const grounds = new WeakMap<FamilyView, Map<BuildSpace, Ground>>();
const traces = new WeakMap<ProcedureView, { trace: Trace | undefined }>();
const MOST = 4;

/**
 * Walks a procedure step by step for every build, outcome and way at once. Undefined where the family cannot be read. It
 * knows no rules: it says what fails and why, and goes on as if it had been right. What was walked before, and reads
 * nothing that has changed since, is taken over.
 */
export function walkOf(procedure: ProcedureView): Trace | undefined {
  const known = traces.get(procedure);
  if (known !== undefined) return known.trace;
  const { family } = procedure;
  const trace = family === undefined ? undefined : traceOf(new UnitModel(procedure, family));
  traces.set(procedure, { trace });
  return trace;
}

function traceOf(unit: UnitModel): Trace {
  const ground = groundOf(unit);
  const id = unit.procedure.document.uri;
  const earlier = ground.recent.find((one) => one.plan.unit.procedure.document.uri === id);
  const walked = rewalk(planOf(unit, earlier?.plan), new WalkState(unit, ground.table), earlier);
  ground.recent = [walked, ...ground.recent.filter((one) => one !== earlier)].slice(0, MOST);
  return new WalkTrace(walked, ground.table);
}

function groundOf({ family, space }: UnitModel): Ground {
  const bySpace = grounds.get(family) ?? new Map<BuildSpace, Ground>();
  grounds.set(family, bySpace);
  const ground = bySpace.get(space) ?? { table: new CellTable(), recent: [] };
  bySpace.set(space, ground);
  return ground;
}

/** The trace of a walk; what a rule never asks for is worked out on demand only. */
class WalkTrace implements Trace {
  readonly failures: readonly Failure[];
  readonly forks: readonly Fork[];
  readonly carriedOut: number;
  readonly alive: BuildSet;
  readonly whole: boolean;
  readonly stretches: readonly PlacedStretch[];
  #moments: readonly Moment[] | undefined;
  #start: ReadonlyMap<string, Lane> | undefined;
  #end: ReadonlyMap<string, Lane> | undefined;

  constructor(
    readonly walked: Walked,
    readonly table: CellTable,
  ) {
    this.failures = failuresOf(walked);
    this.forks = walked.plan.forks;
    this.carriedOut = walked.carriedOut;
    this.alive = walked.plan.alive;
    this.whole = walked.plan.whole;
    this.stretches = walked.stretches;
  }

  get moments(): readonly Moment[] {
    this.#moments ??= ([] as Moment[]).concat(...this.stretches.map((stretch) => stretch.moments));
    return this.#moments;
  }

  momentsOf(part: string): readonly Moment[] {
    return this.stretches.flatMap((stretch) => stretch.momentsOf(part));
  }

  get start(): ReadonlyMap<string, Lane> {
    const { stretches, after } = this.walked;
    this.#start ??= this.#lanesIn(stretches[0]?.before ?? after);
    return this.#start;
  }

  get end(): ReadonlyMap<string, Lane> {
    this.#end ??= this.#lanesIn(this.walked.after);
    return this.#end;
  }

  #lanesIn(values: Values): ReadonlyMap<string, Lane> {
    const { ids, space } = this.walked.plan.unit;
    const lane = (id: string): Lane => (values[this.table.number('lane', id)] as Lane | undefined) ?? emptyLane(space);
    return new Map(ids.map((id) => [id, lane(id)]));
  }
}
