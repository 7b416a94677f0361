import type { BuildSet, BuildSpace } from '../builds';
import type { Part, TightenInstruction } from '../model/generated/types';
import type { QuantityValue, Ref } from '../model/values';
import type { SingleStatement } from '../quantity';
import { type HeldValue, heldValues } from './heldValues';
import { presentBuilds } from './presentBuilds';
import type { InstructionView, ProcedureView } from './procedureView';

/** An angle that is turned after the torque, and the value that it is written in. */
export interface StatedAngle {
  readonly angle: SingleStatement;
  readonly value: QuantityValue;
}

/** What a family or an instruction states of the tightening of a fastener. */
export interface StatedTorques {
  readonly torques: readonly HeldValue<QuantityValue>[];
  readonly angles: readonly HeldValue<StatedAngle>[];
  /** Where certainly neither a torque nor an angle is stated. */
  readonly absent: BuildSet;
}

/** A fastener that an instruction tightens, and the builds that have it. */
export interface Tightened {
  readonly ref: Ref;
  readonly part: Part;
  readonly name: string;
  readonly where: BuildSet;
}

/** The fasteners of the family that an instruction tightens on some build. */
export function tightened(procedure: ProcedureView, { instruction, where }: InstructionView): Tightened[] {
  const { family } = procedure;
  if (family === undefined || instruction.verb !== 'tighten') return [];
  return (instruction.tighten ?? []).flatMap((ref) => {
    const part = family.part(ref.id);
    if (part === undefined) return [];
    const served = where.and(presentBuilds(family, procedure.space, ref.id));
    return served.isEmpty ? [] : [{ ref, part, name: family.nameOf(ref.id), where: served }];
  });
}

/** What an instruction states itself: of passes, the last one counts. */
export function torquesOfInstruction(
  instruction: TightenInstruction,
  space: BuildSpace,
  within: BuildSet,
): StatedTorques {
  const torque = heldValues(instruction.torque, space, within);
  const angle = heldValues(instruction.angle, space, within);
  const last = lastPass(instruction);
  const torques = last === undefined ? torque.held : [{ value: last, where: within }, ...torque.held];
  const angles = [...anglesIn(torques), ...singles(angle.held)];
  const absent = instruction.passes === undefined ? torque.absent.and(angle.absent) : space.nothing;
  return { torques, angles, absent };
}

/** The pass that reaches the final torque; undefined where the passes are no list of torques that can be read. */
export function lastPass({ passes }: TightenInstruction): QuantityValue | undefined {
  const last = passes?.at(-1);
  return last?.reading.problems.some(({ kind }) => kind === 'trailing-text') ? undefined : last;
}

export function torquesOfPart(part: Part, space: BuildSpace, within: BuildSet): StatedTorques {
  const torque = heldValues(part.torque, space, within);
  const angle = heldValues(part.angle, space, within);
  const angles = [...anglesIn(torque.held), ...singles(angle.held)];
  return { torques: torque.held, angles, absent: torque.absent.and(angle.absent) };
}

/** The angles of values such as `2 N·m + 110°`. */
function anglesIn(torques: readonly HeldValue<QuantityValue>[]): HeldValue<StatedAngle>[] {
  return torques.flatMap(({ value, where }) => {
    const { quantity } = value.reading;
    return quantity?.form === 'torque-angle' ? [{ value: { angle: quantity.angle, value }, where }] : [];
  });
}

function singles(angles: readonly HeldValue<QuantityValue>[]): HeldValue<StatedAngle>[] {
  return angles.flatMap(({ value, where }) => {
    const { quantity } = value.reading;
    return quantity?.form === 'single' ? [{ value: { angle: quantity, value }, where }] : [];
  });
}
