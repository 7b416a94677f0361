import type { SheetLanguage } from '../sheet';
import { english } from './hazardStatements/english';
import { german } from './hazardStatements/german';
import { spanish } from './hazardStatements/spanish';

/** The statements of one language by their codes. A language has them all or it does not compile. */
export type HazardTexts = { readonly [Code in keyof typeof english]: string };
export type HazardCode = keyof HazardTexts;

/** What a statement means for a label and for whoever works: with the strongest signal word that its classes carry. */
interface HazardFacts {
  /** Some classes carry none. */
  readonly signalWord?: 'danger' | 'warning';
  /** Protection that the statement asks for, in words of our own. */
  readonly wear?: 'eyes' | 'skin' | 'breath';
}

/** A hazard statement in the words of one language. */
export interface HazardStatement extends HazardFacts {
  readonly text: string;
}

const texts: { readonly [Language in SheetLanguage]: HazardTexts } = { en: english, de: german, es: spanish };

/**
 * Signal words from memory of the GHS; those marked `compared` were held against published tables of the GHS and safety
 * data sheets.
 */
const facts: { readonly [Code in HazardCode]: HazardFacts } = {
  H220: { signalWord: 'danger' },
  H222: { signalWord: 'danger' }, // compared
  H223: { signalWord: 'warning' },
  H224: { signalWord: 'danger' },
  H225: { signalWord: 'danger' }, // compared
  H226: { signalWord: 'warning' }, // compared
  H227: { signalWord: 'warning' },
  H228: { signalWord: 'danger' },
  H229: { signalWord: 'danger' }, // compared
  H280: { signalWord: 'warning' },
  H290: { signalWord: 'warning' },
  H300: { signalWord: 'danger' },
  H301: { signalWord: 'danger' },
  H302: { signalWord: 'warning' },
  H304: { signalWord: 'danger' }, // compared
  H310: { signalWord: 'danger', wear: 'skin' },
  H311: { signalWord: 'danger', wear: 'skin' },
  H312: { signalWord: 'warning', wear: 'skin' },
  H314: { signalWord: 'danger', wear: 'eyes' }, // compared
  H315: { signalWord: 'warning', wear: 'skin' }, // compared
  H317: { signalWord: 'warning', wear: 'skin' }, // compared
  H318: { signalWord: 'danger', wear: 'eyes' }, // compared
  H319: { signalWord: 'warning', wear: 'eyes' }, // compared
  H330: { signalWord: 'danger', wear: 'breath' },
  H331: { signalWord: 'danger', wear: 'breath' },
  H332: { signalWord: 'warning', wear: 'breath' }, // compared
  H334: { signalWord: 'danger', wear: 'breath' },
  H335: { signalWord: 'warning', wear: 'breath' }, // compared
  H336: { signalWord: 'warning', wear: 'breath' }, // compared
  H340: { signalWord: 'danger' },
  H341: { signalWord: 'warning' },
  H350: { signalWord: 'danger' },
  H351: { signalWord: 'warning' }, // compared
  H360: { signalWord: 'danger' },
  H361: { signalWord: 'warning' }, // compared
  H370: { signalWord: 'danger' },
  H371: { signalWord: 'warning' },
  H372: { signalWord: 'danger' },
  H373: { signalWord: 'warning' }, // compared
  H400: { signalWord: 'warning' },
  H410: { signalWord: 'warning' },
  H411: {},
  H412: {},
  H413: {},
};

export const HAZARD_CODES = Object.keys(facts) as readonly HazardCode[];

/** The statement of a code, also with its suffix, such as `H361d`; undefined for a code that is not in the tables. */
export function hazardStatement(code: string, language: SheetLanguage): HazardStatement | undefined {
  const known = knownCode(code);
  return known && { text: texts[language][known], ...facts[known] };
}

/** The signal word of a label: danger takes the place of warning. */
export function signalWordOf(codes: readonly string[]): 'danger' | 'warning' | undefined {
  const words = codes.map((code) => factsOf(code)?.signalWord);
  if (words.includes('danger')) return 'danger';
  return words.includes('warning') ? 'warning' : undefined;
}

export function protectionOf(code: string): HazardFacts['wear'] {
  return factsOf(code)?.wear;
}

function factsOf(code: string): HazardFacts | undefined {
  const known = knownCode(code);
  return known && facts[known];
}

function knownCode(code: string): HazardCode | undefined {
  return [code.trim(), code.trim().slice(0, 4)].find((one): one is HazardCode => Object.hasOwn(facts, one));
}
