import type { SheetWriting } from '../language';
import { fastening } from './fastening';
import { finding } from './finding';
import { fitting } from './fitting';
import { englishGrammar } from './grammar';
import { moving } from './moving';
import { englishPhrases } from './phrases';
import { treating } from './treating';

/** Controlled English: one act a sentence, commands in the imperative, one name for one thing. */
export const english: SheetWriting = {
  grammar: englishGrammar,
  phrases: englishPhrases,
  verbs: { ...fastening, ...fitting, ...treating, ...finding, ...moving },
};
