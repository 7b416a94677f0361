import { findUnit, formatNumber, fromBase, type Unit } from '../quantity';

/** Below this a length is shown to a tenth of a micrometre, so that 0.0079 mm does not become 0.008 mm; in millimetres. */
const fineBelow = 0.01;

/** A computed length in mm, in the unit that the writer used; beside inches in millimetres as well. */
export function lengthText(millimetres: number, unit: Unit): string {
  const own = `${lengthNumber(millimetres, unit)} ${unit.symbol}`;
  return isMetric(unit) ? own : `${own} (${lengthNumber(millimetres, millimetre)} mm)`;
}

/** A computed range of lengths in mm: `0.005 to 0.035 mm`. */
export function lengthRangeText(lowest: number, highest: number, unit: Unit): string {
  const own = rangeIn(lowest, highest, unit);
  return isMetric(unit) ? own : `${own} (${rangeIn(lowest, highest, millimetre)})`;
}

/** A computed number to three significant digits at most, without zeros at its end: 0.0963, 248, 12.0 as 12. */
export function threeDigits(value: number): string {
  const rounded = Number(value.toPrecision(3));
  const decimals = `${rounded}`.includes('e') ? 6 : (`${rounded}`.split('.')[1]?.length ?? 0);
  return formatNumber(rounded, 10 ** -decimals);
}

/** A share in per cent to a tenth, and in whole per cents from ten on. */
export function percentText(value: number): string {
  return `${formatNumber(value, Math.abs(value) < 10 ? 0.1 : 1)} %`;
}

const millimetre = lengthUnit('mm');

function lengthUnit(symbol: string): Unit {
  const unit = findUnit('length', symbol);
  // Symbols of the table only; a mistyped one would be a mistake of the program.
  if (unit === undefined) throw new TypeError(`There is no unit ${symbol}`);
  return unit;
}

/** Units that are a power of ten of the millimetre, which everyone reads as one. */
function isMetric({ factor }: Unit): boolean {
  const exponent = Math.log10(factor);
  return Math.abs(exponent - Math.round(exponent)) < 1e-9;
}

function rangeIn(lowest: number, highest: number, unit: Unit): string {
  return `${lengthNumber(lowest, unit)} to ${lengthNumber(highest, unit)} ${unit.symbol}`;
}

/** To a micrometre, or the place of the unit next above it; zeros at the end say nothing and are left out. */
function lengthNumber(millimetres: number, unit: Unit): string {
  const finest = Math.abs(millimetres) < fineBelow ? 0.0001 : 0.001;
  const exponent = Math.ceil(Math.log10(finest / unit.factor) - 1e-9);
  const rounded = halfUp(fromBase(millimetres, unit), Math.max(0, -exponent));
  const decimals = Math.min(Math.max(0, -exponent), `${rounded}`.includes('e') ? 4 : decimalsIn(rounded));
  return formatNumber(rounded, 10 ** -decimals);
}

/** 0.0375 is 0.038 to three places, though the nearest double lies a little below. */
function halfUp(value: number, places: number): number {
  return Number((value * (1 + 1e-12)).toFixed(places));
}

function decimalsIn(value: number): number {
  return `${value}`.split('.')[1]?.length ?? 0;
}
