import type { ProcedureView, StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { nameOf } from '../../rules/support/nameOf';
import { CellTable } from '../../walk/cellTable';
import type { Lane } from '../../walk/lane';
import type { Moment, Trace } from '../../walk/trace';
import { UnitModel } from '../../walk/unitModel';
import type { UnitRelations } from '../../walk/unitRelations';
import { walkOf } from '../../walk/walkProcedure';
import { WalkState } from '../../walk/walkState';

/** The unit as it stands right before an instruction, for the builds of its step. */
export class StandingUnit {
  readonly relations: UnitRelations;

  constructor(
    readonly unit: UnitModel,
    readonly state: WalkState,
    readonly where: BuildSet,
  ) {
    this.relations = unit.relations;
  }

  /** The builds of the step on which a part can be met at all. */
  meant(id: string): BuildSet {
    return this.where.and(this.unit.everPresent(id));
  }

  lane(id: string): Lane {
    return this.state.lane(id);
  }

  nameOf(id: string): string {
    return nameOf(this.unit.procedure, id);
  }

  /** A part that holds others, or is turned to be tightened. */
  isFastener(id: string): boolean {
    const { unit, relations } = this;
    const holds = relations.heldBy(id).length > 0 || relations.lockedBy(id).length > 0;
    return holds || unit.hasTorque(id) || unit.isRing(id) || unit.isClamp(id);
  }

  /** What a part in the unit is behind, on some of the builds. What rides on it does not count where it is only reached for. */
  coverOf(id: string, where: BuildSet, asked: 'reach' | 'removal'): string | undefined {
    const inPlace = where.and(this.state.inUnit(id));
    if (inPlace.isEmpty) return undefined;
    return this.relations.behind(id).find((cover) => {
      const rides = this.relations.ridesOn(id, cover) || (asked === 'reach' && this.relations.ridesOn(cover, id));
      return !rides && inPlace.overlaps(this.state.inUnit(cover));
    });
  }

  /** A fastener that holds a part on some of the builds. */
  holderOf(id: string, where: BuildSet): string | undefined {
    return this.relations.fasteners(id).find((fastener) => where.overlaps(this.hold(fastener, id)));
  }

  /** Where a fastener holds a part: in place and, where it frees it when loose, not released. */
  hold(fastener: string, id: string): BuildSet {
    const { partly, released } = this.lane(fastener);
    return this.unit.freesLoose(fastener, id) ? partly.minus(released) : partly;
  }
}

const standing = new WeakMap<ProcedureView, Map<string, StandingUnit>>();

/**
 * The unit right before the instruction at a place among those of a step. The instruction itself does not count, so that
 * one that is only half typed changes nothing. Undefined where the family cannot be read.
 */
export function unitBefore(procedure: ProcedureView, step: StepView, at: number): StandingUnit | undefined {
  const { family, steps } = procedure;
  const trace = walkOf(procedure);
  const index = steps.findIndex((one) => one === step || one.step === step.step);
  if (family === undefined || trace === undefined || index < 0) return undefined;
  const known = standing.get(procedure) ?? new Map<string, StandingUnit>();
  standing.set(procedure, known);
  const key = `${index} ${at}`;
  const unit = known.get(key) ?? standingAt(new UnitModel(procedure, family), trace, { index, at });
  known.set(key, unit);
  return unit;
}

interface PlaceInWalk {
  readonly index: number;
  readonly at: number;
}

function standingAt(unit: UnitModel, trace: Trace, place: PlaceInWalk): StandingUnit {
  const table = new CellTable();
  const state = new WalkState(unit, table);
  const put = (lanes: ReadonlyMap<string, Lane>): void => {
    for (const [id, lane] of lanes) state.values[table.number('lane', id)] = lane;
  };
  put(trace.start);
  const until = firstFrom(unit.procedure, trace.moments, place);
  for (const moment of trace.moments.slice(0, until)) put(moment.lanes);
  return new StandingUnit(unit, state, unit.procedure.steps[place.index]?.where ?? unit.space.everything);
}

/** The first moment that is not before a place, what is walked for a second time left aside. */
function firstFrom({ steps }: ProcedureView, moments: readonly Moment[], { index, at }: PlaceInWalk): number {
  // A step that was laid out before keeps the view that it had then, so what was read of it tells which it is.
  const order = new Map(steps.map(({ step }, i) => [step, i]));
  const found = moments.findIndex(({ step, instruction, again }) => {
    const there = order.get(step.step) ?? -1;
    if (again || there < index) return false;
    return there > index || (step.step.do ?? []).indexOf(instruction) >= at;
  });
  return found < 0 ? moments.length : found;
}
