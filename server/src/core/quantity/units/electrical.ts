import { type Unit, unit } from '../unit';

/** Units of voltage in volts. */
export const voltageUnits: readonly Unit[] = [
  unit('voltage', 'V', 'volt', '1', { accepted: 'volt(|s)', doubtful: 'VDC, Vdc, V DC, V dc, VAC, Vac, V AC, V ac' }),
  unit('voltage', 'µV', 'microvolt', '0.000001', { accepted: 'uV, microvolt(|s)' }),
  unit('voltage', 'mV', 'millivolt', '0.001', { accepted: 'millivolt(|s)' }),
  unit('voltage', 'kV', 'kilovolt', '1000', { accepted: 'kilovolt(|s)' }),
];

/** Units of electric current in amperes. */
export const currentUnits: readonly Unit[] = [
  unit('current', 'A', 'ampere', '1', { accepted: 'amp, amps, ampere(|s)' }),
  unit('current', 'µA', 'microampere', '0.000001', { accepted: 'uA, microamp(|s), microampere(|s)' }),
  unit('current', 'mA', 'milliampere', '0.001', { accepted: 'milliamp(|s), milliampere(|s)' }),
];

/** Units of electric resistance in ohms. */
export const resistanceUnits: readonly Unit[] = [
  unit('resistance', 'Ω', 'ohm', '1', { accepted: 'ohm(|s), Ohm(|s)' }),
  unit('resistance', 'mΩ', 'milliohm', '0.001', { accepted: 'mohm(|s), milliohm(|s)' }),
  unit('resistance', 'kΩ', 'kilohm', '1000', { accepted: 'kohm(|s), kOhm(|s), kilohm(|s), kiloohm(|s)' }),
  unit('resistance', 'MΩ', 'megohm', '1000000', { accepted: 'Mohm(|s), MOhm(|s), megohm(|s), megaohm(|s)' }),
];

/** Ratios in per cent. */
export const ratioUnits: readonly Unit[] = [
  unit('ratio', '%', 'per cent', '1', { accepted: 'percent, per cent, pct' }),
  unit('ratio', '‰', 'per mille', '0.1', { accepted: 'per mille, permille' }),
  unit('ratio', 'ppm', 'part per million', '0.0001', { accepted: 'PPM, part(|s) per million' }),
];
