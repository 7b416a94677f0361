import type { Instruction } from '../../model/generated/types';
import type { Prose, SheetLanguage } from '../sheet';
import { english } from './english';
import { german } from './german';
import type { SentenceFacts, SheetWriting } from './language';
import { spanish } from './spanish';

const byLanguage: { readonly [Language in SheetLanguage]: SheetWriting } = { en: english, de: german, es: spanish };

export function writingFor(language: SheetLanguage): SheetWriting {
  return byLanguage[language];
}

/** Writes the sentence of an instruction: its own wording where the writer gave some, else that of its verb. */
export function writeSentence(instruction: Instruction, facts: SentenceFacts, writing: SheetWriting): Prose {
  if (instruction.say !== undefined) return facts.prose(instruction.say);
  const write = writing.verbs[instruction.verb] as (one: Instruction, facts: SentenceFacts) => Prose;
  return write(instruction, facts);
}
