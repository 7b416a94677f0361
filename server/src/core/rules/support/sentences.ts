import type { Instruction } from '../../model/generated/types';
import type { Prose } from '../../model/values';

/** A sentence of an instruction: one that tells what to do, or one that warns. */
export interface Sentence {
  readonly prose: Prose;
  readonly warns: boolean;
}

/** What an instruction says to the fitter in the writer's own words. */
export function sentencesOf(instruction: Instruction): Sentence[] {
  const { say, warning = [], caution = [], notice = [] } = instruction;
  const check = instruction.verb === 'check' && instruction.check?.is === 'prose' ? [instruction.check.prose] : [];
  const otherwise = 'ifNot' in instruction ? [instruction.ifNot?.say, instruction.ifNot?.then] : [];
  const tells = [say, ...check, ...otherwise].flatMap((prose) => prose ?? []);
  return [
    ...tells.map((prose) => ({ prose, warns: false })),
    ...[...warning, ...caution, ...notice].map((prose) => ({ prose, warns: true })),
  ];
}
