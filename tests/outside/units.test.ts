// @ts-expect-error The package brings no types; the one function used here is described below.
import ucumPackage from '@lhncbc/ucum-lhc';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  allUnits,
  type Dimension,
  dimensionFacts,
  findUnit,
  parseQuantity,
  toBase,
  type Unit,
} from '../../server/src/core/quantity';

interface Ucum {
  convertUnitTo(
    from: string,
    value: number,
    to: string,
  ): { readonly toVal: number | null; readonly msg: readonly string[] };
}

const mathjs = create(all ?? {});
const ucum: Ucum = ucumPackage.UcumLhcUtils.getInstance();

function unitOf(dimension: Dimension, symbol: string): Unit {
  const unit = findUnit(dimension, symbol);
  if (unit === undefined) throw new Error(`no ${symbol} among the units of ${dimension}`);
  return unit;
}

function expectNear(actual: number, expected: number, relative: number) {
  expect(Math.abs(actual - expected) / Math.abs(expected)).toBeLessThanOrEqual(relative);
}

/**
 * Exact sizes in base units, computed by hand from standard gravity 9.806 65 m/s², 1 lb = 0.453 592 37 kg and 1 in = 25.4 mm
 * (NIST SP 811, appendix B), with a calculator of forty digits.
 */
test.each<[Dimension, string, string]>([
  ['torque', 'dN·m', '0.1'],
  ['torque', 'cN·m', '0.01'],
  ['torque', 'daN·m', '10'],
  ['torque', 'lbf·ft', '1.3558179483314004'],
  ['torque', 'lbf·in', '0.1129848290276167'],
  ['torque', 'ozf·in', '0.00706155181422604375'],
  ['torque', 'kgf·m', '9.80665'],
  ['torque', 'kgf·cm', '0.0980665'],
  ['torque', 'gf·cm', '0.0000980665'],
  ['force', 'lbf', '4.4482216152605'],
  ['force', 'kgf', '9.80665'],
  ['pressure', 'psi', '6894.757293168361336722673445346890693788'],
  ['pressure', 'bar', '100000'],
  ['pressure', 'kgf/cm²', '98066.5'],
  ['length', 'in', '25.4'],
  ['length', 'thou', '0.0254'],
  ['length', 'µm', '0.001'],
  ['unbalance', 'oz·in', '720.077887375'],
  ['unbalance', 'lb·in', '11521.246198'],
  ['temperature-difference', '°F', '0.55555555555555555555'],
  ['rotational-speed', 's⁻¹', '60'],
])('%s: %s is %s base units', (dimension, symbol, expected) => {
  expect(unitOf(dimension, symbol).factor).toBe(Number(expected));
});

/**
 * NIST SP 811 (2008), appendix B.8, prints these seven-digit factors, seen as quoted in other programs' comments.
 */
test.each<[Dimension, string, string]>([
  ['torque', 'lbf·ft', '1.355818'],
  ['torque', 'lbf·in', '0.1129848'],
  ['pressure', 'psi', '6894.757'],
  ['pressure', 'inHg', '3386.389'],
])('%s: %s rounds to the printed %s', (dimension, symbol, printed) => {
  expect(Number(unitOf(dimension, symbol).factor.toPrecision(7))).toBe(Number(printed));
});

