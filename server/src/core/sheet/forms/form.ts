import type { Condition, Prose, SheetLanguage, StepPlace } from '../sheet';

/**
 * What stands before and after the steps, as a paper form: words, and places to write and tick in. It is decided once,
 * so that the preview and the printed page say the same in the same order; a printer only lays it out.
 */
export interface Form {
  /** Names it in the page, for example `tools`. */
  name: string;
  title: string;
  page: FormPage;
  blocks: FormBlock[];
}

/** `own`: a page of its own, because it is handed on; `start`: begins a page, because it is filed; `flow`: neither. */
export type FormPage = 'own' | 'start' | 'flow';

export type FormBlock =
  | { kind: 'heading'; text: string }
  | { kind: 'note'; text: string }
  | { kind: 'strong'; text: string }
  /** Boxes side by side, each with its label above; one without words is written into. */
  | { kind: 'boxes'; rows: FormBox[][] }
  /** Empty lines below a label; on paper they may grow to what is left of a page of their own. */
  | { kind: 'lines'; label: string; count: number; grows: boolean }
  | { kind: 'ticks'; items: Prose[] }
  /** The table of torques, which printers have of their own. */
  | { kind: 'torques' }
  | FormTable;

export interface FormBox {
  label: string;
  /** Printed in the box. */
  text?: string;
  /** Stands small beside the label. */
  hint?: string;
  unit?: string;
  at: StepPlace[];
  /** Its part of the row, in parts of equal width. */
  share: number;
}

export interface FormTable {
  kind: 'table';
  name: string;
  columns: FormColumn[];
  rows: FormCell[][];
  /** `tall` rows leave room for a signature. */
  height: 'plain' | 'tall';
}

export interface FormColumn {
  head: string;
  width: ColumnWidth;
}

/** From the narrowest to the widest; `rest` and `wide` share what the others leave, as 1 to 1.5. */
export type ColumnWidth = 'tick' | 'step' | 'short' | 'medium' | 'long' | 'rest' | 'wide';

export type FormCell =
  | { kind: 'text'; texts: CellText[]; condition?: Condition }
  | { kind: 'steps'; at: StepPlace[] }
  /** Limits in one unit or two. */
  | { kind: 'limits'; text: string }
  /** A line to write on for each; with none the whole cell is written into. */
  | { kind: 'blanks'; blanks: CellBlank[] }
  | { kind: 'choices'; values: string[] }
  /** A box alone; the name is for whoever cannot see it. */
  | { kind: 'tick'; name: string };

/** One line of words in a cell. */
export interface CellText {
  text: string;
  strong: boolean;
  /** The language of the words, where it is not that of the sheet. */
  lang?: SheetLanguage;
}

export interface CellBlank {
  label: string;
  unit: string;
}
