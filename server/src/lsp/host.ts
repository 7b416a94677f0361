import type { Uri } from '../core/analysis/uri';
import type { FileSource } from '../core/analysis/workspace';
import type { Sheet } from '../core/sheet/sheet';
import type { SheetPagePicture, StepMark } from './protocol';

/** For paper, or with a field for every box and blank. */
export type PrintedVariant = 'print' | 'fillable';

export type PrintOutcome = { readonly is: 'printed' } | { readonly is: 'refused'; readonly why: string };

/** The pages with the places of the steps on them, by their numbers. */
export type DrawOutcome =
  | {
      readonly is: 'drawn';
      readonly pages: readonly SheetPagePicture[];
      readonly steps: readonly Pick<StepMark, 'number' | 'page' | 'y'>[];
    }
  | { readonly is: 'refused'; readonly why: string };

/** Everything that the server needs of the platform it runs on. */
export interface Host {
  readonly files: FileSource;
  /** All documents below a folder; what may not be opened is passed over. */
  documentsBelow(folder: Uri): AsyncIterable<Uri>;
  /** The day for which dates are judged, as `2026-10-12`. */
  today(): string;
  /** Resolves once messages that have arrived meanwhile have been heard. */
  nextTurn(): Promise<void>;
  /** Resolves after so many milliseconds. */
  pause(milliseconds: number): Promise<void>;
  /**
   * Asks to keep memory low rather than save time, or not to any more: while many documents are checked that nobody looks
   * at. Where the platform cannot be asked, it does as it does.
   */
  spareMemory?(isSpared: boolean): void;
  /** A URI at which the page of a rule can be opened, where the platform has the pages. */
  rulePage?(rule: string): string | undefined;
  /** The printed pages as drawings. */
  draw(sheet: Sheet): Promise<DrawOutcome>;
  print(sheet: Sheet, target: Uri, variant: PrintedVariant): Promise<PrintOutcome>;
}
