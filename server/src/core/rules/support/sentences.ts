import type { Instruction } from '../../model/generated/types';
import type { Prose } from '../../model/values';

/** A sentence of an instruction: one that tells what to do, or one that warns. */
export interface Sentence {
  readonly prose: Prose;
  readonly warns: boolean;
}

/** What an instruction says to the fitter in the writer's own words. */
export function sentencesOf(instruction: Instruction): readonly Sentence[] {
  const sentences: Sentence[] = [];
  const tell = (prose: Prose | undefined): void => {
    if (prose !== undefined) sentences.push({ prose, warns: false });
  };
  const { say, warning, caution, notice } = instruction;
  tell(say);
  if (instruction.verb === 'check' && instruction.check?.is === 'prose') tell(instruction.check.prose);
  if ('ifNot' in instruction) {
    tell(instruction.ifNot?.say);
    tell(instruction.ifNot?.then);
  }
  for (const list of [warning, caution, notice]) for (const prose of list ?? []) sentences.push({ prose, warns: true });
  return sentences;
}
