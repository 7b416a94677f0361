import type { Instruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import type { SentenceFacts, SheetWriting, VerbWriters } from '../language';
import { fastening } from './fastening';
import { finding } from './finding';
import { fitting } from './fitting';
import { contracted, spanishGrammar } from './grammar';
import { moving } from './moving';
import { spanishPhrases } from './phrases';
import { treating } from './treating';

type Writer = (instruction: Instruction, facts: SentenceFacts) => Prose;

/** `de el eje` arises where pieces meet, so every sentence is contracted once, when it is whole. */
function contracting(writers: VerbWriters): VerbWriters {
  const all = Object.entries(writers as unknown as Readonly<Record<string, Writer>>);
  return Object.fromEntries(
    all.map(([verb, write]) => [verb, (one: Instruction, facts: SentenceFacts) => contracted(write(one, facts))]),
  ) as unknown as VerbWriters;
}

/** Controlled Spanish: one act a sentence, commands to `usted`, one name for one thing. */
export const spanish: SheetWriting = {
  grammar: spanishGrammar,
  phrases: spanishPhrases,
  verbs: contracting({ ...fastening, ...fitting, ...treating, ...finding, ...moving }),
};
