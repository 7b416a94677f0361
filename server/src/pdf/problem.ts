import type { PictureFault } from './pictureFaults';

/** A character and where on the sheet it first stands, for example `step 4`. */
export interface MissingGlyph {
  character: string;
  place: string;
}

/** Why a sheet could not be printed. */
export type PdfProblem =
  /** Characters that none of the fonts has; they would have printed as nothing. */
  | { kind: 'missingGlyph'; characters: MissingGlyph[] }
  | { kind: 'figure'; figure: string; fault: PictureFault }
  /** The engine refused the sheet, for example for a picture that is not what its name says. */
  | { kind: 'refused'; message: string }
  /** An archived file has to say of which day it is. */
  | { kind: 'archiveWithoutDate' }
  /** No engine could be started. */
  | { kind: 'noEngine'; message: string };

/** The problem in one sentence, with what to do. */
export function pdfProblemMessage(problem: PdfProblem): string {
  switch (problem.kind) {
    case 'missingGlyph':
      return `The sheet's fonts cannot print ${problem.characters.map(describeCharacter).join(', ')}; write it in another way`;
    case 'figure':
      return `Figure ${problem.figure} ${pictureFaultWords(problem.fault)}`;
    case 'refused':
      return `The sheet could not be typeset: ${problem.message}`;
    case 'archiveWithoutDate':
      return 'An archived sheet is dated by its revision; give the date of the current revision under revisions';
    case 'noEngine':
      return `The typesetting engine could not be started: ${problem.message}`;
  }
}

function pictureFaultWords(fault: PictureFault): string {
  switch (fault.kind) {
    case 'noText':
      return 'has no text for whoever cannot see it; say in "alt" what it shows';
    case 'tooLarge':
      return `is too large: ${megabytes(fault.bytes)} MB, and ${megabytes(fault.most)} MB is the most`;
    case 'tooDeep':
      return 'has too many groups inside each other; draw it more simply';
    case 'entities':
      return 'defines entities of its own; save it without them';
    case 'outside':
      return `takes "${fault.link}" from outside; put what it needs into the drawing`;
  }
}

function megabytes(bytes: number): number {
  return Math.ceil(bytes / (1024 * 1024));
}

function describeCharacter({ character, place }: MissingGlyph): string {
  const point = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return `“${character}” (U+${point}) in ${place}`;
}
