import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { type Dimension, findUnit } from '../../server/src/core/quantity';

/** Our symbol, and the same unit in the language of GNU units 2.22 (Debian); the first of a dimension is what the others are set against. */
const UNITS: readonly (readonly [Dimension, symbol: string, gnu: string])[] = [
  ['torque', 'N·m', 'N m'],
  ['torque', 'cN·m', 'cN m'],
  ['torque', 'kN·m', 'kN m'],
  ['torque', 'N·mm', 'N mm'],
  ['torque', 'lbf·ft', 'lbf foot'],
  ['torque', 'lbf·in', 'lbf inch'],
  ['torque', 'ozf·in', 'ounce force inch'],
  ['torque', 'kgf·m', 'kgf m'],
  ['torque', 'kgf·cm', 'kgf cm'],
  ['torque', 'gf·cm', 'gram force cm'],
  ['force', 'N', 'N'],
  ['force', 'lbf', 'lbf'],
  ['force', 'ozf', 'ounce force'],
  ['force', 'kgf', 'kgf'],
  ['mass', 'g', 'gram'],
  ['mass', 'kg', 'kg'],
  ['mass', 'lb', 'pound'],
  ['mass', 'oz', 'ounce'],
  ['unbalance', 'g·mm', 'gram mm'],
  ['unbalance', 'g·in', 'gram inch'],
  ['unbalance', 'oz·in', 'ounce inch'],
  ['unbalance', 'lb·in', 'pound inch'],
  ['length', 'mm', 'mm'],
  ['length', 'µm', 'micrometer'],
  ['length', 'in', 'inch'],
  ['length', 'thou', 'mil'],
  ['length', 'ft', 'foot'],
  ['angle', '°', 'degree'],
  ['angle', '′', 'arcmin'],
  ['angle', 'rad', 'radian'],
  ['angle', 'rev', 'turn'],
  ['pressure', 'Pa', 'Pa'],
  ['pressure', 'bar', 'bar'],
  ['pressure', 'psi', 'psi'],
  ['pressure', 'kgf/cm²', 'kgf/cm^2'],
  ['volume', 'mL', 'ml'],
  ['volume', 'in³', 'inch^3'],
  ['volume', 'gal', 'gallon'],
  ['flow', 'L/min', 'liter/minute'],
  ['flow', 'm³/h', 'm^3/hour'],
  ['flow', 'ft³/min', 'foot^3/minute'],
  ['time', 's', 's'],
  ['time', 'h', 'hour'],
  ['time', 'd', 'day'],
  ['speed', 'm/s', 'm/s'],
  ['speed', 'ft/min', 'foot/minute'],
  ['speed', 'mi/h', 'mile/hour'],
];

/** GNU units sits in many distributions; where it does not, the two libraries that come with the tests have to do. */
const isInstalled = spawnSync('units', ['--version']).status === 0;

function asked(pairs: readonly (readonly [have: string, want: string])[]): number[] {
  const input = pairs.map(([have, want]) => `${have}\n${want}\n`).join('');
  const { stdout } = spawnSync('units', ['-q', '-t', '-o', '%.17g'], { input, encoding: 'utf8' });
  return stdout.trim().split('\n').map(Number);
}

/** Double precision, so that both sides can only differ by the order of their multiplications. */
test.skipIf(!isInstalled)('every unit has the size that GNU units gives it, within 1e-12', () => {
  const firsts = new Map<Dimension, readonly [symbol: string, gnu: string]>();
  for (const [dimension, symbol, gnu] of UNITS) if (!firsts.has(dimension)) firsts.set(dimension, [symbol, gnu]);
  const sizes = asked(UNITS.map(([dimension, , gnu]) => [gnu, firsts.get(dimension)?.[1] ?? '']));
  const apart = UNITS.flatMap(([dimension, symbol], i) => {
    const own = findUnit(dimension, symbol)?.factor ?? Number.NaN;
    const first = findUnit(dimension, firsts.get(dimension)?.[0] ?? '')?.factor ?? Number.NaN;
    const ratio = own / first / (sizes[i] ?? Number.NaN);
    return Math.abs(ratio - 1) <= 1e-12 ? [] : [`${symbol}: ${own / first}, GNU units ${sizes[i]}`];
  });
  expect(sizes).toHaveLength(UNITS.length);
  expect(apart).toEqual([]);
});
