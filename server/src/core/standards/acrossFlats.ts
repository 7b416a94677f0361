import {
  type HexalobularSize,
  hexalobularRows,
  hexalobularSize,
  hexSocketRows,
  inchHexRows,
  inchSocketRows,
  metricHexRows,
} from './driveTables';
import type { ThreadSize } from './threadGeometry';
import { unifiedSizeOf } from './unifiedThreads';

/** What a tool grips; lengths in mm. */
export type Drive =
  | { readonly kind: 'hexagon' | 'hex-socket'; readonly acrossFlats: number; readonly written: string }
  | { readonly kind: 'hexalobular'; readonly size: HexalobularSize; readonly written: string };

/** A drive that a standard fastener with a thread has. */
export interface StandardDrive {
  readonly drive: Drive;
  /** Which fasteners have it: `ISO 4014, ISO 4017, ISO 4032`. */
  readonly standard: string;
  /** Whether it is made today, or was by standards since withdrawn and is still met with. */
  readonly age: 'current' | 'older';
}

/** The drives of standard fasteners with this thread's nominal diameter; empty where the tables have none. */
export function drivesFor(thread: ThreadSize): readonly StandardDrive[] {
  if (thread.system === 'unified') return unifiedDrives(thread.diameter / 25.4);
  return [...metricHexagons(thread.diameter), ...metricSockets(thread.diameter), ...hexalobulars(thread.diameter)];
}

/** The widths across flats of hexagon heads and nuts for this thread, in mm, without repeats, the usual one first. */
export function hexagonWidths(thread: ThreadSize): readonly number[] {
  const widths = drivesFor(thread).flatMap(({ drive }) => (drive.kind === 'hexagon' ? drive.acrossFlats : []));
  return [...new Set(widths)];
}

/** The metric threads, by nominal diameter in mm, that have a hexagon of this width across flats in mm. */
export function diametersForHexagon(acrossFlats: number): readonly number[] {
  const rows = metricHexRows.filter(({ width }) => width === acrossFlats);
  return [...new Set(rows.map(({ diameter }) => diameter))].sort((a, b) => a - b);
}

function metricHexagons(nominal: number): readonly StandardDrive[] {
  return metricHexRows
    .filter(({ diameter }) => diameter === nominal)
    .map(({ width, standard, age }) => ({ drive: millimetres('hexagon', width), standard, age }));
}

function metricSockets(nominal: number): readonly StandardDrive[] {
  const width = hexSocketRows.get(nominal);
  if (width === undefined) return [];
  return [{ drive: millimetres('hex-socket', width), standard: 'ISO 4762', age: 'current' }];
}

function hexalobulars(nominal: number): readonly StandardDrive[] {
  const name = hexalobularRows.get(nominal);
  const size = name === undefined ? undefined : hexalobularSize(name);
  if (size === undefined) return [];
  return [{ drive: { kind: 'hexalobular', size, written: size.name }, standard: 'ISO 14579', age: 'current' }];
}

function unifiedDrives(diameter: number): readonly StandardDrive[] {
  const size = unifiedSizeOf(diameter)?.size;
  if (size === undefined) return [];
  const hexagons = inchHexRows
    .filter((row) => row.size === size)
    .map(({ width, standard }) => ({ drive: inches('hexagon', width), standard, age: 'current' }) as const);
  const socket = inchSocketRows.get(size);
  if (socket === undefined) return hexagons;
  return [...hexagons, { drive: inches('hex-socket', socket), standard: 'ASME B18.3', age: 'current' }];
}

function millimetres(kind: 'hexagon' | 'hex-socket', width: number): Drive {
  return { kind, acrossFlats: width, written: `${width} mm` };
}

function inches(kind: 'hexagon' | 'hex-socket', fraction: string): Drive {
  return { kind, acrossFlats: inchFraction(fraction) * 25.4, written: `${fraction} in` };
}

/** Inches of `7/16` or `1-1/8`. */
function inchFraction(written: string): number {
  const [whole, part] = written.includes('-') ? written.split('-') : ['0', written];
  const [top, bottom] = (part ?? '').split('/');
  return Number(whole) + Number(top) / Number(bottom ?? '1');
}
