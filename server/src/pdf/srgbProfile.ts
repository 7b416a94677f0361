// Numbers of a profile are signed, with sixteen bits before and sixteen behind the point.
const fixed = (value: number): number[] => long(Math.round(value * 65536) >>> 0);
const long = (value: number): number[] => [value >>> 24, (value >>> 16) & 0xff, (value >>> 8) & 0xff, value & 0xff];
const ascii = (text: string): number[] => [...text].map((character) => character.charCodeAt(0));
const zeros = (count: number): number[] => Array.from({ length: count }, () => 0);

const D50 = [0.9642, 1, 0.8249];

/** Primaries of IEC 61966-2-1, adapted to D50 by the Bradford method, and that adaptation; as published with the standard's profiles. */
const primaries = {
  rXYZ: [0.43607, 0.22249, 0.01392],
  gXYZ: [0.38515, 0.71687, 0.09708],
  bXYZ: [0.14307, 0.06061, 0.7141],
};
const adaptation = [1.04788, 0.02292, -0.05022, 0.02959, 0.99048, -0.01707, -0.00925, 0.01508, 0.75168];
/** Exponent, then a to d of the curve's two pieces. */
const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

/**
 * The colour space sRGB as an ICC profile of version 4.2 (ICC.1:2004-10), which an archived file has to name. It is made
 * here, from the standard's own numbers, so that it is the same everywhere and nobody's file has to be shipped.
 */
export function srgbProfile(): Uint8Array {
  const xyz = (values: readonly number[]) => [...ascii('XYZ '), ...zeros(4), ...values.flatMap(fixed)];
  const tags: [string, number[]][] = [
    ['desc', words('sRGB')],
    ['cprt', words('Public domain')],
    ['wtpt', xyz(D50)],
    ['chad', [...ascii('sf32'), ...zeros(4), ...adaptation.flatMap(fixed)]],
    ...Object.entries(primaries).map(([name, values]): [string, number[]] => [name, xyz(values)]),
    ...['rTRC', 'gTRC', 'bTRC'].map((name): [string, number[]] => [
      name,
      [...ascii('para'), ...zeros(4), 0, 3, 0, 0, ...curve.flatMap(fixed)],
    ]),
  ];
  const start = 128 + 4 + 12 * tags.length;
  const body: number[] = [];
  const table = tags.flatMap(([name, data]) => {
    const entry = [...ascii(name), ...long(start + body.length), ...long(data.length)];
    body.push(...data, ...zeros(-data.length & 3));
    return entry;
  });
  return Uint8Array.from([...header(start + body.length), ...long(tags.length), ...table, ...body]);
}

function header(size: number): number[] {
  const created = [2004, 10, 1, 0, 0, 0].flatMap((part) => [part >> 8, part & 0xff]);
  const front = [
    ...long(size),
    ...zeros(4),
    ...long(0x04200000),
    ...ascii('mntrRGB XYZ '),
    ...created,
    ...ascii('acsp'),
  ];
  return [...front, ...zeros(28), ...D50.flatMap(fixed), ...zeros(48)];
}

/** A text in English as the profile holds it: one record, in UTF-16. */
function words(text: string): number[] {
  const letters = ascii(text).flatMap((code) => [0, code]);
  return [
    ...ascii('mluc'),
    ...zeros(4),
    ...long(1),
    ...long(12),
    ...ascii('enUS'),
    ...long(letters.length),
    ...long(28),
    ...letters,
  ];
}
