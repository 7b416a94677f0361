export type Severity = 'error' | 'warning' | 'info';
export type Paper = 'a4' | 'letter';
/** Whether a sheet is printed on one side of the paper or on both. */
export type Sides = 'single' | 'double';
export type Language = 'en' | 'de' | 'es';

/** The settings that hold for a document. */
export interface Settings {
  /** Severities that differ from a rule's own; `off` silences it. */
  readonly severities: ReadonlyMap<string, Severity | 'off'>;
  /** First and second unit by dimension, as symbols. */
  readonly units: ReadonlyMap<string, readonly string[]>;
  readonly paper: Paper;
  readonly sides: Sides;
  readonly language: Language;
  /** Of every text that stands without a language. */
  readonly writtenIn: Language;
  /** Letters that revisions leave out, for example `IOQSXZ`. */
  readonly skippedLetters?: string;
}

export const DEFAULT_SETTINGS: Settings = {
  severities: new Map(),
  units: new Map(),
  paper: 'a4',
  sides: 'single',
  language: 'en',
  writtenIn: 'en',
};
