import { type Unit, unit } from '../unit';

// Exact from 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg and standard gravity 9.806 65 m/s² (NIST SP 811, appendix B).
// Inch and foot torques are spoken and written both ways round; the standard symbol puts the force first.

/** Units of torque in newton metres. */
export const torqueUnits: readonly Unit[] = [
  unit('torque', 'N·m', 'newton metre', '1', {
    accepted: 'Nm, m N, newton met(re|er)(|s), newtonmet(re|er)(|s), newtons met(re|er)(|s)',
    doubtful: 'NM, nm',
  }),
  unit('torque', 'mN·m', 'millinewton metre', '0.001', { accepted: 'mNm, millinewton met(re|er)(|s)' }),
  unit('torque', 'cN·m', 'centinewton metre', '0.01', { accepted: 'cNm, centinewton met(re|er)(|s)' }),
  unit('torque', 'dN·m', 'decinewton metre', '0.1', { accepted: 'dNm, decinewton met(re|er)(|s)' }),
  unit('torque', 'daN·m', 'decanewton metre', '10', { accepted: 'daNm, decanewton met(re|er)(|s)' }),
  unit('torque', 'kN·m', 'kilonewton metre', '1000', { accepted: 'kNm, kilonewton met(re|er)(|s)' }),
  unit('torque', 'N·cm', 'newton centimetre', '0.01', { accepted: 'Ncm, newton centimet(re|er)(|s)' }),
  unit('torque', 'N·mm', 'newton millimetre', '0.001', { accepted: 'Nmm, newton millimet(re|er)(|s)' }),
  unit('torque', 'lbf·ft', 'pound-force foot', '1.3558179483314004', {
    accepted:
      '(lb|lbs|lbf|pound|pounds) (ft|foot|feet), (ft|foot|feet) (lb|lbs|lbf|pound|pounds), (lb|lbs|lbf)ft, ft(lb|lbs|lbf), (pound|pounds) force (foot|feet), (foot|feet) (pound|pounds) force',
    doubtful: '(ft|foot|lb|lbs)/(ft|lb|lbs|lbf), ft #, # ft',
  }),
  unit('torque', 'lbf·in', 'pound-force inch', '0.1129848290276167', {
    accepted:
      '(lb|lbs|lbf|pound|pounds) (in|inch|inches), (in|inch|inches) (lb|lbs|lbf|pound|pounds), (lb|lbs|lbf)in, in(lb|lbs|lbf), (pound|pounds) force (inch|inches), (inch|inches) (pound|pounds) force',
    doubtful: '(in|inch)/(lb|lbs|lbf), (lb|lbs|lbf)/in, in #, # in',
  }),
  unit('torque', 'ozf·in', 'ounce-force inch', '0.00706155181422604375', {
    accepted:
      '(oz|ozf|ounce|ounces) (in|inch|inches), (in|inch|inches) (oz|ozf|ounce|ounces), (oz|ozf)in, in(oz|ozf), (ounce|ounces) force (inch|inches)',
  }),
  unit('torque', 'kgf·m', 'kilogram-force metre', '9.80665', {
    accepted: 'kgfm, m kgf, kilogram force met(re|er)(|s), kilogram(|s) force met(re|er)(|s)',
    doubtful: 'kgm, kg m, mkg, m kg, mkgf, kpm, kp m, mkp, m kp, kilogram met(re|er)(|s), kilopond met(re|er)(|s)',
  }),
  unit('torque', 'kgf·cm', 'kilogram-force centimetre', '0.0980665', {
    accepted: 'kgfcm, cm kgf, kilogram(|s) force centimet(re|er)(|s)',
    doubtful: 'kgcm, kg cm, cmkg, cm kg, kpcm, kp cm, kilogram centimet(re|er)(|s)',
  }),
  unit('torque', 'gf·cm', 'gram-force centimetre', '0.0000980665', { accepted: 'gfcm', doubtful: 'gcm, g cm' }),
];
