/** Languages that the fixed labels exist in. */
export type SheetLanguage = 'en' | 'de' | 'es';

export type Paper = 'a4' | 'letter';

/** Printed on one side of the paper, or on both with the margins of facing pages mirrored. */
export type Sides = 'single' | 'double';

/**
 * Where the steps stand in their document, in the order of the sheet, as character offsets, so that a click on a step can
 * open its source. It is apart from the steps: a key pressed in one moves all that stand below, and changes no more of them.
 */
export interface SheetSource {
  uri: string;
  offsets: number[];
}

/** A stretch of text with what it means; printers decide how each kind looks. */
export type Run = (
  | { kind: 'text'; text: string }
  | { kind: 'strong'; text: string }
  | { kind: 'part'; text: string }
  | { kind: 'tool'; text: string }
  | { kind: 'consumable'; text: string }
  | { kind: 'quantity'; text: string }
  | { kind: 'stepLink'; text: string; step: string }
) & {
  /** The language of these words, where it is not that of the sheet, so that they are pronounced right. */
  lang?: SheetLanguage;
};

export type Prose = Run[];
