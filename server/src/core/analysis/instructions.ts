import type { Instruction } from '../model/generated/types';

/** The instructions that an instruction holds for the case that something is not as it should be. */
export function nestedInstructions(instruction: Instruction): readonly Instruction[] {
  return 'ifNot' in instruction ? (instruction.ifNot?.do ?? []) : [];
}

/** The parts that an instruction turns, fits, takes off or works on: the ids of its object. */
export function objectIds(instruction: Instruction): readonly string[] {
  return objectRefs(instruction).map((ref) => ref.id);
}

interface IdRef {
  readonly id: string;
}

export function objectRefs(instruction: Instruction): readonly IdRef[] {
  const object = (instruction as unknown as Record<string, unknown>)[instruction.verb];
  const objects = Array.isArray(object) ? object : object === undefined ? [] : [object];
  return objects.flatMap((one: unknown) => (isRef(one) ? [one] : []));
}

function isRef(value: unknown): value is IdRef {
  return typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string';
}

/** The tools that an instruction is done with, those that counter-hold included. */
export function toolIds(instruction: Instruction): string[] {
  const held = 'hold' in instruction ? (instruction.hold?.with ?? []) : [];
  return [...(instruction.with ?? []), ...held].flatMap((use) => use.tool?.id ?? []);
}

/** The consumables that an instruction uses, as its object or beside it. */
export function consumableIds(instruction: Instruction): string[] {
  const using = (instruction.using ?? []).map((ref) => ref.id);
  return instruction.verb === 'apply' ? [...objectIds(instruction), ...using] : using;
}
