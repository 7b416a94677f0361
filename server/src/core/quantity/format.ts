import { convertStatement } from './convert';
import type { Quantity, Statement, Tolerance, WrittenNumber } from './quantity';
import type { Unit } from './unit';
import { decimalsOf } from './writtenNumber';

/** How a quantity is to be written. Without any of it: as a document writes it, in its own unit, with plain spaces. */
export interface QuantityFormat {
  /** Unit to write it in; one of another dimension is passed over. */
  readonly unit?: Unit;
  /** Decides the decimal sign and the word in ranges. */
  readonly language?: 'en' | 'de' | 'es';
  /** No-break spaces, so that no line ends between a number and its unit. */
  readonly noBreak?: boolean;
  /** `4.8..5.4 N·m` as in a document, or `4.8 to 5.4 N·m` as on a printed page. */
  readonly ranges?: 'dots' | 'words';
  /** Also write the value in brackets, where there is one. */
  readonly dual?: boolean;
}

const rangeWords = { en: 'to', de: 'bis', es: 'a' } as const;

/** Writes a quantity by the rules of the SI Brochure, 5.4: number, space, unit; no space before ° ′ ″; digits in threes from five on. */
export function formatQuantity(quantity: Quantity | Statement, format: QuantityFormat = {}): string {
  const first = formatStatement(quantity, format);
  const dual = format.dual === true && 'dual' in quantity ? quantity.dual : null;
  const { unit: _, ...sameUnits } = format;
  const text = dual === null ? first : `${first} (${formatStatement(dual, sameUnits)})`;
  return format.noBreak === true ? text.replaceAll(' ', '\u00a0') : text;
}

/** Writes a plain number to a resolution, with the decimal sign of the language: `150 000`, `0,05`. */
export function formatNumber(value: number, resolution: number, language: 'en' | 'de' | 'es' = 'en'): string {
  const [whole = '', decimals] = Math.abs(value)
    .toFixed(Math.min(20, decimalsOf(resolution)))
    .split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, ' ') : whole;
  const digits = decimals === undefined ? grouped : `${grouped}${language === 'en' ? '.' : ','}${decimals}`;
  return value < 0 && /[1-9]/.test(digits) ? `−${digits}` : digits;
}

function formatStatement(given: Statement, format: QuantityFormat): string {
  const { unit = given.unit } = format;
  const other = unit !== given.unit && unit.dimension === given.dimension;
  const statement = other ? convertStatement(given, unit, null) : given;
  switch (statement.form) {
    case 'at-most':
      return `≤ ${write(statement.number, format)}${unitText(statement.unit)}`;
    case 'at-least':
      return `≥ ${write(statement.number, format)}${unitText(statement.unit)}`;
    case 'range':
      return formatRange(write(statement.low, format), write(statement.high, format), statement.unit, format);
    case 'single':
      return formatToleranced(statement.number, statement.tolerance, statement.unit, format);
    case 'torque-angle': {
      const torque = formatToleranced(statement.number, statement.tolerance, statement.unit, format);
      return `${torque} + ${formatToleranced(statement.angle.number, statement.angle.tolerance, statement.angle.unit, format)}`;
    }
  }
}

function formatRange(low: string, high: string, unit: Unit, format: QuantityFormat): string {
  const join = format.ranges === 'words' ? ` ${rangeWords[format.language ?? 'en']} ` : '..';
  // A degree sign belongs to each number, since nothing else parts it from them.
  return unit.gap === 'none'
    ? `${low}${unit.symbol}${join}${high}${unit.symbol}`
    : `${low}${join}${high} ${unit.symbol}`;
}

function formatToleranced(number: WrittenNumber, tolerance: Tolerance, unit: Unit, format: QuantityFormat): string {
  const value = write(number, format);
  const symbol = unitText(unit);
  switch (tolerance.kind) {
    case 'none':
      return `${value}${symbol}`;
    case 'percent':
      return `${value}${symbol} ± ${write(tolerance.percent, format)} %`;
    case 'symmetric': {
      const amount = write(tolerance.amount, format);
      return unit.gap === 'none' ? `${value}${symbol} ± ${amount}${symbol}` : `${value} ± ${amount}${symbol}`;
    }
    case 'asymmetric':
      return `${value} ${signed(tolerance.upper, format)}/${signed(tolerance.lower, format)}${symbol}`;
  }
}

function unitText(unit: Unit): string {
  return unit.gap === 'none' ? unit.symbol : ` ${unit.symbol}`;
}

function signed(number: WrittenNumber, format: QuantityFormat): string {
  return number.value > 0 ? `+${write(number, format).replace(/^\+/, '')}` : write(number, format);
}

function write(number: WrittenNumber, format: QuantityFormat): string {
  if (number.notation === 'fraction') return number.text.replace(/^-/, '−').replace(/ +/g, ' ');
  return formatNumber(number.value, number.resolution, format.language);
}
