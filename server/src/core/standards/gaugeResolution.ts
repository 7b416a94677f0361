import { arePositive } from './working';

/**
 * How large a gauge's resolution or uncertainty may be, as a share of the tolerance that is measured: a tenth, next
 * best a sixth, at the least a quarter (GB/T 3177, acceptance of plain workpieces; the rule of ten of common
 * practice).
 */
export const gaugeShares = { good: 1 / 10, fair: 1 / 6, least: 1 / 4 } as const;

/** How well a gauge suits a tolerance. */
export type GaugeSuitability = 'good' | 'fair' | 'least' | 'too-coarse';

/**
 * Judges a gauge by its resolution and the width of the tolerance (highest minus lowest), both in one unit; undefined
 * unless both are above zero.
 */
export function gaugeSuitability(resolution: number, toleranceWidth: number): GaugeSuitability | undefined {
  if (!arePositive(resolution, toleranceWidth)) return undefined;
  // A gauge of 0.01 mm reads a tolerance of 0.1 mm to exactly a tenth, and binary fractions must not deny it.
  const share = (resolution / toleranceWidth) * (1 - 1e-9);
  if (share <= gaugeShares.good) return 'good';
  if (share <= gaugeShares.fair) return 'fair';
  return share <= gaugeShares.least ? 'least' : 'too-coarse';
}

/** The coarsest resolution that still suits a tolerance of this width, in its unit. */
export function coarsestResolution(toleranceWidth: number, suits: keyof typeof gaugeShares): number | undefined {
  return arePositive(toleranceWidth) ? toleranceWidth * gaugeShares[suits] : undefined;
}
