import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { type BuildSet, valuesByBuild } from '../../builds';
import type { TightenInstruction } from '../../model/generated/types';
import type { ByBuild, QuantityValue, Ref } from '../../model/values';

/** A fastener that is brought to a torque, with the values that it can have and the builds that have one. */
export interface Tightening {
  readonly ref: Ref;
  readonly name: string;
  readonly where: BuildSet;
  readonly torques: readonly QuantityValue[];
}

/**
 * What an instruction brings to a torque: its own, or the family's where it states none. An angle alone turns on from
 * where an earlier torque left off, so it takes no torque.
 */
export function tightenings(procedure: ProcedureView, view: InstructionView): Tightening[] {
  const { instruction, where } = view;
  if (instruction.verb !== 'tighten') return [];
  return (instruction.tighten ?? []).flatMap((ref) => {
    const one = tightening(procedure, instruction, ref, where);
    return one.where.isEmpty || one.torques.length === 0 ? [] : [one];
  });
}

function tightening(procedure: ProcedureView, instruction: TightenInstruction, ref: Ref, where: BuildSet): Tightening {
  const name = procedure.family?.nameOf(ref.id) ?? ref.id;
  const last = instruction.passes?.at(-1);
  if (last !== undefined) return { ref, name, where, torques: [last] };
  const present = procedure.family === undefined ? where : where.and(procedure.presence(ref.id));
  if (instruction.torque !== undefined) return { ref, name, ...valuesWithin(procedure, instruction.torque, where) };
  const part = procedure.family?.part(ref.id);
  if (part?.torque === undefined || instruction.angle !== undefined) {
    return { ref, name, where: procedure.space.nothing, torques: [] };
  }
  return { ref, name, ...valuesWithin(procedure, part.torque, present) };
}

/** The values that hold in some of the builds, and all of the builds in which one does. */
function valuesWithin(
  procedure: ProcedureView,
  byBuild: ByBuild<QuantityValue>,
  within: BuildSet,
): { where: BuildSet; torques: QuantityValue[] } {
  if (byBuild.is === 'one') return { where: within, torques: [byBuild.value] };
  const { space } = procedure;
  const entries = byBuild.cases.flatMap((one) => (one.expr === undefined ? [] : [{ ...one, expr: one.expr }]));
  const otherwise = byBuild.cases.find((one) => one.otherwise);
  const values = valuesByBuild(
    space,
    entries.map(({ key, expr }) => ({ key: key.text, expr })),
    { otherwise: otherwise !== undefined, within },
  );
  const torques = entries.flatMap(({ value }, place) => (values.coverage[place]?.isEmpty === false ? [value] : []));
  if (otherwise !== undefined && !values.otherwise.isEmpty) torques.push(otherwise.value);
  return { where: within.minus(values.absent), torques };
}
