import { type Unit, unit } from '../unit';

// Exact from 1 in = 25.4 mm; US gallon of 231 in³, quart 1/4, pint 1/8 and fluid ounce 1/128 of it (NIST SP 811).

/** Units of length in millimetres. */
export const lengthUnits: readonly Unit[] = [
  unit('length', 'mm', 'millimetre', '1', { accepted: 'mms, MM, millimet(re|er)(|s)', doubtful: 'mil met(re|er)(|s)' }),
  unit('length', 'µm', 'micrometre', '0.001', { accepted: 'um, micron(|s), micromet(re|er)(|s)' }),
  unit('length', 'nm', 'nanometre', '0.000001', { accepted: 'nanomet(re|er)(|s)' }),
  unit('length', 'cm', 'centimetre', '10', { accepted: 'cms, centimet(re|er)(|s)' }),
  unit('length', 'm', 'metre', '1000', { accepted: 'met(re|er)(|s)' }),
  unit('length', 'in', 'inch', '25.4', { accepted: 'ins, inch, inches' }),
  unit('length', 'thou', 'thousandth of an inch', '0.0254', {
    accepted: 'thous, thousandth(|s)',
    doubtful: 'mil, mils',
  }),
  unit('length', 'µin', 'microinch', '0.0000254', { accepted: 'uin, microinch(|es), micro inch(|es)' }),
  unit('length', 'ft', 'foot', '304.8', { accepted: 'foot, feet' }),
];

/** Units of plane angle in degrees. */
export const angleUnits: readonly Unit[] = [
  unit('angle', '°', 'degree', '1', { gap: 'none', accepted: 'deg, degs, degree(|s)' }),
  unit('angle', '′', 'minute of angle', '1/60', { gap: 'none', accepted: 'arcmin, arc minute(|s), arcminute(|s)' }),
  unit('angle', '″', 'second of angle', '1/3600', { gap: 'none', accepted: 'arcsec, arc second(|s), arcsecond(|s)' }),
  unit('angle', 'rad', 'radian', '57.29577951308232087679815481410517', { accepted: 'rads, radian(|s)' }),
  unit('angle', 'mrad', 'milliradian', '0.05729577951308232087679815481410517', { accepted: 'milliradian(|s)' }),
  unit('angle', 'rev', 'revolution', '360', { accepted: 'revs, revolution(|s), turn(|s)' }),
];

/** Units of volume in millilitres; gallon, quart, pint and fluid ounce are those of the United States. */
export const volumeUnits: readonly Unit[] = [
  unit('volume', 'mL', 'millilitre', '1', { also: 'ml', accepted: 'millilit(re|er)(|s), cc, ccm' }),
  unit('volume', 'µL', 'microlitre', '0.001', { also: 'µl', accepted: 'uL, ul, microlit(re|er)(|s)' }),
  unit('volume', 'cL', 'centilitre', '10', { also: 'cl', accepted: 'centilit(re|er)(|s)' }),
  unit('volume', 'L', 'litre', '1000', { also: 'l', accepted: 'ltr, ltrs, lit(re|er)(|s)' }),
  unit('volume', 'mm³', 'cubic millimetre', '0.001', { accepted: 'mm3, mm^3, cu mm, cubic millimet(re|er)(|s)' }),
  unit('volume', 'cm³', 'cubic centimetre', '1', { accepted: 'cm3, cm^3, cu cm, cubic centimet(re|er)(|s)' }),
  unit('volume', 'm³', 'cubic metre', '1000000', { accepted: 'm3, m^3, cu m, cubic met(re|er)(|s)' }),
  unit('volume', 'in³', 'cubic inch', '16.387064', { accepted: 'in3, in^3, cu in, cubic inch(|es)' }),
  unit('volume', 'fl oz', 'US fluid ounce', '29.5735295625', {
    accepted: 'floz, US fl oz, fluid ounce(|s), US fluid ounce(|s)',
    doubtful: 'oz',
  }),
  unit('volume', 'pt', 'US liquid pint', '473.176473', { accepted: 'US pt, pint(|s), US pint(|s)' }),
  unit('volume', 'qt', 'US liquid quart', '946.352946', { accepted: 'qts, US qt, quart(|s), US quart(|s)' }),
  unit('volume', 'gal', 'US gallon', '3785.411784', { accepted: 'US gal, gallon(|s), US gallon(|s)' }),
];