/** Our symbol, and the same unit in the languages of mathjs 15.2.0 and UCUM (@lhncbc/ucum-lhc 7.1.10); '' where it has none. */
const outside: readonly (readonly [Dimension, symbol: string, mathjs: string, ucum: string])[] = [
  ['torque', 'N·m', 'N m', 'N.m'],
  ['torque', 'mN·m', 'mN m', 'mN.m'],
  ['torque', 'cN·m', 'cN m', 'cN.m'],
  ['torque', 'dN·m', 'dN m', 'dN.m'],
  ['torque', 'daN·m', 'daN m', 'daN.m'],
  ['torque', 'kN·m', 'kN m', 'kN.m'],
  ['torque', 'N·cm', 'N cm', 'N.cm'],
  ['torque', 'N·mm', 'N mm', 'N.mm'],
  ['torque', 'lbf·ft', 'lbf ft', '[lbf_av].[ft_i]'],
  ['torque', 'lbf·in', 'lbf in', '[lbf_av].[in_i]'],
  // Neither knows the ounce-force: a sixteenth of a pound-force.
  ['torque', 'ozf·in', '0.0625 lbf in', '[lbf_av].[in_i]/16'],
  ['torque', 'kgf·m', 'kgf m', 'kgf.m'],
  ['torque', 'kgf·cm', 'kgf cm', 'kgf.cm'],
  ['torque', 'gf·cm', '', 'gf.cm'],
  ['force', 'N', 'N', 'N'],
  ['force', 'mN', 'mN', 'mN'],
  ['force', 'daN', 'daN', 'daN'],
  ['force', 'kN', 'kN', 'kN'],
  ['force', 'lbf', 'lbf', '[lbf_av]'],
  ['force', 'ozf', '0.0625 lbf', '[lbf_av]/16'],
  ['force', 'kgf', 'kgf', 'kgf'],
  ['force', 'gf', '', 'gf'],
  ['mass', 'kg', 'kg', 'kg'],
  ['mass', 'g', 'g', 'g'],
  ['mass', 'mg', 'mg', 'mg'],
  ['mass', 't', 'tonne', 't'],
  ['mass', 'lb', 'lbm', '[lb_av]'],
  ['mass', 'oz', 'oz', '[oz_av]'],
  ['unbalance', 'g·mm', 'g mm', 'g.mm'],
  ['unbalance', 'mg·mm', 'mg mm', 'mg.mm'],
  ['unbalance', 'g·cm', 'g cm', 'g.cm'],
  ['unbalance', 'g·m', 'g m', 'g.m'],
  ['unbalance', 'kg·mm', 'kg mm', 'kg.mm'],
  ['unbalance', 'kg·m', 'kg m', 'kg.m'],
  ['unbalance', 'g·in', 'g in', 'g.[in_i]'],
  ['unbalance', 'oz·in', 'oz in', '[oz_av].[in_i]'],
  ['unbalance', 'lb·in', 'lbm in', '[lb_av].[in_i]'],
  ['length', 'mm', 'mm', 'mm'],
  ['length', 'µm', 'um', 'um'],
  ['length', 'nm', 'nm', 'nm'],
  ['length', 'cm', 'cm', 'cm'],
  ['length', 'm', 'm', 'm'],
  ['length', 'in', 'in', '[in_i]'],
  ['length', 'thou', 'mil', '[mil_i]'],
  ['length', 'µin', '0.000001 in', 'u[in_i]'],
  ['length', 'ft', 'ft', '[ft_i]'],
  ['angle', '°', 'deg', 'deg'],
  ['angle', '′', 'arcmin', "'"],
  ['angle', '″', 'arcsec', "''"],
  ['angle', 'rad', 'rad', 'rad'],
  ['angle', 'mrad', 'mrad', 'mrad'],
  ['angle', 'rev', 'cycle', 'circ'],
  ['volume', 'mL', 'ml', 'mL'],
  ['volume', 'µL', 'ul', 'uL'],
  ['volume', 'cL', 'cl', 'cL'],
  ['volume', 'L', 'l', 'L'],
  ['volume', 'mm³', 'mm^3', 'mm3'],
  ['volume', 'cm³', 'cm^3', 'cm3'],
  ['volume', 'm³', 'm^3', 'm3'],
  ['volume', 'in³', 'in^3', '[cin_i]'],
  ['volume', 'fl oz', 'floz', '[foz_us]'],
  ['volume', 'pt', 'pt', '[pt_us]'],
  ['volume', 'qt', 'qt', '[qt_us]'],
  ['volume', 'gal', 'gal', '[gal_us]'],
  ['temperature-difference', 'K', 'K', 'K'],
  ['pressure', 'Pa', 'Pa', 'Pa'],
  ['pressure', 'hPa', 'hPa', 'hPa'],
  ['pressure', 'kPa', 'kPa', 'kPa'],
  ['pressure', 'MPa', 'MPa', 'MPa'],
  ['pressure', 'N/mm²', 'N / mm^2', 'N/mm2'],
  ['pressure', 'mbar', 'mbar', 'mbar'],
  ['pressure', 'bar', 'bar', 'bar'],
  // The psi of mathjs is rounded to eleven digits; its pound-force per square inch is not.
  ['pressure', 'psi', 'lbf / in^2', '[psi]'],
  ['pressure', 'kgf/cm²', 'kgf / cm^2', 'kgf/cm2'],
  ['pressure', 'inH₂O', '', "[in_i'H2O]"],
  ['pressure', 'mmH₂O', 'mmH2O', 'mm[H2O]'],
  ['flow', 'L/min', 'l/min', 'L/min'],
  ['flow', 'mL/min', 'ml/min', 'mL/min'],
  ['flow', 'L/s', 'l/s', 'L/s'],
  ['flow', 'L/h', 'l/h', 'L/h'],
  ['flow', 'm³/s', 'm^3/s', 'm3/s'],
  ['flow', 'm³/h', 'm^3/h', 'm3/h'],
  ['flow', 'ft³/min', 'ft^3/min', '[ft_i]3/min'],
  ['flow', 'gal/min', 'gal/min', '[gal_us]/min'],
  ['time', 's', 's', 's'],
  ['time', 'ms', 'ms', 'ms'],
  ['time', 'min', 'minute', 'min'],
  ['time', 'h', 'h', 'h'],
  ['time', 'd', 'day', 'd'],
  ['rotational-speed', 'rpm', 'minute^-1', '/min'],
  ['rotational-speed', 'min⁻¹', 'minute^-1', '/min'],
  ['rotational-speed', 's⁻¹', 's^-1', '/s'],
  ['rotational-speed', 'Hz', 'Hz', 'Hz'],
  ['rotational-speed', 'rad/s', '', ''],
  ['speed', 'm/s', 'm/s', 'm/s'],
  ['speed', 'm/min', 'm/minute', 'm/min'],
  ['speed', 'mm/s', 'mm/s', 'mm/s'],
  ['speed', 'mm/min', 'mm/minute', 'mm/min'],
  ['speed', 'km/h', 'km/h', 'km/h'],
  ['speed', 'in/s', 'in/s', '[in_i]/s'],
  ['speed', 'ft/s', 'ft/s', '[ft_i]/s'],
  ['speed', 'ft/min', 'ft/minute', '[ft_i]/min'],
  ['speed', 'mi/h', 'mi/h', '[mi_i]/h'],
  ['voltage', 'V', 'V', 'V'],
  ['voltage', 'µV', 'uV', 'uV'],
  ['voltage', 'mV', 'mV', 'mV'],
  ['voltage', 'kV', 'kV', 'kV'],
  ['current', 'A', 'A', 'A'],
  ['current', 'µA', 'uA', 'uA'],
  ['current', 'mA', 'mA', 'mA'],
  ['resistance', 'Ω', 'ohm', 'Ohm'],
  ['resistance', 'mΩ', 'mohm', 'mOhm'],
  ['resistance', 'kΩ', 'kohm', 'kOhm'],
  ['resistance', 'MΩ', 'Mohm', 'MOhm'],
  ['ratio', '%', '', '%'],
  ['ratio', '‰', '', '[ppth]'],
  ['ratio', 'ppm', '', '[ppm]'],
];

