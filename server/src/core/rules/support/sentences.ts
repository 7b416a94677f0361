import type { Instruction } from '../../model/generated/types';
import type { Prose } from '../../model/values';

/** A sentence of an instruction: one that tells what to do, or one that warns. */
export interface Sentence {
  readonly prose: Prose;
  readonly warns: boolean;
}

/** What an instruction says to the fitter in the writer's own words. */
export function sentencesOf(instruction: Instruction): readonly Sentence[] {
  const { say, warning, caution, notice } = instruction;
  const checked =
    instruction.verb === 'check' && instruction.check?.is === 'prose' ? instruction.check.prose : undefined;
  const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
  const warns = warning !== undefined || caution !== undefined || notice !== undefined;
  // Most instructions say nothing in words, and several rules ask each.
  if (!warns && say === undefined && checked === undefined && ifNot === undefined) return SILENT;
  const sentences: Sentence[] = [];
  for (const prose of [say, checked, ifNot?.say, ifNot?.then]) {
    if (prose !== undefined) sentences.push({ prose, warns: false });
  }
  for (const list of [warning, caution, notice]) {
    if (list !== undefined) for (const prose of list) sentences.push({ prose, warns: true });
  }
  return sentences;
}

const SILENT: readonly Sentence[] = [];
