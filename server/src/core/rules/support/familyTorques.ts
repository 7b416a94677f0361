import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { valuesOf } from '../../model/values';
import { compareQuantities, parseQuantity, type Quantity, type Unit } from '../../quantity';

interface Place {
  readonly procedure: ProcedureView | undefined;
  readonly instruction: InstructionView | undefined;
}

/** The torques that the family states for what an instruction tightens, on any build. */
export function familyTorques({ procedure, instruction }: Place): Quantity[] {
  if (instruction?.instruction.verb !== 'tighten') return [];
  return (instruction.instruction.tighten ?? []).flatMap((ref) =>
    valuesOf(procedure?.family?.part(ref.id)?.torque).flatMap((value) => value.reading.quantity ?? []),
  );
}

/** Units that may be meant, those first with which a torque is what the family states. `write` gives the torque in a unit. */
export function likeliestFirst(units: readonly Unit[], place: Place, write: (unit: Unit) => string): readonly Unit[] {
  const stated = familyTorques(place);
  if (stated.length === 0) return units;
  const fits = (unit: Unit): boolean => {
    const { quantity } = parseQuantity(write(unit), 'torque');
    return quantity !== undefined && stated.some((one) => compareQuantities(quantity, one) !== 'different');
  };
  const fitting = units.filter(fits);
  return [...fitting, ...units.filter((unit) => !fitting.includes(unit))];
}
