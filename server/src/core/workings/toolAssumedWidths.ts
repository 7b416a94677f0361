import { hexagonWidths } from '../standards/acrossFlats';
import { readThreadDesignation } from '../standards/threadDesignation';

/** What a thread lets one assume of the hexagon of a standard fastener. */
export interface AssumedWidths {
  /** What the standard in force gives, mm. */
  readonly usual: number;
  /** Every width in mm that is met with; a tool for any of them may be right. */
  readonly met: readonly number[];
  readonly standard: string;
}

/**
 * Smaller hexagons that are met with beside those of the tables, by nominal diameter in mm: flange bolts of the small series (ISO 4162)
 * and the small hexagons of JIS B 1180 and B 1181. From memory; they serve only to keep silent.
 */
const SMALL: ReadonlyMap<number, readonly number[]> = new Map([
  [5, [7]],
  [6, [8]],
  [8, [10, 12]],
  [10, [13, 14]],
  [12, [15, 17]],
  [14, [18, 19]],
  [16, [21, 22]],
]);

/** The hexagon of a standard nut or bolt with this thread; undefined where the designation or the tables say nothing. */
export function assumedWidths(designation: string, fastener: 'nut' | 'bolt'): AssumedWidths | undefined {
  const { designation: thread } = readThreadDesignation(designation);
  if (thread === undefined) return undefined;
  const widths = hexagonWidths(thread);
  const [usual] = widths;
  if (usual === undefined) return undefined;
  const small = thread.system === 'metric' ? (SMALL.get(thread.diameter) ?? []) : [];
  return { usual, met: [...widths, ...small], standard: standardOf(thread.system, fastener) };
}

function standardOf(system: 'metric' | 'unified', fastener: 'nut' | 'bolt'): string {
  if (system === 'metric') return fastener === 'nut' ? 'ISO 4032' : 'ISO 4014';
  return fastener === 'nut' ? 'ASME B18.2.2' : 'ASME B18.2.1';
}
