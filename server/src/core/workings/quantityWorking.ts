import {
  allUnits,
  boundsOf,
  type Dimension,
  decimalsOf,
  findUnit,
  formatNumber,
  formatQuantity,
  fromBase,
  isRoundingOf,
  type Quantity,
  type Statement,
  type Unit,
  usualUnits,
} from '../quantity';
import { convertStatement, numbersOf } from '../quantity/convert';
import type { Working, WorkingRow } from './working';

/** Units that are met with on older drawings and tools beside those that people write; of several, the handiest one. */
const alsoMet: Partial<Readonly<Record<Dimension, readonly string[]>>> = { torque: ['kgf·cm', 'kgf·m'] };

/** Dimensions of which a tolerance is thought of as a share of the value. */
const relative: ReadonlySet<Dimension> = new Set(['torque', 'force', 'pressure', 'flow', 'unbalance']);

/**
 * What a quantity comes to: from where to where, in every unit of the trade, and whether a value in brackets is the same.
 * Undefined where there is nothing to say beyond what is written.
 */
export function quantityWorking(quantity: Quantity, title = titleOf(quantity)): Working | undefined {
  const rows = quantityRows(quantity);
  return rows.length === 0 ? undefined : { title, builds: '', rows, steps: [], missing: [], sources: [] };
}

function titleOf(quantity: Quantity): string {
  const words = quantity.dimension === 'ratio' ? 'share' : quantity.dimension.replace('-', ' ');
  const text = `${words} ${formatQuantity(quantity, { ranges: 'words' })}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The rows of a quantity, for a working that is about more than the quantity. */
export function quantityRows(quantity: Quantity): WorkingRow[] {
  const others = otherUnits(quantity).map((unit) => ({ label: unitLabel(unit), text: textIn(quantity, unit) }));
  return [...allowedRows(quantity), ...others, ...bracketsRows(quantity)];
}

function unitLabel(unit: Unit): string {
  return `in ${unit.symbol}`;
}

/** Whether a row says what a value is in another unit. */
export function isUnitRow({ label }: WorkingRow): boolean {
  return unitLabels.has(label);
}

const unitLabels: ReadonlySet<string> = new Set(allUnits.map(unitLabel));

/** The units that the trade writes, but for the written one, one of the same size, and those in which the number is unwieldy. */
function otherUnits(quantity: Quantity): readonly Unit[] {
  const { dimension, unit: own } = quantity;
  const { nominal } = boundsOf(quantity);
  const isHandy = (unit: Unit, from: number, to: number) => {
    const size = Math.abs(fromBase(nominal, unit));
    const isOther = unit.factor !== own.factor || unit.zeroAt !== own.zeroAt;
    return isOther && (nominal === 0 || (size >= from && size < to));
  };
  // Moving the decimal sign of a large number tells nobody anything.
  const usual = usualUnits(dimension).filter((unit) => isHandy(unit, 1e-4, isShift(unit, own) ? 1000 : 1e5));
  const met = (alsoMet[dimension] ?? []).flatMap((symbol) => findUnit(dimension, symbol) ?? []);
  return [...usual, ...met.filter((unit) => isHandy(unit, 1, 250)).slice(0, 1)];
}

/** In another unit, to three significant digits or as finely as it was written. */
function textIn(quantity: Quantity, unit: Unit): string {
  const converted = convertStatement(quantity, unit, null);
  const written = resolutionOf(converted);
  const fine = isShift(unit, quantity.unit) ? written : Math.min(written, threeDigits(converted));
  const text = formatQuantity(convertStatement(quantity, unit, fine), { ranges: 'words' });
  return quantity.form === 'single' && isClosed(quantity) ? `${text} (${endsIn(quantity, unit, fine)})` : text;
}

/** Whether one unit is the other with the decimal sign moved. */
function isShift(one: Unit, other: Unit): boolean {
  const power = Math.log10(one.factor / other.factor);
  return Math.abs(power - Math.round(power)) < 1e-9;
}

function resolutionOf(statement: Statement): number {
  return Math.min(...numbersOf(statement).map(({ resolution }) => resolution));
}

function threeDigits(statement: Statement): number {
  const [value] = numbersOf(statement);
  const size = Math.abs(value?.value ?? 0);
  return size === 0 ? 1 : 10 ** Math.min(0, Math.floor(Math.log10(size)) - 2);
}

function isClosed(statement: Statement): boolean {
  const { lowest, highest } = boundsOf(statement);
  return Number.isFinite(lowest) && Number.isFinite(highest) && lowest < highest;
}

/** What a tolerance allows, or the middle of a range. */
function allowedRows(quantity: Quantity): WorkingRow[] {
  if (!isClosed(quantity) || quantity.form === 'torque-angle') return [];
  const { unit } = quantity;
  if (quantity.form !== 'range') {
    const ends = endsIn(quantity, unit, ownFineness(quantity));
    return [{ label: 'allows', text: `${ends} ${unit.symbol}${shareText(quantity)}` }];
  }
  const { lowest, nominal, highest } = boundsOf(quantity);
  const fine = middleFineness(quantity);
  const middle = formatNumber(fromBase(nominal, unit), fine);
  const amount = formatNumber((highest - lowest) / 2 / unit.factor, fine);
  return [{ label: 'middle', text: `${middle} ± ${amount} ${unit.symbol}${shareText(quantity)}` }];
}

/** How much of the value a tolerance is, where that says something and is not what is written. */
function shareText(quantity: Quantity): string {
  const { lowest, nominal, highest } = boundsOf(quantity);
  const share = (100 * (highest - nominal)) / nominal;
  const isEven = Math.abs(highest - nominal - (nominal - lowest)) < 1e-9 * nominal;
  const isWritten = quantity.form === 'single' && quantity.tolerance.kind === 'percent';
  if (!relative.has(quantity.dimension) || !isEven || isWritten) return '';
  return `, ± ${Number(share.toPrecision(2))} %`;
}

/** As it was written; a tolerance in per cent gives ends that nobody wrote, told to a twentieth of their distance. */
function ownFineness(quantity: Quantity): number {
  const isPercent = quantity.form === 'single' && quantity.tolerance.kind === 'percent';
  if (!isPercent) return resolutionOf(quantity);
  const { lowest, highest } = boundsOf(quantity);
  return 10 ** Math.floor(Math.log10((highest - lowest) / quantity.unit.factor / 20));
}

function middleFineness(quantity: Quantity): number {
  const fine = resolutionOf(quantity);
  const { nominal } = boundsOf(quantity);
  const steps = fromBase(nominal, quantity.unit) / fine;
  return Math.abs(steps - Math.round(steps)) < 1e-6 ? fine : fine / 10;
}

function endsIn(quantity: Statement, unit: Unit, fine: number): string {
  const { lowest, highest } = boundsOf(quantity);
  const [low, high] = [lowest, highest].map((end) => formatNumber(fromBase(end, unit), 10 ** -decimalsOf(fine)));
  return `${low} to ${high}`;
}

function bracketsRows({ dual, ...first }: Quantity): WorkingRow[] {
  if (dual === null) return [];
  const statement = first as Statement;
  const verdict = isRoundingOf(dual, statement)
    ? 'the same, rounded'
    : `not the same, which is ${textIn({ ...statement, dual: null }, dual.unit)}`;
  return [{ label: 'in brackets', text: `${formatQuantity(dual, { ranges: 'words' })}: ${verdict}` }];
}
