/** Why a sheet could not be printed. */
export type PdfProblem =
  /** Characters that none of the fonts has; they would have printed as nothing. */
  | { kind: 'missingGlyph'; characters: string[] }
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
    case 'refused':
      return `The sheet could not be typeset: ${problem.message}`;
    case 'archiveWithoutDate':
      return 'An archived sheet is dated by its revision; give the date of the current revision under revisions';
    case 'noEngine':
      return `The typesetting engine could not be started: ${problem.message}`;
  }
}

function describeCharacter(character: string): string {
  const point = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return `“${character}” (U+${point})`;
}
