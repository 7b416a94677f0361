import type { SheetWriting } from '../language';
import { fastening } from './fastening';
import { finding } from './finding';
import { fitting } from './fitting';
import { germanGrammar } from './grammar';
import { moving } from './moving';
import { germanPhrases } from './phrases';
import { treating } from './treating';

/** Controlled German of the workshop: one act a sentence, verbs in the infinitive, names without an article. */
export const german: SheetWriting = {
  grammar: germanGrammar,
  phrases: germanPhrases,
  verbs: { ...fastening, ...fitting, ...treating, ...finding, ...moving },
};
