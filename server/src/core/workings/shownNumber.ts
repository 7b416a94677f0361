import { formatNumber } from '../quantity';

/**
 * A value of a calculation as it is shown: three significant digits, since no torque, no friction and no strength is known
 * better; what is given stands as it was given, and lengths to a thousandth of a millimetre at least, since limits are
 * stated so.
 */
export function shownNumber(value: number, unit: string, isGiven = false): string {
  if (!Number.isFinite(value)) return '—';
  if (value === 0) return '0';
  const digits = isGiven ? 7 : significant(value, unit);
  const rounded = Number(value.toPrecision(digits));
  return formatNumber(rounded, 10 ** -decimalsNeeded(rounded));
}

const usualDigits = 3;
const lengthDecimals = 3;

function significant(value: number, unit: string): number {
  if (unit !== 'mm') return usualDigits;
  const before = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(15, Math.max(usualDigits, before + lengthDecimals));
}

function decimalsNeeded(value: number): number {
  const [mantissa = '', exponent = '0'] = String(value).split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return Math.max(0, decimals - Number(exponent));
}
