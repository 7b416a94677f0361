import { heldValues } from '../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction, Tool } from '../model/generated/types';
import type { ByBuild, Prose, QuantityValue } from '../model/values';
import { type Bounds, boundsOf, differenceOf, type Quantity } from '../quantity';
import { gaugeShares } from '../standards/gaugeResolution';
import { type NamedTool, toolsOfStores, toolsWith } from './toolNamed';

/** What is measured or set, with what is acceptable on some builds. */
export interface Measurand {
  readonly id: string | undefined;
  readonly name: string;
  readonly value: QuantityValue;
  readonly quantity: Quantity;
  /** In base units of its dimension. */
  readonly bounds: Bounds;
  readonly where: BuildSet;
}

/** What an instruction measures or works out: against its own limit, or else that of the family or of the reading. */
export function measurandsOf(procedure: ProcedureView, { instruction, where }: InstructionView): Measurand[] {
  const { id, name, accept } = measured(procedure, instruction) ?? {};
  const own = 'accept' in instruction ? instruction.accept : undefined;
  return heldValues(own ?? accept, procedure.space, where).held.flatMap(({ value, where: holds }) => {
    const { quantity } = value.reading;
    if (quantity === undefined || quantity.form === 'torque-angle' || value.word !== undefined) return [];
    return [{ id, name: name ?? 'this value', value, quantity, bounds: boundsOf(quantity), where: holds }];
  });
}

interface Measured {
  readonly id: string;
  readonly name: string;
  readonly accept: ByBuild<QuantityValue> | undefined;
}

function measured(procedure: ProcedureView, instruction: Instruction): Measured | undefined {
  const id = measuredId(instruction);
  if (id === undefined) return undefined;
  const { limits = [], readings = [] } = procedure.family?.value ?? {};
  const found = [...(procedure.value.readings ?? []), ...limits, ...readings].find((one) => one.id.id === id);
  const { name, accept } = (found?.value ?? {}) as { name?: Prose; accept?: ByBuild<QuantityValue> };
  return { id, name: name?.text ?? id, accept };
}

function measuredId(instruction: Instruction): string | undefined {
  if (instruction.verb === 'measure') return instruction.measure?.id;
  return instruction.verb === 'calculate' ? instruction.calculate?.id : undefined;
}

const MEASURING: ReadonlySet<string> = new Set([
  'gauge',
  'indicator',
  'micrometer',
  'calliper',
  'bore-gauge',
  'feeler',
  'scale',
  'thermometer',
  'pressure-gauge',
  'balance-machine',
  'angle-gauge',
]);

/** Gauges that are set on a reference and show the difference from it. */
const COMPARING: ReadonlySet<string> = new Set(['gauge', 'indicator']);

/** Whether a tool measures at all; one of no particular kind does where it has a resolution. */
export function isGauge({ kind, resolution }: Tool): boolean {
  return MEASURING.has(kind?.value ?? '') || ((kind?.value ?? 'other') === 'other' && resolution !== undefined);
}

/** How a gauge suits what it is to measure; `unknown` where the stores say too little, or it measures something else. */
export type GaugeVerdict = 'suits' | 'too-coarse' | 'out-of-range' | 'unknown';

/**
 * A gauge suits a tolerance if its resolution is a tenth of it, the rule of ten; a sixth is let pass (GB/T 3177 allows the
 * uncertainty of measurement so much, next best to a tenth). Its range has to hold the whole tolerance.
 */
export function judgeGauge(tool: Tool, measurand: Measurand): GaugeVerdict {
  if (!isGauge(tool)) return 'unknown';
  const range = tool.range?.reading.quantity;
  if (range?.form === 'range' && range.dimension === measurand.quantity.dimension) {
    if (!covers(boundsOf(range), measurand.bounds, COMPARING.has(tool.kind?.value ?? ''))) return 'out-of-range';
  }
  const coarse = isTooCoarse(tool, measurand);
  return coarse === undefined ? 'unknown' : coarse ? 'too-coarse' : 'suits';
}

/** Whether the resolution is too coarse for the tolerance; undefined where none of this dimension is stated. */
export function isTooCoarse(tool: Tool, measurand: Measurand): boolean | undefined {
  const resolution = resolutionOf(tool, measurand);
  const width = widthOf(measurand);
  if (resolution === undefined || width === undefined) return resolution === undefined ? undefined : false;
  return resolution > width * gaugeShares.fair * (1 + 1e-9);
}

/** The resolution in base units; undefined where none of this dimension is stated. */
export function resolutionOf({ resolution }: Tool, { quantity: { dimension } }: Measurand): number | undefined {
  const stated = resolution?.reading.quantity;
  if (stated?.form !== 'single') return undefined;
  if (stated.dimension !== dimension && stated.dimension !== differenceOf(dimension)) return undefined;
  // A step of a degree Fahrenheit is a difference, whatever the scale begins with.
  return stated.number.value * stated.unit.factor;
}

/** How far a value may vary, in base units: a limit without a lower end begins at zero. */
export function widthOf({ bounds, quantity }: Measurand): number | undefined {
  const { lowest, highest } = bounds;
  const fromZero = quantity.form === 'at-most' && quantity.dimension !== 'temperature';
  const width = fromZero ? highest : highest - lowest;
  return Number.isFinite(width) && width > 0 ? width : undefined;
}

function covers(range: Bounds, { lowest, nominal, highest }: Bounds, compares: boolean): boolean {
  const noise = 1e-9 * Math.max(Math.abs(range.highest), Math.abs(range.lowest));
  const low = Number.isFinite(lowest) ? lowest : nominal;
  const high = Number.isFinite(highest) ? highest : nominal;
  if (low >= range.lowest - noise && high <= range.highest + noise) return true;
  return compares && high - low <= range.highest - range.lowest + noise;
}

/** A gauge that an instruction names, and what it does not suit. */
export interface UnfitGauge {
  readonly gauge: NamedTool;
  readonly measurand: Measurand;
  readonly verdict: 'too-coarse' | 'out-of-range';
}

/** What an instruction measures and none of its gauges suits; the first of them that does not is told of. */
export function unfitGauges(procedure: ProcedureView, view: InstructionView): UnfitGauge[] {
  const { instruction } = view;
  if (instruction.with === undefined || (instruction.verb !== 'measure' && instruction.verb !== 'adjust')) return [];
  const { tools, complete } = toolsWith(procedure, instruction);
  const gauges = tools.filter(({ tool }) => isGauge(tool));
  if (!complete || gauges.length === 0 || tools.some(({ tool }) => mayMeasure(tool))) return [];
  return measurandsOf(procedure, view).flatMap((measurand) => {
    const verdicts = gauges.map((gauge) => ({ gauge, measurand, verdict: judgeGauge(gauge.tool, measurand) }));
    if (verdicts.some(({ verdict }) => verdict === 'suits' || verdict === 'unknown')) return [];
    return verdicts.slice(0, 1) as UnfitGauge[];
  });
}

function mayMeasure(tool: Tool): boolean {
  return tool.kind?.value === undefined || (tool.kind.value === 'other' && !isGauge(tool) && tool.range !== undefined);
}

/** The gauges of the stores that suit and are used in the same way. */
export function gaugesFor(procedure: ProcedureView, measurand: Measurand, like: Tool): string[] {
  const kind = like.kind?.value ?? '';
  const same = (tool: Tool): boolean => {
    const other = tool.kind?.value ?? '';
    return other === kind || (COMPARING.has(other) && COMPARING.has(kind));
  };
  return toolsOfStores(procedure, (tool) => same(tool) && judgeGauge(tool, measurand) === 'suits');
}
