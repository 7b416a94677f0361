import { meetings } from '../../analysis/heldValues';
import type { ProcedureView } from '../../analysis/procedureView';
import { lastPass, torquesOfPart } from '../../analysis/statedTorques';
import type { BuildSet } from '../../builds';
import type { TightenInstruction } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { boundsOf } from '../../quantity';
import { unitsThatFit } from './torqueComparison';

/** A last pass that stays below the torque of the family, in the words of both documents. */
export interface ShortPass {
  readonly written: string;
  readonly stated: string;
  /** The number would be right in another unit, which is told where it is written. */
  readonly isSlip: boolean;
}

/** Whether the passes stop before the torque of the family is reached. A slip of the unit is another mistake. */
export function stopsShort(instruction: TightenInstruction, written: QuantityValue, stated: QuantityValue): boolean {
  return written === lastPass(instruction) && isBelow(written, stated) && !isSlip(written, stated);
}

/** What the passes for a fastener lack on some of the builds; undefined where they reach its torque. */
export function shortPassOf(
  procedure: ProcedureView,
  instruction: TightenInstruction,
  fastener: string,
  where: BuildSet,
): ShortPass | undefined {
  const [part, last] = [procedure.family?.part(fastener), lastPass(instruction)];
  if (part === undefined || last === undefined) return undefined;
  const { torques } = torquesOfPart(part, procedure.space, where);
  for (const { second } of meetings([{ value: last, where }], torques)) {
    if (!isBelow(last, second)) continue;
    return { written: last.text.trim(), stated: second.text.trim(), isSlip: isSlip(last, second) };
  }
  return undefined;
}

/**
 * A slip of the unit gives the value of the family nearly exactly. The usual first pass at 70 % comes near it as well,
 * because a pound foot is 74 % of what the number says in newton metres; it is 5 % off.
 */
const NEARLY = 0.03;

function isSlip(written: QuantityValue, stated: QuantityValue): boolean {
  const [own, wanted] = [written.reading.quantity, stated.reading.quantity];
  if (own === undefined || wanted === undefined) return false;
  const { nominal } = boundsOf(wanted);
  return unitsThatFit(written, stated).some(
    (unit) => Math.abs(boundsOf({ ...own, unit }).nominal / nominal - 1) < NEARLY,
  );
}

function isBelow(written: QuantityValue, stated: QuantityValue): boolean {
  const [own, wanted] = [written.reading.quantity, stated.reading.quantity];
  if (own?.dimension !== 'torque' || wanted?.dimension !== 'torque') return false;
  return boundsOf(own).highest < boundsOf(wanted).lowest;
}
