import { heldValues } from '../analysis/heldValues';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../builds';
import type { Part, Tool } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { assumedWidths } from './toolAssumedWidths';
import { flatsOf, type Grip, gripNamed, gripOfTool, gripsMeet, gripsOutside } from './toolGrip';

/** The size of tool that a fastener needs on some builds. */
export type SizeNeed = { readonly where: BuildSet; readonly grip: Grip } & (
  | { readonly known: 'stated' }
  /** From its thread; `met` are all widths in mm that such a fastener may have. */
  | { readonly known: 'assumed'; readonly standard: string; readonly thread: string; readonly met: readonly number[] }
);

/** What a fastener needs, by build, and where nobody knows. */
export interface SizeNeeds {
  readonly needs: readonly SizeNeed[];
  readonly unknown: BuildSet;
}

/** What a part of a family needs is the same in all its procedures; a set of builds belongs to one space. */
const known = new WeakMap<Part, WeakMap<BuildSet, SizeNeeds>>();

/** The size of tool that a part needs within some builds: by its drive and width across flats, or else by its thread. */
export function sizeNeeds(procedure: ProcedureView, id: string, within: BuildSet): SizeNeeds {
  const { space, family } = procedure;
  const part = family?.part(id);
  if (part === undefined) return { needs: [], unknown: within };
  const ofPart = known.get(part) ?? new WeakMap<BuildSet, SizeNeeds>();
  known.set(part, ofPart);
  const needs = ofPart.get(within) ?? needsOf(part, space, within);
  ofPart.set(within, needs);
  return needs;
}

function needsOf(part: Part, space: BuildSpace, within: BuildSet): SizeNeeds {
  const stated = statedNeeds(part, space, within);
  const silent = within.minus(space.union(stated.map((one) => one.where)));
  const assumed = silent.isEmpty || hasOtherDrive(part) ? [] : assumedNeeds(part, space, silent);
  const needs = [...stated, ...assumed];
  return { needs, unknown: within.minus(space.union(needs.map((one) => one.where))) };
}

/** The width of a part does not change with who asks, while a procedure asks for it at every turn. */
const widths = new WeakMap<QuantityValue, { readonly grip: Grip | undefined }>();

function widthOf(value: QuantityValue, part: Part): Grip | undefined {
  const known = widths.get(value) ?? { grip: flatsOf(value, facesOf(part)) };
  widths.set(value, known);
  return known.grip;
}

function statedNeeds(part: Part, space: BuildSpace, within: BuildSet): SizeNeed[] {
  if (part.driveSize !== undefined) {
    const grip = gripNamed(part.driveSize.text, facesOf(part));
    return grip === undefined ? [] : [{ known: 'stated', where: within, grip }];
  }
  return heldValues(part.acrossFlats, space, within).held.flatMap(({ value, where }): SizeNeed[] => {
    const grip = widthOf(value, part);
    return grip === undefined ? [] : [{ known: 'stated', where, grip }];
  });
}

function facesOf(part: Part): 'outer' | 'inner' | 'either' {
  const drive = part.drive?.value;
  if (drive === 'socket-hexagon') return 'inner';
  const outer = drive === 'hexagon' || drive === 'bi-hexagon' || drive === 'square' || part.kind?.value === 'nut';
  return outer ? 'outer' : 'either';
}

/** Whether its drive is one whose size does not follow from the thread. */
function hasOtherDrive({ drive, driveSize, acrossFlats }: Part): boolean {
  return driveSize !== undefined || acrossFlats !== undefined || (drive !== undefined && drive.value !== 'hexagon');
}

/** Fittings, plugs and the like are made with any hexagon; nuts and bolts are not. */
const STANDARD: ReadonlyMap<string, 'nut' | 'bolt'> = new Map([
  ['nut', 'nut'],
  ['bolt', 'bolt'],
  ['screw', 'bolt'],
]);

function assumedNeeds(part: Part, space: BuildSpace, within: BuildSet): SizeNeed[] {
  const fastener = STANDARD.get(part.kind?.value ?? '');
  if (fastener === undefined) return [];
  return heldValues(part.thread, space, within).held.flatMap(({ value, where }): SizeNeed[] => {
    const widths = assumedWidths(value.text, fastener);
    if (widths === undefined) return [];
    const grip: Grip = { is: 'flats', width: widths.usual, faces: 'outer', rounding: 0 };
    return [{ known: 'assumed', where, grip, standard: widths.standard, thread: value.text, met: widths.met }];
  });
}

/** Whether a tool fits; `unknown` where its own size is, or where an assumed hexagon is the wrong guess for such a tool. */
export function fitOf(tool: Tool, need: SizeNeed): 'fits' | 'fits-not' | 'unknown' {
  const grip = gripOfTool(tool);
  if (grip === undefined) return 'unknown';
  if (need.known === 'stated') return gripsMeet(grip, need.grip) ? 'fits' : 'fits-not';
  if (grip.is === 'named' || !gripsOutside(tool)) return 'unknown';
  return need.met.some((width) => gripsMeet(grip, { ...grip, width })) ? 'fits' : 'fits-not';
}

/** Whether a tool is the one that a need asks for: of an assumed hexagon, the width of the standard in force. */
export function isAskedFor(tool: Tool, need: SizeNeed): boolean {
  const grip = gripOfTool(tool);
  if (grip === undefined || !gripsMeet(grip, need.grip)) return false;
  return need.known === 'stated' || gripsOutside(tool);
}
