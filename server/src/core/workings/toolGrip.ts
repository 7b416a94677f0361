import type { Tool } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { boundsOf, parseQuantity } from '../quantity';
import { hexalobularSize } from '../standards/driveTables';

/**
 * How a tool and a fastener meet. `flats` are a width across flats in mm, outside or inside; `faces` says which, where that
 * is known. A named drive is one that has no such width: T30, PH2.
 */
export type Grip =
  | {
      readonly is: 'flats';
      readonly width: number;
      readonly faces: 'outer' | 'inner' | 'either';
      /** How far the written number may be from the true one, because it was rounded. */
      readonly rounding: number;
    }
  | { readonly is: 'named'; readonly name: string };

type Faces = Extract<Grip, { is: 'flats' }>['faces'];

/** Kinds that take hold of a fastener whatever they are, and where. A socket may be one with a bit in it. */
const GRIPPING: ReadonlyMap<string, Faces> = new Map([
  ['socket', 'either'],
  ['bit', 'either'],
  ['screwdriver', 'either'],
  ['spanner', 'outer'],
  ['crow-foot', 'outer'],
  ['hexagon-key', 'inner'],
]);

/** Kinds that turn something that takes hold, unless they have a size of their own. */
const TURNING: ReadonlySet<string> = new Set(['torque-wrench', 'torque-screwdriver', 'ratchet', 't-handle']);

/** What a tool does for a fastener; `unknown` where the stores leave it open. */
export type ToolRole = 'grips' | 'turns' | 'neither' | 'unknown';

export function roleOf(tool: Tool): ToolRole {
  const kind = tool.kind?.value;
  if (kind === undefined || kind === 'other') return 'unknown';
  if (GRIPPING.has(kind)) return 'grips';
  if (!TURNING.has(kind)) return 'neither';
  return tool.size === undefined && tool.driveSize === undefined ? 'turns' : 'grips';
}

/** Whether a tool reaches the hexagon of a fastener from outside, as far as its kind tells. */
export function gripsOutside(tool: Tool): boolean {
  return ['socket', 'spanner', 'crow-foot'].includes(tool.kind?.value ?? '');
}

/** What a tool takes hold of; undefined where its size is not stated or cannot be read. */
export function gripOfTool(tool: Tool): Grip | undefined {
  const known = grips.get(tool);
  if (known !== undefined) return known.grip;
  const grip = readGrip(tool);
  grips.set(tool, { grip });
  return grip;
}

const grips = new WeakMap<Tool, { readonly grip: Grip | undefined }>();

function readGrip(tool: Tool): Grip | undefined {
  const faces = GRIPPING.get(tool.kind?.value ?? '') ?? 'either';
  if (tool.size !== undefined) return flatsOf(tool.size, faces);
  return tool.driveSize === undefined ? undefined : gripNamed(tool.driveSize.text, faces);
}

/** A width across flats as it is written. */
export function flatsOf(value: QuantityValue, faces: Faces): Grip | undefined {
  const { quantity } = value.reading;
  if (quantity?.form !== 'single' || quantity.dimension !== 'length') return undefined;
  const { resolution, notation } = quantity.number;
  // A whole number of millimetres and a fraction of an inch are names of sizes and mean exactly what they say.
  const exact = notation === 'fraction' || resolution >= 1;
  const rounding = exact ? 0 : Math.min((resolution * quantity.unit.factor) / 2, 0.02);
  return { is: 'flats', width: boundsOf(quantity).nominal, faces, rounding };
}

/** A drive by its name; a name that is a length after all is a width across flats. */
export function gripNamed(text: string, faces: Faces): Grip | undefined {
  const { quantity, problems } = parseQuantity(text, 'length');
  if (quantity?.form === 'single' && problems.length === 0) {
    return { is: 'flats', width: boundsOf(quantity).nominal, faces, rounding: 0 };
  }
  const name = hexalobularSize(text)?.name ?? text.replace(/\s+/g, '').toUpperCase();
  return name === '' ? undefined : { is: 'named', name };
}

/**
 * Whether two grips meet. No play is allowed for: a 5/16 in socket (7.94 mm) does not go on 8 mm, and 8 mm on 5/16 in rounds the
 * corners; only what was lost in writing 11.1 mm for 7/16 in is.
 */
export function gripsMeet(one: Grip, other: Grip): boolean {
  if (one.is === 'named' || other.is === 'named') {
    return one.is === 'named' && other.is === 'named' && one.name === other.name;
  }
  if (one.faces !== other.faces && one.faces !== 'either' && other.faces !== 'either') return false;
  return Math.abs(one.width - other.width) <= Math.max(one.rounding, other.rounding) + 0.0011;
}
