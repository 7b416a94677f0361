import type { Tool } from '../model/generated/types';
import { boundsOf } from '../quantity';
import { type SquareDrive, squareDriveOf } from '../standards/squareDrives';
import { roleOf } from './toolGrip';
import type { NamedTool } from './toolNamed';

/** The driving square of a tool; undefined where none is stated or it is of no standard. Equal squares are one object. */
export function squareOf({ square }: Tool): SquareDrive | undefined {
  const quantity = square?.reading.quantity;
  return quantity?.form === 'single' && quantity.dimension === 'length'
    ? squareDriveOf(boundsOf(quantity).nominal)
    : undefined;
}

/** `6.3 mm (1/4 in)`. */
export function squareText({ nominal, inch }: SquareDrive): string {
  return `${nominal} mm (${inch} in)`;
}

/** A socket that goes on none of the handles beside it. */
export interface SquareMismatch {
  readonly socket: NamedTool;
  readonly square: SquareDrive;
  readonly handle: NamedTool;
  readonly other: SquareDrive;
}

/** Sockets whose square none of the handles, bars and adapters beside them has; nothing where a square is not stated. */
export function squareMismatches(tools: readonly NamedTool[]): SquareMismatch[] {
  const squares = tools.map((one) => ({ one, role: roleOf(one.tool), square: squareOf(one.tool) }));
  const drivers = squares.filter(({ one, role }) => role === 'turns' || one.tool.kind?.value === 'extension');
  const [first] = drivers;
  const doubtful = squares.some(({ role }) => role === 'unknown') || drivers.some(({ square }) => square === undefined);
  if (first?.square === undefined || doubtful) return [];
  const handle = first.one;
  const other = first.square;
  return squares.flatMap(({ one, role, square }) => {
    if (role !== 'grips' || square === undefined || drivers.some((driver) => driver.square === square)) return [];
    return [{ socket: one, square, handle, other }];
  });
}
