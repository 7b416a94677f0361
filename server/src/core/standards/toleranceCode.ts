/** A tolerance class of ISO 286-1, for example H7 of a hole or g6 of a shaft. */
export interface ToleranceClass {
  readonly of: 'hole' | 'shaft';
  /** As written: upper case for a hole, lower case for a shaft. */
  readonly letter: string;
  /** The number behind IT. */
  readonly grade: number;
}

/** A tolerance class or a fit as written, with the nominal size in millimetres where one stands before it. */
export type ToleranceCode =
  | { readonly kind: 'class'; readonly nominal: number | undefined; readonly toleranceClass: ToleranceClass }
  | {
      readonly kind: 'fit';
      readonly nominal: number | undefined;
      readonly hole: ToleranceClass;
      readonly shaft: ToleranceClass;
    };

const nominalAndCode =
  /^\s*(?:[Øø⌀]?\s*(\d+(?:\.\d+)?)\s*(?:mm\s*)?)?([A-Za-z]{1,2}\d{1,2})(?:\s*[/-]\s*([A-Za-z]{1,2}\d{1,2}))?\s*$/;
const letters = { hole: /^[A-Z]{1,2}$/, shaft: /^[a-z]{1,2}$/ };

/**
 * Reads `H7`, `g6`, `25 H7`, `H7/p6`, `25 H7/p6` and `25 H7-p6`, the hole before the shaft.
 * Anything else gives undefined. `M6` is read as a hole; a thread has to be told apart by where it stands.
 */
export function readToleranceCode(text: string): ToleranceCode | undefined {
  const match = nominalAndCode.exec(text);
  if (match === null) return undefined;
  const nominal = match[1] === undefined ? undefined : Number(match[1]);
  const first = readToleranceClass(match[2] ?? '');
  if (first === undefined) return undefined;
  if (match[3] === undefined) return { kind: 'class', nominal, toleranceClass: first };
  const second = readToleranceClass(match[3]);
  if (first.of !== 'hole' || second?.of !== 'shaft') return undefined;
  return { kind: 'fit', nominal, hole: first, shaft: second };
}

/** Reads `H7` or `g6` alone; letters of mixed case give undefined, since the case tells hole from shaft. */
export function readToleranceClass(text: string): ToleranceClass | undefined {
  const match = /^([A-Za-z]{1,2})(\d{1,2})$/.exec(text);
  const letter = match?.[1];
  if (letter === undefined) return undefined;
  const grade = Number(match?.[2]);
  if (letters.hole.test(letter)) return { of: 'hole', letter, grade };
  return letters.shaft.test(letter) ? { of: 'shaft', letter, grade } : undefined;
}

/** The class as it is written. */
export function writeToleranceClass({ letter, grade }: ToleranceClass): string {
  return `${letter}${grade}`;
}
