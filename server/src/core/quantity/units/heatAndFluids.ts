import { type Unit, unit } from '../unit';

// Zero of the Celsius scale at 273.15 K, 1 °F = 5/9 K with 32 °F at 0 °C; psi from lb, in and standard gravity;
// columns of mercury and water are conventional (NIST SP 811, appendix B). Gauge and absolute readings are not told apart.

/** Readings of a thermometer, in degrees Celsius. */
export const temperatureUnits: readonly Unit[] = [
  unit('temperature', '°C', 'degree Celsius', '1', {
    also: '℃',
    accepted: 'C, deg C, degC, degree(|s) C, degree(|s) Celsius, Celsius, degree(|s) centigrade, centigrade, ° C',
  }),
  unit('temperature', '°F', 'degree Fahrenheit', '5/9', {
    zeroAt: 32,
    also: '℉',
    accepted: 'F, deg F, degF, degree(|s) F, degree(|s) Fahrenheit, Fahrenheit, ° F',
  }),
  unit('temperature', 'K', 'kelvin', '1', {
    zeroAt: 273.15,
    accepted: 'kelvin(|s), °K, deg K, degree(|s) K, degree(|s) kelvin',
  }),
];

/** Differences of two temperatures, and tolerances of one, in kelvins. */
export const temperatureDifferenceUnits: readonly Unit[] = [
  unit('temperature-difference', 'K', 'kelvin', '1', { accepted: 'kelvin(|s), °K, deg K, degree(|s) K' }),
  unit('temperature-difference', '°C', 'degree Celsius', '1', {
    also: '℃',
    accepted: 'C, deg C, degC, degree(|s) C, degree(|s) Celsius, ° C',
  }),
  unit('temperature-difference', '°F', 'degree Fahrenheit', '5/9', {
    also: '℉',
    accepted: 'F, deg F, degF, degree(|s) F, degree(|s) Fahrenheit, ° F',
  }),
];

/** Units of pressure in pascals. */
export const pressureUnits: readonly Unit[] = [
  unit('pressure', 'Pa', 'pascal', '1', { accepted: 'pascal(|s)' }),
  unit('pressure', 'hPa', 'hectopascal', '100', { accepted: 'hectopascal(|s)' }),
  unit('pressure', 'kPa', 'kilopascal', '1000', { accepted: 'kilopascal(|s)' }),
  unit('pressure', 'MPa', 'megapascal', '1000000', { accepted: 'megapascal(|s)' }),
  unit('pressure', 'N/mm²', 'newton per square millimetre', '1000000', { accepted: 'N/mm2, N/mm^2' }),
  unit('pressure', 'mbar', 'millibar', '100', { accepted: 'millibar(|s), mbars, MBAR' }),
  unit('pressure', 'bar', 'bar', '100000', { accepted: 'bars', doubtful: 'barg, bar g' }),
  unit('pressure', 'psi', 'pound-force per square inch', '6894.757293168361336722673445346890693788', {
    accepted: 'lbf/in², lb/in², lbf/in2, lb/in2, lbs/in2, lbf/in^2, lb/sq in, lbs/sq in, pound(|s) per square inch',
    doubtful: 'psig, psi g',
  }),
  unit('pressure', 'kgf/cm²', 'kilogram-force per square centimetre', '98066.5', {
    accepted: 'kgf/cm2, kgf/cm^2, kp/cm², kp/cm2',
    doubtful: 'kg/cm², kg/cm2, kg/cm^2',
  }),
  unit('pressure', 'inHg', 'inch of mercury (conventional)', '3386.389', {
    accepted: 'in Hg, inches of mercury, inch(|es) Hg',
  }),
  unit('pressure', 'mmHg', 'millimetre of mercury (conventional)', '133.322387415', {
    accepted: 'mm Hg, millimet(re|er)(|s) of mercury',
  }),
  unit('pressure', 'inH₂O', 'inch of water (conventional)', '249.08891', {
    accepted: 'inH2O, in H2O, in H₂O, inWC, in WC, inch(|es) of water',
  }),
  unit('pressure', 'mmH₂O', 'millimetre of water (conventional)', '9.80665', {
    accepted: 'mmH2O, mm H2O, mm H₂O, mmWC, millimet(re|er)(|s) of water',
  }),
];

/** Units of volume flow in litres per minute. */
export const flowUnits: readonly Unit[] = [
  unit('flow', 'L/min', 'litre per minute', '1', {
    also: 'l/min',
    accepted: 'lpm, LPM, ltr/min, lit(re|er)(|s) per minute, lit(re|er)(|s)/minute, lit(re|er)(|s)/min, L·min⁻¹',
  }),
  unit('flow', 'mL/min', 'millilitre per minute', '0.001', {
    also: 'ml/min',
    accepted: 'cc/min, cm³/min, cm3/min, millilit(re|er)(|s) per minute',
  }),
  unit('flow', 'L/s', 'litre per second', '60', { also: 'l/s', accepted: 'lit(re|er)(|s) per second' }),
  unit('flow', 'L/h', 'litre per hour', '1/60', { also: 'l/h', accepted: 'L/hr, l/hr, lit(re|er)(|s) per hour' }),
  unit('flow', 'm³/s', 'cubic metre per second', '60000', { accepted: 'm3/s, m^3/s, cubic met(re|er)(|s) per second' }),
  unit('flow', 'm³/h', 'cubic metre per hour', '50/3', {
    accepted: 'm3/h, m^3/h, m³/hr, m3/hr, cubic met(re|er)(|s) per hour',
  }),
  unit('flow', 'ft³/min', 'cubic foot per minute', '28.316846592', {
    accepted: 'cfm, CFM, ft3/min, ft^3/min, cu ft/min, cubic (foot|feet) per minute',
  }),
  unit('flow', 'gal/min', 'US gallon per minute', '3.785411784', {
    accepted: 'gpm, GPM, US gal/min, US gpm, gallon(|s) per minute',
  }),
];
