import type { FamilyView } from '../../analysis/familyView';
import { heldValues } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { BalanceInstruction, CalculateInstruction, MeasureInstruction } from '../../model/generated/types';
import { type ByBuild, type QuantityValue, type Ref, valuesOf } from '../../model/values';
import { limitBuilds } from '../../workings/limitCases';

/** A result by which the work goes on, on builds for which nobody says what is acceptable. */
export interface WithoutLimit {
  readonly ref: Ref;
  readonly name: string;
  readonly why: 'instruction' | 'recorded' | 'elsewhere' | 'balance';
  readonly absent: BuildSet;
  readonly served: BuildSet;
}

type Judging = MeasureInstruction | CalculateInstruction | BalanceInstruction;

/** Where the result of an instruction decides something without an acceptable value. */
export function judgedBy(procedure: ProcedureView, family: FamilyView, view: InstructionView): WithoutLimit[] {
  const { instruction } = view;
  if (view.where.isEmpty) return [];
  switch (instruction.verb) {
    case 'measure':
      return measured(procedure, family, view, instruction, instruction.measure);
    case 'calculate':
      return measured(procedure, family, view, instruction, instruction.calculate);
    case 'balance':
      return balanced(procedure, family, view, instruction);
    default:
      return [];
  }
}

function measured(
  procedure: ProcedureView,
  family: FamilyView,
  { where: served }: InstructionView,
  instruction: Judging,
  ref: Ref | undefined,
): WithoutLimit[] {
  const source = ref === undefined ? undefined : sourceOf(procedure, family, ref.id);
  if (ref === undefined || source === undefined) return [];
  const decides = instruction.ifNot !== undefined;
  const { name, accept, is } = source;
  if (isRecorded(instruction.accept)) {
    return decides ? [{ ref, name, why: 'recorded', absent: served, served }] : [];
  }
  if (is === 'reading' && !decides) return [];
  const { space } = procedure;
  const own = heldValues(instruction.accept, space, served).absent;
  const holds = source.is === 'limit' ? limitBuilds(source.limit, space) : space.everything;
  const elsewhere = own.minus(holds);
  const absent = heldValues(accept, space, own.and(holds)).absent;
  return [
    ...(elsewhere.isEmpty ? [] : [{ ref, name, why: 'elsewhere' as const, absent: elsewhere, served }]),
    ...(absent.isEmpty ? [] : [{ ref, name, why: 'instruction' as const, absent, served }]),
  ];
}

/** Undefined where the id is unknown, which a rule of its own tells. */
function sourceOf(procedure: ProcedureView, family: FamilyView, id: string) {
  const limit = family.value.limits?.find((one) => one.id.id === id)?.value;
  if (limit !== undefined) {
    return { is: 'limit' as const, limit, name: limit.name?.text ?? id, accept: limit.accept };
  }
  const own = procedure.value.readings?.find((one) => one.id.id === id)?.value;
  const reading = own ?? family.value.readings?.find((one) => one.id.id === id)?.value;
  return reading && { is: 'reading' as const, name: reading.name?.text ?? id, accept: reading.accept };
}

function isRecorded(accept: ByBuild<QuantityValue> | undefined): boolean {
  const values = valuesOf(accept);
  return values.length > 0 && values.every(({ word }) => word === 'record-only');
}

/** A grade is as good as a value: the machine works the value out from it. */
function balanced(
  { space }: ProcedureView,
  family: FamilyView,
  { where: served }: InstructionView,
  instruction: BalanceInstruction,
): WithoutLimit[] {
  const ref = instruction.balance;
  const group = family.value.balanceGroups?.find((one) => one.id.id === ref?.id)?.value;
  if (ref === undefined || group === undefined) return [];
  const name = group.name?.text ?? ref.id;
  if (isRecorded(instruction.accept)) {
    return instruction.ifNot === undefined ? [] : [{ ref, name, why: 'recorded', absent: served, served }];
  }
  if (group.permissible !== undefined || group.grade !== undefined || instruction.grade !== undefined) return [];
  const { absent } = heldValues(instruction.accept, space, served);
  return absent.isEmpty ? [] : [{ ref, name, why: 'balance', absent, served }];
}
