import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { CoolInstruction, HeatInstruction } from '../model/generated/types';
import type { Ref } from '../model/values';
import type { Lane } from '../walk/lane';
import type { Moment } from '../walk/trace';
import type { HeatState, LanesWithin, StretchHeat } from './fitStretch';
import { Surroundings } from './fitSurroundings';
import type { Fitting, Heating, TemperedPart } from './fitTrace';

/** Goes through moments of the walk once more and keeps which temperature each part was brought to. */
export class TemperatureWalk {
  readonly around: Surroundings;
  readonly #fittings: Fitting[] = [];
  readonly #heatings: Heating[] = [];
  #tempered: readonly TemperedPart[];

  constructor(
    procedure: ProcedureView,
    readonly before: HeatState,
    readonly lanes: LanesWithin,
  ) {
    this.around = new Surroundings(procedure, lanes, before.applied);
    this.#tempered = before.tempered;
  }

  result(): StretchHeat {
    const { tempered: was, applied: on } = this.before;
    const [tempered, applied] = [this.#tempered, this.around.applied];
    const after = tempered === was && applied === on ? this.before : { tempered, applied };
    return { fittings: this.#fittings, heatings: this.#heatings, after };
  }

  moment(moment: Moment): void {
    const { instruction } = moment;
    if (instruction.verb === 'install') this.#fitted(instruction.install ?? [], moment);
    if (instruction.verb === 'press') this.#fitted(instruction.press ?? [], moment);
    this.around.remember(moment);
    this.lanes.put(moment);
    this.#cooledOff(moment.lanes);
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
      const lane = this.lanes.get(id);
      const where = lane === undefined ? undefined : at.where.and(lane[is]);
      if (where === undefined || where.isEmpty) continue;
      this.#tempered = this.#tempered.flatMap((one) => (one.part === id ? within(one, one.where.minus(where)) : [one]));
      if (instruction.until === undefined) continue;
      const source = { part: id, is, until: instruction.until, instruction, step: at.step, served: at.where, where };
      this.#tempered = [...this.#tempered, source];
      if (is === 'hot') this.#heatings.push({ source, warmed: this.around.of(id, where), at: undefined });
    }
  }

  #fitted(refs: readonly Ref[], { instruction, step, where }: Moment): void {
    if (this.#tempered.length === 0) return;
    for (const ref of refs) {
      const tempered = this.#tempered.flatMap((one) => within(one, one.where.and(where)));
      if (tempered.length > 0) this.#fittings.push({ ref, instruction, step, where, tempered });
      for (const source of tempered) {
        const warmed = source.is === 'hot' ? this.around.meeting(ref.id, source.part, source.where) : [];
        if (warmed.length > 0) this.#heatings.push({ source, warmed, at: ref });
      }
    }
  }

  #cooledOff(lanes: ReadonlyMap<string, Lane>): void {
    if (this.#tempered.length === 0 || lanes.size === 0) return;
    this.#tempered = this.#tempered.flatMap((one) => {
      const lane = lanes.get(one.part);
      return lane === undefined ? [one] : within(one, one.where.and(lane[one.is]));
    });
  }
}

function within(one: TemperedPart, where: BuildSet): TemperedPart[] {
  return where.isEmpty ? [] : [where === one.where ? one : { ...one, where }];
}
