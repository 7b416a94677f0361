import type { FamilyView } from '../analysis/familyView';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../builds';
import { CellTable } from './cellTable';
import type { Failure } from './failure';
import { failuresOf } from './failuresOf';
import { emptyLane, type Lane } from './lane';
import { planOf } from './layOut';
import { rewalk, type Walked } from './rewalk';
import type { Fork, Moment, Trace } from './trace';
import type { Transition } from './transition';
import { UnitModel } from './unitModel';
import { WalkState } from './walkState';

/** What is kept of a family's procedures: numbers for their cells, and the last walks, for few are worked on at a time. */
interface Ground {
  readonly table: CellTable;
  recent: readonly Walked[];
}

const grounds = new WeakMap<FamilyView, Map<BuildSpace, Ground>>();
const traces = new WeakMap<ProcedureView, { trace: Trace | undefined }>();
const MOST = 6;

/**
 * Walks a procedure step by step for every build, outcome and way at once. Undefined where the family cannot be read. It
 * knows no rules: it says what fails and why, and goes on as if it had been right. What was walked before, and reads
 * nothing that has changed since, is taken over.
 */
export function walkOf(procedure: ProcedureView): Trace | undefined {
  const known = traces.get(procedure);
  if (known !== undefined) return known.trace;
  const { family } = procedure;
  const trace = family === undefined ? undefined : new WalkTrace(walkedOf(new UnitModel(procedure, family)));
  traces.set(procedure, { trace });
  return trace;
}

function walkedOf(unit: UnitModel): Walked {
  const ground = groundOf(unit);
  const plan = planOf(unit);
  const id = unit.procedure.document.uri;
  const earlier = ground.recent.find((one) => one.plan.unit.procedure.document.uri === id);
  const walked = rewalk(plan, new WalkState(unit, ground.table), earlier);
  ground.recent = [walked, ...ground.recent.filter((one) => one !== earlier)].slice(0, MOST);
  return walked;
}

function groundOf({ family, space }: UnitModel): Ground {
  const bySpace = grounds.get(family) ?? new Map<BuildSpace, Ground>();
  grounds.set(family, bySpace);
  const ground = bySpace.get(space) ?? { table: new CellTable(), recent: [] };
  bySpace.set(space, ground);
  return ground;
}

type Effect = Pick<Moment, 'lanes' | 'made'>;

const effects = new WeakMap<Transition, Effect>();

/** The trace of a walk; what a rule never asks for is worked out on demand only. */
class WalkTrace implements Trace {
  readonly failures: readonly Failure[];
  readonly forks: readonly Fork[];
  readonly carriedOut: number;
  readonly alive: BuildSet;
  readonly whole: boolean;
  #moments: readonly Moment[] | undefined;
  #lanes: { start: ReadonlyMap<string, Lane>; end: ReadonlyMap<string, Lane> } | undefined;

  constructor(readonly walked: Walked) {
    this.failures = failuresOf(walked);
    this.forks = walked.plan.forks;
    this.carriedOut = walked.carriedOut;
    this.alive = walked.plan.alive;
    this.whole = walked.plan.whole;
  }

  get moments(): readonly Moment[] {
    this.#moments ??= this.walked.steps.flatMap((step, index) => this.#moment(step, index));
    return this.#moments;
  }

  get start(): ReadonlyMap<string, Lane> {
    this.#lanes ??= this.#startAndEnd();
    return this.#lanes.start;
  }

  get end(): ReadonlyMap<string, Lane> {
    this.#lanes ??= this.#startAndEnd();
    return this.#lanes.end;
  }

  #moment(transition: Transition, index: number): Moment[] {
    const entry = this.walked.plan.entries[index];
    if (entry?.is !== 'act') return [];
    const { step, instruction, where, at, loop } = entry;
    const { reads, changes } = transition;
    return [{ step, instruction, where, at, again: loop !== undefined, reads, changes, ...this.#effectOf(transition) }];
  }

  /** What a transition came to; transitions are taken over from one walk to the next, and this with them. */
  #effectOf(transition: Transition): Effect {
    const known = effects.get(transition);
    if (known !== undefined) return known;
    const made = transition.done.flatMap((one) => (one.what === 'measured' ? [one.part] : []));
    const effect = { lanes: this.#lanesIn(transition), made };
    effects.set(transition, effect);
    return effect;
  }

  #startAndEnd(): { start: ReadonlyMap<string, Lane>; end: ReadonlyMap<string, Lane> } {
    const { plan, start, steps } = this.walked;
    const begin = new Map<string, Lane>(plan.unit.ids.map((id) => [id, emptyLane(plan.unit.space)]));
    for (const [id, lane] of this.#lanesIn(start)) begin.set(id, lane);
    const end = new Map(begin);
    for (const step of steps) for (const [id, lane] of this.#effectOf(step).lanes) end.set(id, lane);
    return { start: begin, end };
  }

  #lanesIn({ changes }: Transition): Map<string, Lane> {
    const { names } = this.#table;
    const lanes = new Map<string, Lane>();
    for (const { cell, value } of changes) {
      const name = names[cell];
      if (name?.kind === 'lane') lanes.set(name.id, value as Lane);
    }
    return lanes;
  }

  get #table(): CellTable {
    const { family, space } = this.walked.plan.unit;
    return grounds.get(family)?.get(space)?.table ?? new CellTable();
  }
}
