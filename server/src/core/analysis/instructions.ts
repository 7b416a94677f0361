import type { Instruction } from '../model/generated/types';
import type { Ref } from '../model/values';

/** The instructions that an instruction holds for the case that something is not as it should be. */
export function nestedInstructions(instruction: Instruction): readonly Instruction[] {
  return 'ifNot' in instruction ? (instruction.ifNot?.do ?? []) : [];
}

/** The parts that an instruction turns, fits, takes off or works on: the ids of its object. */
export function objectIds(instruction: Instruction): readonly string[] {
  return objectRefs(instruction).map((ref) => ref.id);
}

export function objectRefs(instruction: Instruction): readonly Ref[] {
  return refsAt(instruction, instruction.verb);
}

/** What an instruction names as its object, or as what it is done to: behind `to` and `across`. */
export function namedRefs(instruction: Instruction): readonly Ref[] {
  return [instruction.verb, 'to', 'across', 'plus'].flatMap((key) => refsAt(instruction, key));
}

function refsAt(instruction: Instruction, key: string): readonly Ref[] {
  const value = (instruction as unknown as Record<string, unknown>)[key];
  if (value === undefined) return NO_REFS;
  if (!Array.isArray(value)) return isRef(value) ? [value] : NO_REFS;
  return value.every(isRef) ? value : value.filter(isRef);
}

const NO_REFS: readonly Ref[] = [];

function isRef(value: unknown): value is Ref {
  return typeof value === 'object' && value !== null && 'id' in value && 'range' in value;
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
