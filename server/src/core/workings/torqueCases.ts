import type { FamilyView } from '../analysis/familyView';
import { anyHeldOf, type HeldValue } from '../analysis/heldValues';
import { presentBuilds } from '../analysis/presentBuilds';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { type StatedTorques, tightened, torquesOfInstruction, torquesOfPart } from '../analysis/statedTorques';
import type { BuildSet, BuildSpace } from '../builds';
import type { QuantityValue } from '../model/values';
import { type FastenerJoint, jointsOf } from './joint';
import { judgeTorque, type LowEnd, type TorqueJudgement } from './torqueJudgement';

/** A torque on some builds, for the joint that the fastener has there. */
export interface TorqueCase {
  readonly value: QuantityValue;
  readonly joint: FastenerJoint;
  readonly where: BuildSet;
  readonly space: BuildSpace;
  /** Undefined where too little is stated for a band, or the torque cannot be read. */
  readonly judgement: TorqueJudgement | undefined;
}

/** A torque of a fastener, for each joint that the fastener has within some builds; `snug` are those where an angle follows. */
export function torqueCases(
  family: FamilyView,
  space: BuildSpace,
  id: string,
  { value, where: within }: HeldValue<QuantityValue>,
  snug: BuildSet = space.nothing,
): TorqueCase[] {
  return jointsOf(family, space, id).flatMap((joint) =>
    ([within.minus(snug), within.and(snug)] as const).flatMap((half, at) => {
      const where = joint.where.and(half);
      const lowEnd = at === 1 || joint.use === 'sealing' ? 'open' : 'looked-at';
      return where.isEmpty ? [] : [{ value, joint, where, space, judgement: judged(value, joint, lowEnd) }];
    }),
  );
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
  const snug = anyHeldOf(angles, space);
  return torques.flatMap((held) => torqueCases(family, space, id, held, snug));
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
    return [own, rest].flatMap((stated) => torqueCasesOf(family, space, ref.id, stated));
  });
}