const rowOf = (unit: Unit) =>
  outside.find(([dimension, symbol]) => dimension === unit.dimension && symbol === unit.symbol);
const baseRow = (dimension: Dimension) => {
  const row = rowOf(unitOf(dimension, dimensionFacts[dimension].base));
  if (row === undefined) throw new Error(`base of ${dimension} is not in the table`);
  return row;
};

function ucumFactor(from: string, to: string): number {
  const { toVal, msg } = ucum.convertUnitTo(from, 1, to);
  if (toVal === null) throw new Error(msg.join(' '));
  return toVal;
}

describe('sizes agree with mathjs 15.2.0 to 1e-12', () => {
  test.each(outside.filter(([, , name]) => name !== ''))('%s: %s', (dimension, symbol, name) => {
    expectNear(unitOf(dimension, symbol).factor, mathjs.unit(name).toNumber(baseRow(dimension)[2]), 1e-12);
  });
});

describe('sizes agree with UCUM as @lhncbc/ucum-lhc 7.1.10 converts it to 1e-12', () => {
  test.each(outside.filter(([, , , code]) => code !== ''))('%s: %s', (dimension, symbol, _, code) => {
    expectNear(unitOf(dimension, symbol).factor, ucumFactor(code, baseRow(dimension)[3]), 1e-12);
  });
});

