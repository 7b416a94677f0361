import type { FamilyView } from '../analysis/familyView';
import type { HeldValue } from '../analysis/heldValues';
import { presentBuilds } from '../analysis/presentBuilds';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import {
  lastPass,
  type StatedAngle,
  type StatedTorques,
  tightened,
  torquesOfInstruction,
  torquesOfPart,
} from '../analysis/statedTorques';
import type { BuildSet, BuildSpace } from '../builds';
import type { QuantityValue } from '../model/values';
import type { SingleStatement } from '../quantity';
import { type FastenerJoint, jointsOf } from './joint';
import { judgeTorque, type LowEnd, type TorqueJudgement } from './torqueJudgement';

/** A torque on some builds, for the joint that the fastener has there. */
export interface TorqueCase {
  readonly value: QuantityValue;
  readonly joint: FastenerJoint;
  readonly where: BuildSet;
  readonly space: BuildSpace;
  /** The angle that is turned after the torque, which is then a snug torque. */
  readonly angle: SingleStatement | undefined;
  /** The torques of an instruction that tightens in passes; the value is the last of them. */
  readonly passes: readonly QuantityValue[];
  /** Undefined where too little is stated for a band, or the torque cannot be read. */
  readonly judgement: TorqueJudgement | undefined;
}

/** A torque of a fastener, for each joint and each angle after it that the fastener has within some builds. */
export function torqueCases(
  family: FamilyView,
  space: BuildSpace,
  id: string,
  { value, where: within }: HeldValue<QuantityValue>,
  angles: readonly HeldValue<StatedAngle>[] = [],
): TorqueCase[] {
  const turned = angles.map(({ value: { angle }, where }) => ({ angle, where: within.and(where) }));
  const rest = { angle: undefined, where: within.minus(anyOf(turned, space)) };
  return jointsOf(family, space, id).flatMap((joint) =>
    [rest, ...turned].flatMap(({ angle, where: half }) => {
      const where = joint.where.and(half);
      const lowEnd = angle !== undefined || joint.use === 'sealing' ? 'open' : 'looked-at';
      const judgement = judged(value, joint, lowEnd);
      return where.isEmpty ? [] : [{ value, joint, where, space, angle, passes: [], judgement }];
    }),
  );
}

function anyOf(sets: readonly { readonly where: BuildSet }[], space: BuildSpace): BuildSet {
  return space.union(sets.map(({ where }) => where));
}

function judged(value: QuantityValue, { joint }: FastenerJoint, lowEnd: LowEnd): TorqueJudgement | undefined {
  const { quantity } = value.reading;
  return joint && quantity && judgeTorque(quantity, joint, lowEnd);
}

/** Every torque that is stated of a part, each with its joints. */
export function torqueCasesOf(
  family: FamilyView,
  space: BuildSpace,
  id: string,
  { torques, angles }: StatedTorques,
): TorqueCase[] {
  return torques.flatMap((held) => torqueCases(family, space, id, held, angles));
}

/** Every torque that the family states for a part, on all builds that have the part. */
export function torqueCasesOfPart(family: FamilyView, id: string): TorqueCase[] {
  const { space } = family;
  const part = family.part(id);
  if (part === undefined) return [];
  return torqueCasesOf(family, space, id, torquesOfPart(part, space, presentBuilds(family, space, id)));
}

/**
 * What an instruction tightens its fasteners to: its own torque (of passes, the last), else that of the family. An angle
 * alone turns on from an earlier torque, so it takes none.
 */
export function torqueCasesOfInstruction(procedure: ProcedureView, view: InstructionView): TorqueCase[] {
  const { family, space } = procedure;
  const { instruction } = view;
  if (family === undefined || instruction.verb !== 'tighten') return [];
  return tightened(procedure, view).flatMap(({ ref, part, where }) => {
    const own = torquesOfInstruction(instruction, space, where);
    const rest = torquesOfPart(part, space, own.absent);
    const cases = [own, rest].flatMap((stated) => torqueCasesOf(family, space, ref.id, stated));
    const last = lastPass(instruction);
    return cases.map((one) => (one.value === last ? { ...one, passes: instruction.passes ?? [] } : one));
  });
}
