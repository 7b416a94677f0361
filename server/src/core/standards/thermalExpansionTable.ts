/** A mean coefficient of linear expansion about room temperature, in 10⁻⁶ per kelvin, with where it is printed. */
export interface ExpansionCoefficient {
  readonly material: string;
  readonly perMillion: number;
  readonly source: string;
}

const callister = 'W. D. Callister, Fundamentals of Materials Science and Engineering, table B.6';
const oneTable = 'one published table of aluminium alloys, no second source';

interface Row {
  readonly material: string;
  readonly perMillion: number;
  readonly source: string;
  /** Other spellings, in lower case with single spaces. */
  readonly spellings: readonly string[];
}

function row(material: string, perMillion: number, source: string, ...spellings: readonly string[]): Row {
  return { material, perMillion, source, spellings };
}

function aluminium(alloy: string, perMillion: number, source: string, ...more: readonly string[]): Row {
  const names = [alloy, ...more].flatMap((name) => ['aluminum', 'al', 'en aw', 'aa'].map((word) => `${word} ${name}`));
  return row(`aluminium ${alloy}`, perMillion, source, ...names, ...more.map((name) => `aluminium ${name}`));
}

/** Only alloys that one number holds for. What is not here has to be stated beside the part. */
const rows: readonly Row[] = [
  aluminium('2024', 22.9, callister),
  aluminium('2218', 22.3, oneTable),
  aluminium('355.0', 22.0, oneTable, '355'),
  aluminium('356.0', 21.5, callister, '356'),
  aluminium('6061', 23.6, callister),
  aluminium('7075', 23.4, callister),
  row('steel 1020', 11.7, callister, 'steel alloy 1020', 'aisi 1020'),
  row('steel 1040', 11.3, callister, 'steel alloy 1040', 'aisi 1040'),
  row('steel 4140', 12.3, callister, 'steel alloy 4140', 'aisi 4140'),
  row('steel 4340', 12.3, callister, 'steel alloy 4340', 'aisi 4340'),
  row('stainless steel 304', 17.2, callister, 'aisi 304', 'stainless 304'),
  row('stainless steel 316', 15.9, callister, 'aisi 316', 'stainless 316'),
  row('grey cast iron', 11.4, callister, 'gray cast iron', 'grey iron', 'gray iron'),
  row('ductile iron 60-40-18', 11.2, callister),
  row('titanium Ti-6Al-4V', 8.6, callister, 'ti 6al 4v'),
  row('nickel alloy 625', 12.8, callister, 'alloy 625'),
];

/** Every coefficient of the table. */
export const expansionCoefficients: readonly ExpansionCoefficient[] = rows.map(({ material, perMillion, source }) => ({
  material,
  perMillion,
  source,
}));

/**
 * The coefficient of a material named as a drawing would name it: `aluminium 2024`, `EN AW-2024`, `Ti-6Al-4V`.
 * Undefined for every material that is not in the table and for a group without an alloy, such as `aluminium`.
 */
export function expansionOf(material: string): ExpansionCoefficient | undefined {
  const wanted = plain(material);
  const index = rows.findIndex(({ material, spellings }) =>
    [material, ...spellings].some((spelling) => plain(spelling) === wanted),
  );
  return expansionCoefficients[index];
}

function plain(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
}
