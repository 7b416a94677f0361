import { type HeldValue, heldValues } from '../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { lastPass, type Tightened, torquesOfPart } from '../analysis/statedTorques';
import type { BuildSet } from '../builds';
import type { TightenInstruction, Tool } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { type Bounds, boundsOf, type Quantity } from '../quantity';
import { findToolClass, permissibleDeviation } from '../standards/torqueTools';
import { type NamedTool, toolsOfStores, toolsWith } from './toolNamed';

/** A torque that a fastener is brought to on some builds; a pass is on the way to the final one. */
export interface TorqueToReach {
  readonly value: QuantityValue;
  readonly quantity: Quantity;
  /** In N·m; `nominal` is what the tool is set to, the middle of a range. */
  readonly bounds: Bounds;
  readonly where: BuildSet;
  readonly final: boolean;
}

/** The torques that an instruction brings a fastener to, passes included: its own, or the family's where it is silent. */
export function torquesToReach(
  procedure: ProcedureView,
  { instruction }: InstructionView,
  { part, where }: Tightened,
): TorqueToReach[] {
  if (instruction.verb !== 'tighten') return [];
  const final = lastPass(instruction);
  const passes = (instruction.passes ?? []).flatMap((value) => reach({ value, where }, value === final));
  if (instruction.passes !== undefined) return passes;
  return statedTorques(procedure, instruction, part, where).flatMap((held) => reach(held, true));
}

/** An angle alone turns on from where an earlier torque left off, so the family's torque is not asked for. */
function statedTorques(
  { space }: ProcedureView,
  instruction: TightenInstruction,
  part: Tightened['part'],
  where: BuildSet,
): readonly HeldValue<QuantityValue>[] {
  if (instruction.torque !== undefined) return heldValues(instruction.torque, space, where).held;
  return instruction.angle === undefined ? torquesOfPart(part, space, where).torques : [];
}

function reach({ value, where }: HeldValue<QuantityValue>, final: boolean): TorqueToReach[] {
  const { quantity, problems } = value.reading;
  if (quantity?.dimension !== 'torque' || problems.some(({ kind }) => kind === 'duals-disagree')) return [];
  return [{ value, quantity, bounds: boundsOf(quantity), where, final }];
}

export function isTorqueTool({ kind }: Tool): boolean {
  return kind?.value === 'torque-wrench' || kind?.value === 'torque-screwdriver';
}

/** The torque tools that an instruction names; undefined where another of its tools may be one. */
export function torqueToolsNamed(procedure: ProcedureView, view: InstructionView): readonly NamedTool[] | undefined {
  const { tools, complete } = toolsWith(procedure, view.instruction);
  const doubtful = tools.some(({ tool }) => tool.kind?.value === undefined || tool.kind.value === 'other');
  return complete && !doubtful ? tools.filter(({ tool }) => isTorqueTool(tool)) : undefined;
}

/** Where a torque lies for a tool; `unmarked` is the lowest fifth of a scale that begins at zero. */
export type Reach = 'within' | 'below' | 'above' | 'unmarked' | 'unknown';

/**
 * Whether a tool can be set to a torque in N·m. The stores state the range that it is calibrated for. No tool is so from
 * zero on: there the lowest fifth is left out, in which ISO 6789:2003 has no test point and a U.S. Army bulletin asks for no
 * accuracy; ISO 6789-1:2017 lets the range begin at the lowest marked torque, which the stores then have to state.
 */
export function reachOf(tool: Tool, torque: number): Reach {
  const range = torqueRange(tool);
  if (range === undefined) return 'unknown';
  const noise = 1e-9 * range.highest;
  if (torque > range.highest + noise) return 'above';
  if (torque < range.lowest - noise) return 'below';
  return range.lowest <= 0 && torque < 0.2 * range.highest - noise ? 'unmarked' : 'within';
}

/** The range of a torque tool in N·m. */
export function torqueRange({ range }: Tool): Bounds | undefined {
  const quantity = range?.reading.quantity;
  return quantity?.form === 'range' && quantity.dimension === 'torque' ? boundsOf(quantity) : undefined;
}

/** By how much a tool may be out at a torque, in N·m, and where that is known from. */
export interface Deviation {
  readonly amount: number;
  readonly percent: number;
  readonly from: 'stores' | 'ISO 6789';
}

/** The stated accuracy of a tool, or else what ISO 6789 permits its class; undefined where the stores state neither. */
export function deviationAt(tool: Tool, torque: number): Deviation | undefined {
  const stated = tool.accuracy?.reading.quantity;
  if (tool.accuracy !== undefined) {
    if (stated?.form !== 'single' && stated?.form !== 'at-most') return undefined;
    const amount = boundsOf(stated).nominal;
    if (stated.dimension === 'ratio') return { amount: (torque * amount) / 100, percent: amount, from: 'stores' };
    return stated.dimension === 'torque' ? { amount, percent: (100 * amount) / torque, from: 'stores' } : undefined;
  }
  const range = torqueRange(tool);
  const [, type, letter] =
    /^\s*(?:type\s*)?(I{1,2})[\s,]*(?:class\s*)?([A-G])\s*$/i.exec(tool.torqueType?.text ?? '') ?? [];
  const found =
    type === undefined ? undefined : findToolClass(type.toUpperCase() as 'I' | 'II', letter?.toUpperCase() ?? '');
  if (found === undefined || range === undefined) return undefined;
  const percent = permissibleDeviation(found, range.highest);
  return { amount: (torque * percent) / 100, percent, from: 'ISO 6789' };
}

/** How far a torque may be from its nominal value, in N·m: the smaller side; undefined without a tolerance on both sides. */
export function toleranceOf({ lowest, nominal, highest }: Bounds): number | undefined {
  const width = Math.min(nominal - lowest, highest - nominal);
  return Number.isFinite(width) && width > 0 ? width : undefined;
}

/** Whether the deviation of a tool fits in the tolerance of a torque; `unknown` where either is not stated. */
export function finenessOf(tool: Tool, { bounds }: TorqueToReach): 'fine' | 'coarse' | 'unknown' {
  const tolerance = toleranceOf(bounds);
  const deviation = deviationAt(tool, bounds.nominal);
  if (tolerance === undefined || deviation === undefined) return 'unknown';
  return deviation.amount <= tolerance * (1 + 1e-9) ? 'fine' : 'coarse';
}

/** The torque tools of the stores that reach all these torques and are not too coarse for them, those that are listed first. */
export function torqueToolsFor(procedure: ProcedureView, torques: readonly TorqueToReach[]): string[] {
  return toolsOfStores(
    procedure,
    (tool) =>
      isTorqueTool(tool) &&
      torques.every(
        (one) => reachOf(tool, one.bounds.nominal) === 'within' && (!one.final || finenessOf(tool, one) !== 'coarse'),
      ),
  );
}
