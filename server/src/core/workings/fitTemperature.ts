import { findUnit, formatNumber, fromBase, type Statement, type Unit } from '../quantity';

const celsius = findUnit('temperature', '°C');

/** A temperature in °C, in whole degrees of the unit that the writer used, and in °C beside °F; `up` rounds to the warmer side. */
export function temperatureText(
  degrees: number,
  unit: Unit | undefined,
  round: 'up' | 'down' | 'near' = 'near',
): string {
  const own = unit ?? celsius;
  if (own === undefined || own === celsius) return `${whole(degrees, round)} °C`;
  return `${whole(fromBase(degrees, own), round)} ${own.symbol} (${whole(degrees, round)} °C)`;
}

function whole(degrees: number, round: 'up' | 'down' | 'near'): string {
  const near = Math.round(degrees);
  if (Math.abs(degrees - near) < 1e-6 || round === 'near') return formatNumber(near, 1);
  return formatNumber(round === 'up' ? Math.ceil(degrees) : Math.floor(degrees), 1);
}

/** The unit of a temperature that a document states. */
export function unitOfTemperature(statement: Statement | undefined): Unit | undefined {
  return statement?.dimension === 'temperature' ? statement.unit : undefined;
}