test('columns of mercury are conventional and each source rounds its own: 1e-5 is as close as they come', () => {
  expectNear(unitOf('pressure', 'inHg').factor, ucumFactor("[in_i'Hg]", 'Pa'), 1e-5);
  expectNear(unitOf('pressure', 'mmHg').factor, ucumFactor('mm[Hg]', 'Pa'), 1e-5);
  expectNear(unitOf('pressure', 'mmHg').factor, mathjs.unit('mmHg').toNumber('Pa'), 1e-5);
});

test('radians per second agree with mathjs, a turn being a cycle', () => {
  const turnsPerMinute = mathjs.unit('rad').toNumber('cycle') * 60;
  expectNear(unitOf('rotational-speed', 'rad/s').factor, turnsPerMinute, 1e-12);
});

test.each([-40, 0, 32, 68, 98.6, 212, 451])('%d °F and kelvins read as mathjs and UCUM read them', (reading) => {
  const celsius = toBase(reading, unitOf('temperature', '°F'));
  expect(celsius).toBeCloseTo(mathjs.unit(reading, 'degF').toNumber('degC'), 10);
  expect(celsius).toBeCloseTo(ucum.convertUnitTo('[degF]', reading, 'Cel').toVal ?? Number.NaN, 10);
  expect(toBase(reading, unitOf('temperature', 'K'))).toBeCloseTo(
    ucum.convertUnitTo('K', reading, 'Cel').toVal ?? Number.NaN,
    10,
  );
});

test('a difference of 9 °F is one of 5 K (mathjs, between two readings)', () => {
  const apart = mathjs.unit(41, 'degF').toNumber('K') - mathjs.unit(32, 'degF').toNumber('K');
  expect(toBase(9, unitOf('temperature-difference', '°F'))).toBeCloseTo(apart, 10);
});

test('every unit has been held against an outside source', () => {
  const elsewhere = ['inHg', 'mmHg', '°C', '°F', 'K'];
  const missing = allUnits.filter((unit) => rowOf(unit) === undefined && !elsewhere.includes(unit.symbol));
  expect(missing.map((unit) => unit.symbol)).toEqual([]);
});

/** A table of US Army technical manuals (appendix F, table F-1) prints torques in pound-feet beside whole newton metres. */
describe('published pairs of lbf·ft and N·m', () => {
  test.each([
    [6, 8],
    [10, 14],
    [15, 20],
    [26, 35],
    [37, 50],
    [43, 58],
    [60, 81],
    [65, 88],
    [90, 122],
    [130, 176],
    [185, 251],
    [440, 597],
  ])('%d lbf·ft is printed as %d N·m', (pounds, newtons) => {
    expect(Math.round(toBase(pounds, unitOf('torque', 'lbf·ft')))).toBe(newtons);
    expect(parseQuantity(`${pounds} lbf·ft (${newtons} N·m)`, 'torque').problems).toEqual([]);
  });

  test.each([
    [21, 29, '28 N·m'],
    [300, 408, '407 N·m'],
  ])('the misprint %d lbf·ft = %d N·m is found', (pounds, newtons, converted) => {
    const { problems } = parseQuantity(`${pounds} lbf·ft (${newtons} N·m)`, 'torque');
    expect(problems).toMatchObject([{ kind: 'duals-disagree', converted, replacement: converted }]);
  });
});
