/** The ring on which a head or nut turns while it is tightened; diameters in mm. */
export interface BearingFace {
  /** Outer diameter of the face d_w. */
  readonly outer: number;
  /** Diameter of the hole under it d_h. */
  readonly inner: number;
  /** Where the two come from. */
  readonly source: string;
}

type Row = readonly [nominal: number, washerFace: number, hole: number];

/**
 * Nominal diameter, smallest washer face d_w of hexagon heads and nuts (ISO 4014, ISO 4032, product grade A, as fastener tables
 * print it; M14 and M16 from memory), hole of the medium series (ISO 273, as printed in a clearance-hole table); mm.
 */
const hexagonRows: readonly Row[] = [
  [1.6, 2.3, 1.8],
  [2, 3, 2.4],
  [2.5, 4, 2.9],
  [3, 4.6, 3.4],
  [4, 5.9, 4.5],
  [5, 6.9, 5.5],
  [6, 8.9, 6.6],
  [8, 11.6, 9],
  [10, 14.6, 11],
  [12, 16.6, 13.5],
  [14, 19.6, 15.5],
  [16, 22.5, 17.5],
];

/** The face of a metric hexagon head or nut over a medium hole; undefined where the tables end. */
export function hexagonFace(diameter: number): BearingFace | undefined {
  const row = hexagonRows.find(([nominal]) => nominal === diameter);
  return row && { outer: row[1], inner: row[2], source: 'ISO 4014, ISO 4032 and ISO 273 medium' };
}

/**
 * The face that is reckoned with where none is known: a mean diameter of 1.3·d, as published calculators of tightening torques
 * take it for hexagon and cylindrical heads. Here as a face from d to 1.6·d.
 */
export function usualFace(diameter: number): BearingFace {
  return { outer: 1.6 * diameter, inner: diameter, source: 'mean diameter 1.3·d, common practice' };
}

/** The face of a metric hexagon where the tables have it, else the usual one; both as good as can be known from a thread alone. */
export function faceForThread(thread: {
  readonly system: 'metric' | 'unified';
  readonly diameter: number;
}): BearingFace {
  const known = thread.system === 'metric' ? hexagonFace(thread.diameter) : undefined;
  return known ?? usualFace(thread.diameter);
}

/** Mean diameter of friction D_Km = (d_w + d_h)/2 in mm. */
export function meanBearingDiameter({ outer, inner }: BearingFace): number {
  return (outer + inner) / 2;
}
