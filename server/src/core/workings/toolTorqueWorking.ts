import type { BuildSet, BuildSpace } from '../builds';
import { describeBuilds } from '../builds';
import { findUnit, formatQuantity } from '../quantity';
import type { CalculationStep } from '../standards/calculation';
import { step } from '../standards/calculation';
import { torqueGiven, usableRange } from '../standards/torqueTools';
import type { NamedTool } from './toolNamed';
import { significant } from './toolSizeText';
import { deviationAt, type Reach, reachOf, type TorqueToReach, toleranceOf, torqueRange } from './toolTorque';
import type { Working, WorkingRow } from './working';

/** How a torque tool was held against a torque: its range, its deviation and the tolerance, with what the stores lack. */
export function torqueToolWorking(
  { tool, name }: NamedTool,
  torque: TorqueToReach,
  space: BuildSpace,
  within: BuildSet,
): Working {
  const { bounds, value, where } = torque;
  const reach = reachOf(tool, bounds.nominal);
  const deviation = deviationAt(tool, bounds.nominal);
  const missing = [
    ...(reach === 'unknown' ? [`the range of the ${name}`] : []),
    ...(deviation === undefined ? [`the accuracy of the ${name}`] : []),
    ...(toleranceOf(bounds) === undefined ? ['the tolerance of the torque'] : []),
  ];
  return {
    title: `${name} for ${value.text.trim()}`,
    builds: where.equals(within) ? '' : describeBuilds(where, space),
    rows: [...rangeRows(tool.range?.text, torque, reach), ...deviationRows(deviation?.from)],
    steps: [...rangeSteps(tool, reach), ...deviationSteps(torque, deviation?.percent)],
    missing,
    sources: deviation?.from === 'ISO 6789' ? ['ISO 6789'] : reach === 'unmarked' ? ['ISO 6789:2003'] : [],
  };
}

const REACH: Readonly<Record<Reach, string>> = {
  within: 'lies within it',
  below: 'lies below it',
  above: 'lies above it',
  unmarked: 'lies in the lowest fifth of a scale from zero',
  unknown: 'cannot be held against it',
};

function rangeRows(range: string | undefined, { quantity }: TorqueToReach, reach: Reach): WorkingRow[] {
  const inNewtonMetres = findUnit('torque', 'N·m');
  const torque = formatQuantity(quantity, inNewtonMetres === undefined ? {} : { unit: inNewtonMetres });
  return [
    { label: 'Range of the tool', text: range?.trim() ?? 'not stated' },
    { label: 'Torque', text: `${torque} ${REACH[reach]}` },
  ];
}

function deviationRows(from: 'stores' | 'ISO 6789' | undefined): WorkingRow[] {
  if (from === undefined) return [];
  const text = from === 'stores' ? 'as the stores state it' : 'what ISO 6789 permits its class';
  return [{ label: 'Accuracy', text }];
}

function rangeSteps(tool: NamedTool['tool'], reach: Reach): readonly CalculationStep[] {
  const range = torqueRange(tool);
  if (reach !== 'unmarked' || range === undefined) return [];
  return usableRange(Math.max(0, range.lowest), range.highest)?.steps ?? [];
}

function deviationSteps({ bounds }: TorqueToReach, percent: number | undefined): CalculationStep[] {
  if (percent === undefined) return [];
  const given = torqueGiven(bounds.nominal, percent)?.steps ?? [];
  const tolerance = toleranceOf(bounds);
  if (tolerance === undefined) return [...given];
  return [...given, step('T', 'tolerance of the torque, the smaller side', 'given', tolerance, 'N·m')];
}

/** `0.56 N·m`: a computed torque, to as many digits as make sense. */
export function newtonMetres(torque: number, digits = 2): string {
  return `${significant(torque, digits)} N·m`;
}
