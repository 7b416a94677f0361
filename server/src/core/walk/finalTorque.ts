import { anyHeldOf, meetings } from '../analysis/heldValues';
import { lastPass, type StatedTorques, torquesOfInstruction, torquesOfPart } from '../analysis/statedTorques';
import type { BuildSet } from '../builds';
import type { TightenInstruction } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { boundsOf } from '../quantity';
import type { UnitModel } from './unitModel';

/** Where a tightening is not the final one. */
export interface NotFinal {
  /** Its last pass is below the torque of the family. */
  readonly pass: BuildSet;
  /** Its own torque is, or the angle that the family states is not turned: a rule of its own says so in the step. */
  readonly contradicts: BuildSet;
}

/** Compares a tightening with what the family states. Without values of its own it brings the family's. */
export function notFinal(unit: UnitModel, instruction: TightenInstruction, part: string, where: BuildSet): NotFinal {
  const { space } = unit;
  const facts = unit.part(part);
  const { torque, angle, passes } = instruction;
  if (facts === undefined || (torque === undefined && angle === undefined && passes === undefined))
    return { pass: space.nothing, contradicts: space.nothing };
  const own = torquesOfInstruction(instruction, space, where);
  const family = torquesOfPart(facts, space, where);
  const below = belowFamily(own, family, unit);
  const noAngle = withoutAngle(own, family, unit);
  const isPass = lastPass(instruction) !== undefined;
  return isPass
    ? { pass: below, contradicts: noAngle.minus(below) }
    : { pass: space.nothing, contradicts: below.or(noAngle) };
}

function belowFamily(own: StatedTorques, family: StatedTorques, { space }: UnitModel): BuildSet {
  let below = space.nothing;
  for (const { first, second, where } of meetings(own.torques, family.torques)) {
    if (isBelow(first, second)) below = below.or(where);
  }
  return below;
}

/** The family has the torque followed by an angle, and the instruction gives the torque alone. */
function withoutAngle(own: StatedTorques, family: StatedTorques, { space }: UnitModel): BuildSet {
  const turned = anyHeldOf(family.angles, space).and(anyHeldOf(own.torques, space));
  return turned.minus(anyHeldOf(own.angles, space));
}

function isBelow(value: QuantityValue, wanted: QuantityValue): boolean {
  const [own, other] = [value.reading.quantity, wanted.reading.quantity];
  if (own?.dimension !== 'torque' || other?.dimension !== 'torque') return false;
  return boundsOf(own).highest < boundsOf(other).lowest;
}
