import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { CoolInstruction, HeatInstruction, Instruction } from '../model/generated/types';
import type { QuantityValue, Ref } from '../model/values';
import { walkOf } from '../walk/walkProcedure';
import { type HeatState, heatsAnything, heatWithin, NOTHING_HEATED } from './fitStretch';
import type { Warmed } from './fitSurroundings';

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
  /** The parts that are fitted while anything is hot or cold. */
  readonly fittings: readonly Fitting[];
  readonly heatings: readonly Heating[];
}

const NOTHING: TemperatureTrace = { fittings: [], heatings: [] };
const traces = new WeakMap<ProcedureView, TemperatureTrace>();
const byInstruction = new WeakMap<TemperatureTrace, ReadonlyMap<Instruction, readonly TemperedPart[]>>();

/**
 * What is heated and cooled in a procedure, and what is fitted meanwhile; from the walk, a stretch at a time, so that what
 * was found in a stretch is found again only where it, or what is hot before it, has changed.
 */
export function temperatureTrace(procedure: ProcedureView): TemperatureTrace {
  const known = traces.get(procedure);
  if (known !== undefined) return known;
  const trace = traceOf(procedure);
  traces.set(procedure, trace);
  return trace;
}

function traceOf(procedure: ProcedureView): TemperatureTrace {
  const { stretches } = walkOf(procedure) ?? { stretches: [] };
  if (!stretches.some(heatsAnything)) return NOTHING;
  const fittings: Fitting[] = [];
  const heatings: Heating[] = [];
  let state: HeatState = NOTHING_HEATED;
  for (const stretch of stretches) {
    const heat = heatWithin(procedure, stretch, state);
    fittings.push(...heat.fittings);
    heatings.push(...heat.heatings);
    state = heat.after;
  }
  return { fittings, heatings };
}

/** What is hot or cold when an instruction fits its parts. */
export function temperedAt(procedure: ProcedureView, instruction: Instruction): readonly TemperedPart[] {
  const trace = temperatureTrace(procedure);
  const known = byInstruction.get(trace) ?? temperedBy(trace);
  byInstruction.set(trace, known);
  return known.get(instruction) ?? [];
}

function temperedBy({ fittings }: TemperatureTrace): ReadonlyMap<Instruction, readonly TemperedPart[]> {
  const parts = new Map<Instruction, TemperedPart[]>();
  for (const { instruction, tempered } of fittings)
    parts.set(instruction, [...(parts.get(instruction) ?? []), ...tempered]);
  return parts;
}
