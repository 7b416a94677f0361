import { type Unit, unit } from '../unit';

// Exact from 1 lb = 0.453 592 37 kg, 1 oz = 1/16 lb, 1 in = 25.4 mm and standard gravity 9.806 65 m/s² (NIST SP 811).

/** Units of force in newtons. */
export const forceUnits: readonly Unit[] = [
  unit('force', 'N', 'newton', '1', { accepted: 'newton(|s)' }),
  unit('force', 'mN', 'millinewton', '0.001', { accepted: 'millinewton(|s)' }),
  unit('force', 'daN', 'decanewton', '10', { accepted: 'decanewton(|s)' }),
  unit('force', 'kN', 'kilonewton', '1000', { accepted: 'kilonewton(|s)' }),
  unit('force', 'lbf', 'pound-force', '4.4482216152605', {
    accepted: 'lb f, pound(|s) force, pound(|s) of force, lbs f',
    doubtful: 'lb, lbs, pound(|s), #',
  }),
  unit('force', 'ozf', 'ounce-force', '0.27801385095378125', {
    accepted: 'ounce(|s) force',
    doubtful: 'oz, ounce(|s)',
  }),
  unit('force', 'kgf', 'kilogram-force', '9.80665', {
    accepted: 'kilogram(|s) force, kp, kilopond(|s)',
    doubtful: 'kg, kilogram(|s), kilo(|s)',
  }),
  unit('force', 'gf', 'gram-force', '0.00980665', { accepted: 'gram(|s) force, pond(|s)', doubtful: 'g, gram(|s)' }),
];

/** Units of mass in kilograms. */
export const massUnits: readonly Unit[] = [
  unit('mass', 'kg', 'kilogram', '1', { accepted: 'kgs, kilogram(|s), kilogramme(|s), kilo(|s)' }),
  unit('mass', 'g', 'gram', '0.001', { accepted: 'gram(|s), gramme(|s)', doubtful: 'gr, grs' }),
  unit('mass', 'mg', 'milligram', '0.000001', { accepted: 'milligram(|s), milligramme(|s)' }),
  unit('mass', 't', 'tonne', '1000', { accepted: 'tonne(|s)' }),
  unit('mass', 'lb', 'pound', '0.45359237', { accepted: 'lbs, lbm, pound(|s)', doubtful: '#' }),
  unit('mass', 'oz', 'ounce', '0.028349523125', { accepted: 'ozs, ounce(|s)' }),
];

/** Units of unbalance (ISO 21940-2: mass times distance from the shaft axis) in gram millimetres. */
export const unbalanceUnits: readonly Unit[] = [
  unit('unbalance', 'g·mm', 'gram millimetre', '1', {
    accepted: 'gmm, gr mm, mm g, gram(|s) millimet(re|er)(|s), gramme millimetre(|s)',
  }),
  unit('unbalance', 'mg·mm', 'milligram millimetre', '0.001', { accepted: 'mgmm, milligram millimet(re|er)(|s)' }),
  unit('unbalance', 'g·cm', 'gram centimetre', '10', { accepted: 'gcm, cm g, gram(|s) centimet(re|er)(|s)' }),
  unit('unbalance', 'g·m', 'gram metre', '1000', { accepted: 'gram(|s) met(re|er)(|s)', doubtful: 'gm' }),
  unit('unbalance', 'kg·mm', 'kilogram millimetre', '1000', { accepted: 'kgmm, kilogram(|s) millimet(re|er)(|s)' }),
  unit('unbalance', 'kg·m', 'kilogram metre', '1000000', { accepted: 'kgm, kilogram(|s) met(re|er)(|s)' }),
  unit('unbalance', 'g·in', 'gram inch', '25.4', { accepted: 'gin, gr in, in g, gram(|s) inch(|es)' }),
  unit('unbalance', 'oz·in', 'ounce inch', '720.077887375', {
    accepted: 'ozin, in oz, ounce(|s) inch(|es), inch(|es) ounce(|s)',
  }),
  unit('unbalance', 'lb·in', 'pound inch', '11521.246198', { accepted: 'lbin, in lb, pound(|s) inch(|es)' }),
];
