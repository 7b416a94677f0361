import type { Span } from '../text/span';
import type { QuantityProblem, WrittenNumber } from './quantity';

/** A number found in a text, with what is wrong with it; `certain` is false where its value can only be guessed. */
export interface ScannedNumber {
  readonly number: WrittenNumber;
  readonly problems: readonly QuantityProblem[];
  readonly certain: boolean;
}

const mixedFraction = /(?:(\d+)[ -])?(\d+)\/([1-9]\d*)(?![\d.,/])/y;
const vulgarFraction = /(\d*) ?([½¼¾⅛⅜⅝⅞])/y;
const withComma = /\d+(?:[.,]\d+)*,\d+(?:[.,]\d+)*/y;
const groupedBySpaces = /[1-9]\d{0,2}(?: \d{3})+(?!\d)(?:\.\d+)?/y;
const plain = /\d+(?:\.\d+)?|\.\d+/y;

const vulgarValues: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Inch drills, bolts and sockets go by sixty-fourths (common practice, no source). */
const finestFraction = 1 / 64;

/** The number that starts at `start`; its sign, if any, stands at `signAt`. `text` has plain characters. */
export function scanNumber(text: string, start: number, signAt = start): ScannedNumber | null {
  return scanFraction(text, start, signAt) ?? scanComma(text, start, signAt) ?? scanDecimal(text, start, signAt);
}

function scanFraction(text: string, start: number, signAt: number): ScannedNumber | null {
  const mixed = matchAt(mixedFraction, text, start);
  const vulgar = mixed === null ? matchAt(vulgarFraction, text, start) : null;
  const match = mixed ?? vulgar;
  if (match === null) return null;
  const part = mixed === null ? (vulgarValues[match[2] ?? ''] ?? 0) : Number(match[2]) / Number(match[3]);
  const value = Number(match[1] ?? 0) + part;
  return sound(text, { start: signAt, end: start + match[0].length }, value, finestFraction, 'fraction');
}

function scanDecimal(text: string, start: number, signAt: number): ScannedNumber | null {
  const match = matchAt(groupedBySpaces, text, start) ?? matchAt(plain, text, start);
  if (match === null) return null;
  const digits = match[0].replaceAll(' ', '');
  return sound(text, { start: signAt, end: start + match[0].length }, Number(digits), lastPlace(digits), 'decimal');
}

/**
 * A comma is refused, but read where only one number can be meant, so that one slip does not hide what else is said.
 * `150,000` may be a hundred and fifty or a hundred and fifty thousand.
 */
function scanComma(text: string, start: number, signAt: number): ScannedNumber | null {
  const match = matchAt(withComma, text, start);
  if (match === null) return null;
  const written = match[0];
  const readings = readingsOfComma(written);
  const first = readings[0] ?? '';
  const digits = first.replaceAll(' ', '');
  const span = { start, end: start + written.length };
  const replacement = readings.length === 1 && readings[0] !== undefined ? { replacement: readings[0] } : {};
  const scanned = sound(text, { start: signAt, end: span.end }, Number(digits), lastPlace(digits), 'decimal');
  const problem: QuantityProblem = { kind: 'decimal-comma', span, written, readings, ...replacement };
  return { ...scanned, problems: [problem], certain: readings.length === 1 };
}

function readingsOfComma(written: string): readonly string[] {
  const asPoint = written.replace(/\./g, '').replace(',', '.');
  const asThousands = written.replaceAll(',', ' ');
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) return [asPoint, asThousands];
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(written)) return [asThousands];
  if (/^\d+,\d+$/.test(written) || /^[1-9]\d{0,2}(?:\.\d{3})+,\d+$/.test(written)) return [asPoint];
  return [];
}

function sound(
  text: string,
  span: Span,
  size: number,
  resolution: number,
  notation: WrittenNumber['notation'],
): ScannedNumber {
  const value = text[span.start] === '-' ? -size : size;
  const written = text.slice(span.start, span.end);
  return { number: { text: written, value, resolution, notation, span }, problems: [], certain: true };
}

function lastPlace(digits: string): number {
  return 10 ** -decimalsIn(digits);
}

function decimalsIn(digits: string): number {
  const point = digits.indexOf('.');
  return point < 0 ? 0 : digits.length - point - 1;
}

/** Decimal places that show a number of this resolution: 2 for 0.01, 0 for 1 and coarser. */
export function decimalsOf(resolution: number): number {
  return Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9));
}

function matchAt(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}
