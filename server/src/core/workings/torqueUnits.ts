import { findUnit, formatNumber, fromBase, type Unit } from '../quantity';

function unit(symbol: string): Unit {
  const found = findUnit('torque', symbol);
  // Symbols of the table only; a mistyped one would be a mistake of the program.
  if (found === undefined) throw new TypeError(`There is no unit ${symbol}`);
  return found;
}

const newtonMetre = unit('N·m');
const poundInch = unit('lbf·in');
const poundFoot = unit('lbf·ft');
const kilogramCentimetre = unit('kgf·cm');

/** The units that torques of small fasteners are stated in, and taken for one another: the likeliest first. */
export const tradeUnits: readonly Unit[] = [newtonMetre, poundInch, poundFoot, kilogramCentimetre];

/** A torque in N·m in a unit, to as many digits as a reckoned value deserves: `7.1 N·m`, `104 lbf·in`. */
export function roughTorque(torque: number, written: Unit): string {
  return `${roughNumber(fromBase(torque, written))} ${written.symbol}`;
}

/** Two significant digits, three behind a leading one: 7.1, 10.4, 63, 104. */
export function roughNumber(value: number, language: 'en' | 'de' | 'es' = 'en'): string {
  if (!Number.isFinite(value) || value === 0) return '0';
  const digits = /^[^1-9]*1/.test(String(Math.abs(value))) ? 3 : 2;
  const rounded = Number(value.toPrecision(digits));
  const places = digits - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  return formatNumber(rounded, 10 ** -Math.max(0, places), language);
}

/** The torque in the unit that it is written in, and in brackets in the trade's other one. */
export function roughBoth(torque: number, written: Unit): string {
  return `${roughTorque(torque, written)} (${roughTorque(torque, otherUnit(torque, written))})`;
}

/** The unit of the other system for a torque in N·m; pound feet from where pound inches become unwieldy, common practice. */
export function otherUnit(torque: number, written: Unit): Unit {
  if (written !== newtonMetre) return newtonMetre;
  return torque < 20 ? poundInch : poundFoot;
}
