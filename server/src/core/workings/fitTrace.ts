import type { InstructionView, ProcedureView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { CoolInstruction, HeatInstruction, Instruction } from '../model/generated/types';
import type { QuantityValue, Ref } from '../model/values';
import type { Lane } from '../walk/lane';
import type { Moment } from '../walk/trace';
import { walkOf } from '../walk/walkProcedure';
import { Surroundings, type Warmed } from './fitSurroundings';

/** A part that was heated or cooled, on the builds on which it still is. */
export interface TemperedPart {
  readonly part: string;
  readonly is: 'hot' | 'cold';
  readonly until: QuantityValue;
  readonly instruction: HeatInstruction | CoolInstruction;
  readonly step: StepView;
  /** The builds and ways on which the instruction is carried out. */
  readonly served: BuildSet;
  readonly where: BuildSet;
}

/** A part that is fitted, with what is hot or cold at that moment. */
export interface Fitting {
  readonly ref: Ref;
  readonly instruction: Instruction;
  readonly step: StepView;
  readonly where: BuildSet;
  readonly tempered: readonly TemperedPart[];
}

/** What gets warm with a part that is heated, at the moment of heating or when something is fitted to it. */
export interface Heating {
  readonly source: TemperedPart;
  readonly warmed: readonly Warmed[];
  /** The instruction that brings them together, where it is not the heating itself. */
  readonly at: Ref | undefined;
}

export interface TemperatureTrace {
  readonly fittings: readonly Fitting[];
  readonly heatings: readonly Heating[];
}

const NOTHING: TemperatureTrace = { fittings: [], heatings: [] };
const traces = new WeakMap<ProcedureView, TemperatureTrace>();

/** What is heated and cooled in a procedure, and what is fitted meanwhile; from the walk, made once. */
export function temperatureTrace(procedure: ProcedureView): TemperatureTrace {
  const known = traces.get(procedure);
  if (known !== undefined) return known;
  const hasHeat = procedure.steps.some(({ instructions }) => instructions.some(isHeating));
  const trace = hasHeat ? new TemperatureWalk(procedure).run() : NOTHING;
  traces.set(procedure, trace);
  return trace;
}

function isHeating({ instruction: { verb } }: InstructionView): boolean {
  return verb === 'heat' || verb === 'cool';
}

/** Goes through the moments of the walk once more and keeps which temperature each part was brought to. */
class TemperatureWalk {
  readonly #fittings: Fitting[] = [];
  readonly #heatings: Heating[] = [];
  readonly #lanes: Map<string, Lane>;
  readonly #around: Surroundings;
  #tempered: readonly TemperedPart[] = [];

  constructor(readonly procedure: ProcedureView) {
    this.#lanes = new Map(walkOf(procedure)?.start ?? []);
    this.#around = new Surroundings(procedure, this.#lanes);
  }

  run(): TemperatureTrace {
    for (const moment of walkOf(this.procedure)?.moments ?? []) this.#moment(moment);
    return { fittings: this.#fittings, heatings: this.#heatings };
  }

  #moment(moment: Moment): void {
    const { instruction } = moment;
    if (instruction.verb === 'install') this.#fitted(instruction.install ?? [], moment);
    if (instruction.verb === 'press') this.#fitted(instruction.press ?? [], moment);
    this.#around.remember(moment);
    for (const [id, lane] of moment.lanes) this.#lanes.set(id, lane);
    if (moment.lanes.size > 0) this.#cooledOff(moment.lanes);
    if (instruction.verb === 'heat') this.#tempers(instruction.heat ?? [], 'hot', instruction, moment);
    if (instruction.verb === 'cool') this.#tempers(instruction.cool ?? [], 'cold', instruction, moment);
  }

  #tempers(
    parts: readonly Ref[],
    is: 'hot' | 'cold',
    instruction: HeatInstruction | CoolInstruction,
    at: Moment,
  ): void {
    for (const { id } of parts) {
      const lane = this.#lanes.get(id);
      const where = lane === undefined ? undefined : at.where.and(lane[is]);
      if (where === undefined || where.isEmpty) continue;
      this.#tempered = this.#tempered.flatMap((one) => (one.part === id ? within(one, one.where.minus(where)) : [one]));
      if (instruction.until === undefined) continue;
      const source = { part: id, is, until: instruction.until, instruction, step: at.step, served: at.where, where };
      this.#tempered = [...this.#tempered, source];
      if (is === 'hot') this.#heatings.push({ source, warmed: this.#around.of(id, where), at: undefined });
    }
  }

  #fitted(refs: readonly Ref[], { instruction, step, where }: Moment): void {
    for (const ref of refs) {
      const tempered = this.#tempered.flatMap((one) => within(one, one.where.and(where)));
      this.#fittings.push({ ref, instruction, step, where, tempered });
      for (const source of tempered) {
        const warmed = source.is === 'hot' ? this.#around.meeting(ref.id, source.part, source.where) : [];
        if (warmed.length > 0) this.#heatings.push({ source, warmed, at: ref });
      }
    }
  }

  #cooledOff(lanes: ReadonlyMap<string, Lane>): void {
    this.#tempered = this.#tempered.flatMap((one) => {
      const lane = lanes.get(one.part);
      return lane === undefined ? [one] : within(one, one.where.and(lane[one.is]));
    });
  }
}

function within(one: TemperedPart, where: BuildSet): TemperedPart[] {
  return where.isEmpty ? [] : [where === one.where ? one : { ...one, where }];
}
