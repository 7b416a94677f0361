/** A driving square of ISO 1174-1; lengths in mm, torque in N·m. */
export interface SquareDrive {
  /** Nominal size as ISO 1174-1 names it. */
  readonly nominal: number;
  /** As the trade names it, in inches: `1/4`. */
  readonly inch: string;
  /** The inch size in mm, which is what the square measures. */
  readonly across: number;
  /** Highest torque of a hand torque tool with this square. */
  readonly highestTorque: number;
}

type Row = readonly [nominal: number, inch: string, across: number, highestTorque: number];

/** Nominal sizes and inch names of ISO 1174-1, highest torques of ISO 6789: from memory; the inch is exactly 25.4 mm. */
const rows: readonly Row[] = [
  [6.3, '1/4', 6.35, 30],
  [10, '3/8', 9.525, 135],
  [12.5, '1/2', 12.7, 340],
  [20, '3/4', 19.05, 1000],
  [25, '1', 25.4, 2100],
];

/** Every driving square, the smallest first. */
export const squareDrives: readonly SquareDrive[] = rows.map(([nominal, inch, across, highestTorque]) => ({
  nominal,
  inch,
  across,
  highestTorque,
}));

/** The square of a size in mm, nominal or measured: 12.5 and 12.7 are the same; undefined where none is so large. */
export function squareDriveOf(size: number): SquareDrive | undefined {
  return squareDrives.find(
    ({ nominal, across }) => Math.abs(size - nominal) < 0.051 || Math.abs(size - across) < 0.051,
  );
}

/** Reads a square as it is written: `1/2`, `1/2 in`, `1/2"`, `12.5`, `12.5 mm`, `12,5`. */
export function readSquareDrive(text: string): SquareDrive | undefined {
  const written = text.trim();
  const inches = /^(1|\d\/\d)\s*(?:"|″|in\b\.?|inch(?:es)?)?$/i.exec(written)?.[1];
  const named = inches === undefined ? undefined : squareDrives.find(({ inch }) => inch === inches);
  if (named !== undefined) return named;
  const size = /^(\d+(?:[.,]\d+)?)\s*(?:mm)?$/i.exec(written)?.[1];
  return size === undefined ? undefined : squareDriveOf(Number(size.replace(',', '.')));
}

/** The smallest square that a torque in N·m may be applied with; undefined above the largest. */
export function smallestSquareFor(torque: number): SquareDrive | undefined {
  return squareDrives.find(({ highestTorque }) => torque <= highestTorque);
}
