import { objectRefs } from '../analysis/instructions';
import { presentBuilds } from '../analysis/presentBuilds';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction, Part } from '../model/generated/types';
import type { Ref } from '../model/values';
import { type SizeNeed, type SizeNeeds, sizeNeeds } from './toolSizeNeeds';

/** A fastener that an instruction turns, and the tools that it needs. */
export interface TurnedFastener {
  readonly ref: Ref;
  readonly part: Part;
  readonly name: string;
  readonly where: BuildSet;
  readonly sizes: SizeNeeds;
}

/** What tools of an instruction may be for. */
export interface Turning {
  readonly turned: readonly TurnedFastener[];
  /** What a tool may be for as well: the fasteners of what is taken off or fitted, and what a fastener is screwed to. */
  readonly beside: readonly SizeNeed[];
  /** Something is named of which nobody can tell whether it is turned, and by what size. */
  readonly unsure: boolean;
}

const NUTS_AND_BOLTS: ReadonlySet<string> = new Set(['nut', 'bolt', 'screw', 'stud']);
/** Kinds that some makers screw in: without a thread or a width nobody can tell. */
const MAY_TURN: ReadonlySet<string> = new Set(['plug', 'fitting', 'sensor', 'clamp', 'pipe', 'rod', 'actuator']);

/** What an instruction turns, with the sizes by build; undefined for verbs that turn nothing. */
export function turningOf(procedure: ProcedureView, view: InstructionView): Turning | undefined {
  const { family } = procedure;
  const { instruction } = view;
  if (family === undefined || !turns(instruction)) return undefined;
  const refs = objectRefs(instruction);
  const parts = refs.map((ref) => ({ ref, part: family.part(ref.id) }));
  const turned = parts.flatMap(({ ref, part }): TurnedFastener[] => {
    if (part === undefined || !isTurned(part, instruction)) return [];
    const where = view.where.and(presentBuilds(family, procedure.space, ref.id));
    if (where.isEmpty) return [];
    return [{ ref, part, name: family.nameOf(ref.id), where, sizes: sizeNeeds(procedure, ref.id, where) }];
  });
  const beside = parts.flatMap(({ part }) => needsBeside(procedure, part, view.where));
  const unsure = parts.some(({ part }) => part === undefined || mayTurn(part, instruction));
  return { turned, beside, unsure };
}

function turns({ verb }: Instruction): boolean {
  return verb === 'loosen' || verb === 'tighten' || verb === 'remove' || verb === 'install' || verb === 'adjust';
}

/** Loosening and tightening turns whatever has a thread; a shaft with a thread on it is fitted without being turned. */
function isTurned(part: Part, { verb }: Instruction): boolean {
  const kind = part.kind?.value ?? '';
  if (NUTS_AND_BOLTS.has(kind)) return true;
  if (verb === 'loosen' || verb === 'tighten') return part.thread !== undefined || hasSize(part);
  return MAY_TURN.has(kind) && (part.thread !== undefined || hasSize(part));
}

function mayTurn(part: Part, instruction: Instruction): boolean {
  return MAY_TURN.has(part.kind?.value ?? '') && !isTurned(part, instruction);
}

function hasSize(part: Part): boolean {
  return part.acrossFlats !== undefined || part.driveSize !== undefined;
}

function needsBeside(procedure: ProcedureView, part: Part | undefined, within: BuildSet): SizeNeed[] {
  const refs = [...(part?.fastenedBy ?? []), ...(part?.lockedBy ?? []), ...(part?.matesWith ?? [])];
  return refs.flatMap((ref) => sizeNeeds(procedure, ref.id, within).needs);
}

/**
 * The sizes of what is held against a fastener as it is turned: of the parts that `hold` names as `<id>`, or else of the part
 * that it is screwed to. Only stated widths count; a hexagon on a shaft is of no standard.
 */
export function heldSizes(procedure: ProcedureView, view: InstructionView): { name: string; need: SizeNeed }[] {
  const { instruction, where } = view;
  const { family } = procedure;
  if (family === undefined || !('hold' in instruction)) return [];
  const named = (instruction.hold?.at?.mentions ?? []).map((one) => one.id);
  const mates = objectRefs(instruction).flatMap(({ id }) => family.part(id)?.matesWith ?? []);
  const ids = named.length > 0 ? named : mates.map((ref) => ref.id);
  return ids.flatMap((id) =>
    sizeNeeds(procedure, id, where).needs.flatMap((need) =>
      need.known === 'stated' ? [{ name: family.nameOf(id), need }] : [],
    ),
  );
}
