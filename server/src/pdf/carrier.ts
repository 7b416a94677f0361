import type { DrawnSheet } from './drawnPages';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';

/** One way to run the typesetting engine. Both give the same bytes for the same files. */
export interface Carrier {
  typeset(files: JobFiles): Promise<Uint8Array | { problem: PdfProblem }>;
  /** The same pages as drawings, with where their steps begin. */
  draw(files: JobFiles): Promise<DrawnSheet | { problem: PdfProblem }>;
  close(): Promise<void>;
}
