import type { Instruction, LoosenInstruction } from '../../model/generated/types';

export type { Instruction };
export type Hold = NonNullable<LoosenInstruction['hold']>;

/** What an instruction says for the case that something is not as it should be. */
export type IfNotValue = NonNullable<Extract<Instruction, { ifNot?: unknown }>['ifNot']>;

export function ifNotValue(instruction: Instruction): IfNotValue | undefined {
  return 'ifNot' in instruction ? instruction.ifNot : undefined;
}
