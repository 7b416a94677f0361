/** An O-ring as ISO 3601-1 and SAE AS568 list it, in millimetres; tolerances are to either side. */
export interface ORingSize {
  /** The size code, AS568 dash number: three digits. */
  readonly code: string;
  readonly insideDiameter: number;
  readonly insideDiameterTolerance: number;
  readonly section: number;
  readonly sectionTolerance: number;
}

/**
 * Standard sections and their tolerance in millimetres (ISO 3601-1:2012 and SAE AS568): the sizes 001 to 003, then
 * the five series. In inches: 0.070 and 0.103 ± 0.003, 0.139 ± 0.004, 0.210 ± 0.005, 0.275 ± 0.006.
 */
const sections: ReadonlyMap<number, number> = new Map([
  [1.02, 0.08],
  [1.27, 0.08],
  [1.52, 0.08],
  [1.78, 0.08],
  [2.62, 0.08],
  [3.53, 0.1],
  [5.33, 0.13],
  [6.99, 0.15],
]);

/**
 * Code, inside diameter, its tolerance, section; the sizes 001 to 050 of ISO 3601-1:2012, the same as SAE AS568 in
 * millimetres.
 */
const rows: readonly (readonly [string, number, number, number])[] = [
  ['001', 0.74, 0.1, 1.02],
  ['002', 1.07, 0.1, 1.27],
  ['003', 1.42, 0.1, 1.52],
  ['004', 1.78, 0.13, 1.78],
  ['005', 2.57, 0.13, 1.78],
  ['006', 2.9, 0.13, 1.78],
  ['007', 3.68, 0.13, 1.78],
  ['008', 4.47, 0.13, 1.78],
  ['009', 5.28, 0.13, 1.78],
  ['010', 6.07, 0.13, 1.78],
  ['011', 7.65, 0.13, 1.78],
  ['012', 9.25, 0.13, 1.78],
  ['013', 10.82, 0.13, 1.78],
  ['014', 12.42, 0.13, 1.78],
  ['015', 14.0, 0.18, 1.78],
  ['016', 15.6, 0.23, 1.78],
  ['017', 17.17, 0.23, 1.78],
  ['018', 18.77, 0.23, 1.78],
  ['019', 20.35, 0.23, 1.78],
  ['020', 21.95, 0.23, 1.78],
  ['021', 23.52, 0.23, 1.78],
  ['022', 25.12, 0.25, 1.78],
  ['023', 26.7, 0.25, 1.78],
  ['024', 28.3, 0.25, 1.78],
  ['025', 29.87, 0.28, 1.78],
  ['026', 31.47, 0.28, 1.78],
  ['027', 33.05, 0.28, 1.78],
  ['028', 34.65, 0.33, 1.78],
  ['029', 37.82, 0.33, 1.78],
  ['030', 41.0, 0.33, 1.78],
  ['031', 44.17, 0.38, 1.78],
  ['032', 47.35, 0.38, 1.78],
  ['033', 50.52, 0.46, 1.78],
  ['034', 53.7, 0.46, 1.78],
  ['035', 56.87, 0.46, 1.78],
  ['036', 60.05, 0.46, 1.78],
  ['037', 63.22, 0.46, 1.78],
  ['038', 66.4, 0.51, 1.78],
  ['039', 69.57, 0.51, 1.78],
  ['040', 72.75, 0.51, 1.78],
  ['041', 75.92, 0.61, 1.78],
  ['042', 82.27, 0.61, 1.78],
  ['043', 88.62, 0.61, 1.78],
  ['044', 94.97, 0.69, 1.78],
  ['045', 101.32, 0.69, 1.78],
  ['046', 107.67, 0.76, 1.78],
  ['047', 114.02, 0.76, 1.78],
  ['048', 120.37, 0.76, 1.78],
  ['049', 126.72, 0.94, 1.78],
  ['050', 133.07, 0.94, 1.78],
];

/** The sizes 001 to 050. */
export const oRingSizes: readonly ORingSize[] = rows.map(
  ([code, insideDiameter, insideDiameterTolerance, section]) => ({
    code,
    insideDiameter,
    insideDiameterTolerance,
    section,
    sectionTolerance: sections.get(section) ?? 0.08,
  }),
);

/** The size of a code such as `-014` or `014`; undefined for sizes that are not listed. */
export function findORingSize(code: string): ORingSize | undefined {
  const digits = /^\s*[-−]?(\d{3})\s*$/.exec(code)?.[1];
  return oRingSizes.find((size) => size.code === digits);
}

/**
 * The tolerance to either side of a standard section, both in millimetres; undefined for a section that is not
 * standard.
 */
export function sectionTolerance(section: number): number | undefined {
  for (const [standard, tolerance] of sections) {
    if (Math.abs(standard - section) < 0.0051) return tolerance;
  }
  return undefined;
}
