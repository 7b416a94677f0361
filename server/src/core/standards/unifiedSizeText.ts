import { type DesignationCursor, decimal, take, takePart } from './designationCursor';
import { seriesOf, type UnifiedSize, unifiedSize, unifiedSizeOf } from './unifiedThreads';

/** A size of the unified system as it was written. */
export interface WrittenSize {
  readonly form: 'numbered' | 'fraction' | 'decimal' | 'integer';
  /** As it is to be written: a size of the table by its own name. */
  readonly text: string;
  readonly inches: number;
  /** The size of the table, where it is one. */
  readonly known: UnifiedSize | undefined;
}

const numbered = /\s*(?:#|No\.?)\s*(\d{1,2})(?!\d|\/)/iy;
const mixed = /\s*(\d{1,2})[\s-](\d{1,2})\/(\d{1,2})(?!\d)/y;
const fraction = /\s*(\d{1,2})\/(\d{1,2})(?!\d)/y;
const withPoint = /\s*(\d?[.,]\d+)(?!\d)/y;
const integer = /\s*(\d{1,2})(?![\d.,/A-Za-z])/y;
const inchMark = /\s*(?:"|″|''|in\b\.?|inch\b)/iy;

/** Reads `#10`, `No. 10`, `10` (before 32), `1/4`, `1-1/8`, `.190` or `1`, with or without an inch mark. */
export function readUnifiedSize(cursor: DesignationCursor): WrittenSize | undefined {
  const size = readNumbered(cursor) ?? readFraction(cursor) ?? readDecimal(cursor) ?? readInteger(cursor);
  if (size !== undefined && size.form !== 'numbered') take(cursor, inchMark);
  return size;
}

function readNumbered(cursor: DesignationCursor): WrittenSize | undefined {
  const match = takePart(cursor, 'size', numbered);
  return match && numberedSize(Number(match[1]), 'numbered');
}

/** Numbered sizes are 0.060 in and 0.013 in more with each number (ASME B1.1). */
function numberedSize(number: number, form: WrittenSize['form']): WrittenSize {
  const known = unifiedSize(`#${number}`);
  return { form, text: `#${number}`, inches: known?.inches ?? 0.06 + 0.013 * number, known };
}

function readFraction(cursor: DesignationCursor): WrittenSize | undefined {
  const long = takePart(cursor, 'size', mixed);
  const match = long ?? takePart(cursor, 'size', fraction);
  if (match === undefined) return undefined;
  const [whole, top, bottom] = long === undefined ? [0, match[1], match[2]] : match.slice(1);
  const inches = Number(whole) + Number(top) / Number(bottom);
  if (!(inches > 0 && Number.isFinite(inches))) return undefined;
  const text = Number(whole) === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
  return sizeOf('fraction', text, inches);
}

function readDecimal(cursor: DesignationCursor): WrittenSize | undefined {
  const written = takePart(cursor, 'size', withPoint)?.[1];
  if (written === undefined) return undefined;
  const inches = decimal(written);
  return inches > 0 ? sizeOf('decimal', written.replace(',', '.'), inches) : undefined;
}

/** A bare whole number is a numbered size where the count behind it says so: `10-32`, but `1-8` is one inch. */
function readInteger(cursor: DesignationCursor): WrittenSize | undefined {
  const match = takePart(cursor, 'size', integer);
  if (match === undefined) return undefined;
  const number = Number(match[1]);
  const rest = cursor.text.slice(cursor.at);
  const count = Number(/^\s*[-x×\s]\s*(\d+)/i.exec(rest)?.[1]);
  const asNumber = numberedSize(number, 'integer');
  if (asNumber.known !== undefined && seriesOf(asNumber.known, count) !== undefined) return asNumber;
  const isInches = number >= 1 && number <= 4 && (count <= 20 || inchMarkFollows(rest));
  return isInches ? sizeOf('integer', String(number), number) : asNumber;
}

function inchMarkFollows(rest: string): boolean {
  return /^\s*(?:"|″|in\b|inch\b)/i.test(rest);
}

function sizeOf(form: WrittenSize['form'], written: string, inches: number): WrittenSize {
  const known = unifiedSizeOf(inches);
  return known === undefined
    ? { form, text: written, inches, known }
    : { form, text: known.size, inches: known.inches, known };
}
