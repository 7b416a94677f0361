import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Tool } from '../model/generated/types';
import { gripOfTool, roleOf } from './toolGrip';
import { type NamedTool, toolsHolding, toolsOfStores, toolsWith } from './toolNamed';
import { fitOf, isAskedFor, type SizeNeed } from './toolSizeNeeds';
import { isTorqueTool } from './toolTorque';
import { heldSizes, type TurnedFastener, type Turning, turningOf } from './toolTurning';

/** A fastener on some builds for which none of the tools is right. */
export interface NeedUnmet {
  readonly ref: TurnedFastener['ref'] | undefined;
  readonly name: string;
  readonly need: SizeNeed;
}

/** A tool that fits nothing it can be for, or not on all builds. */
export interface Misfit {
  readonly tool: NamedTool;
  readonly unmet: readonly [NeedUnmet, ...NeedUnmet[]];
  readonly where: BuildSet;
}

/** What comes of holding the tools of an instruction against what it turns. */
export interface ToolFit {
  /** Tools of the wrong size. */
  readonly misfits: readonly Misfit[];
  /** Fasteners that are left without a tool though every tool fits something. */
  readonly undriven: readonly NeedUnmet[];
}

const NOTHING: ToolFit = { misfits: [], undriven: [] };

/** By the tools of the stores: a view stays the same while others are named. */
const remembered = new WeakMap<ProcedureView['tools'], WeakMap<InstructionView, ToolFit>>();

/** Holds the tools that an instruction names against the fasteners that it turns and holds, by build. */
export function toolFit(procedure: ProcedureView, view: InstructionView): ToolFit {
  if (namesNoTools(view)) return NOTHING;
  // Two rules and the editor ask for the same.
  const known = remembered.get(procedure.tools) ?? new WeakMap<InstructionView, ToolFit>();
  remembered.set(procedure.tools, known);
  const fit = known.get(view) ?? heldAgainst(procedure, view);
  known.set(view, fit);
  return fit;
}

function heldAgainst(procedure: ProcedureView, view: InstructionView): ToolFit {
  const turning = turningOf(procedure, view);
  if (turning === undefined || turning.unsure || turning.turned.length === 0) return NOTHING;
  const { tools, complete } = toolsWith(procedure, view.instruction);
  const gripping = tools.filter(({ tool }) => roleOf(tool) === 'grips');
  const inDoubt = !complete || tools.some(({ tool }) => roleOf(tool) === 'unknown');
  const held = heldMisfits(procedure, view);
  if (gripping.length === 0 || inDoubt || gripping.some(({ tool }) => gripOfTool(tool) === undefined)) {
    return { misfits: held, undriven: [] };
  }
  const useless = gripping.flatMap((tool) => uselessTool(tool, gripping, turning, view) ?? []);
  const rest = useless.length > 0 ? [] : unmetNeeds(turning, gripping);
  const [first, second] = rest;
  const [only, another] = gripping;
  // One tool for one fastener that has another size on some builds: the tool is what has to be looked at.
  if (first !== undefined && second === undefined && only !== undefined && another === undefined) {
    const misfit: Misfit = { tool: only, unmet: [first], where: first.need.where };
    if (turning.turned.length === 1) return { misfits: [misfit, ...held], undriven: [] };
  }
  return { misfits: [...useless, ...held], undriven: rest };
}

function namesNoTools({ instruction }: InstructionView): boolean {
  const holding = 'hold' in instruction ? instruction.hold?.with : undefined;
  return (instruction.with === undefined || instruction.with.length === 0) && (holding?.length ?? 0) === 0;
}

/** The tools that drive a fastener, of those that the stores have, for a size that is needed. */
export function toolsFor(procedure: ProcedureView, need: SizeNeed, like?: NamedTool): string[] {
  const kind = like?.tool.kind?.value;
  // A torque tool with a head of its own is no socket for another tool.
  const grips = (tool: Tool): boolean =>
    roleOf(tool) === 'grips' && (!isTorqueTool(tool) || (like !== undefined && isTorqueTool(like.tool)));
  const ids = toolsOfStores(procedure, (tool) => grips(tool) && isAskedFor(tool, need));
  const same = (id: string): number => Number(procedure.tools.get(id)?.entry.value.kind?.value === kind);
  return kind === undefined ? ids : ids.sort((a, b) => same(b) - same(a));
}

/** A tool that fits none of the fasteners on any build, where all of them are known. */
function uselessTool(
  tool: NamedTool,
  gripping: readonly NamedTool[],
  { turned, beside }: Turning,
  view: InstructionView,
): Misfit | undefined {
  const needs = turned.flatMap(({ ref, name, sizes }) => sizes.needs.map((need) => ({ ref, name, need })));
  const [first, ...others] = needs;
  if (first === undefined || turned.some(({ sizes }) => !sizes.unknown.isEmpty)) return undefined;
  if ([...needs.map((one) => one.need), ...beside].some((need) => fitOf(tool.tool, need) !== 'fits-not'))
    return undefined;
  if (mayHold(turned, view) && othersDrive(tool, gripping, turned)) return undefined;
  const where = others.reduce((all, one) => all.or(one.need.where), first.need.where);
  return { tool, unmet: [first, ...others], where };
}

/** A second tool may be there to hold against what is turned. */
function mayHold(turned: readonly TurnedFastener[], { instruction }: InstructionView): boolean {
  const holds = 'hold' in instruction && instruction.hold !== undefined && instruction.hold.with === undefined;
  return holds || turned.some(({ part }) => part.hold !== undefined || part.matesWith !== undefined);
}

function othersDrive(tool: NamedTool, gripping: readonly NamedTool[], turned: readonly TurnedFastener[]): boolean {
  return turned.every(({ sizes }) =>
    sizes.needs.every((need) => gripping.some((other) => other !== tool && fitOf(other.tool, need) === 'fits')),
  );
}

function unmetNeeds({ turned }: Turning, gripping: readonly NamedTool[]): NeedUnmet[] {
  return turned.flatMap(({ ref, name, sizes }) =>
    sizes.needs
      .filter((need) => gripping.every(({ tool }) => fitOf(tool, need) === 'fits-not'))
      .map((need) => ({ ref, name, need })),
  );
}

/** Tools that counter-hold and fit nothing that can be meant. */
function heldMisfits(procedure: ProcedureView, view: InstructionView): Misfit[] {
  const { tools } = toolsHolding(procedure, view.instruction);
  const gripping = tools.filter(({ tool }) => roleOf(tool) === 'grips' && gripOfTool(tool) !== undefined);
  if (gripping.length === 0) return [];
  const [first, ...others] = heldSizes(procedure, view).map((one) => ({ ...one, ref: undefined }));
  if (first === undefined) return [];
  const all = [first, ...others];
  return gripping.flatMap((tool): Misfit[] => {
    if (all.some(({ need }) => fitOf(tool.tool, need) !== 'fits-not')) return [];
    return [{ tool, unmet: [first, ...others], where: view.where }];
  });
}
