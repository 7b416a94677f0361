import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { type Instruction, ifNotValue } from './instructionKeys';

/**
 * Which removals end with the old part in the bin: those of parts that are always renewed, unless the part was only on
 * trial, or an instruction of its own says where it goes.
 */
export function discardedRefs(procedure: ProcedureView): ReadonlyMap<Instruction, readonly Ref[]> {
  const all = procedure.steps.flatMap((step) => step.instructions.map((one) => one.instruction));
  const handled = new Set(all.flatMap((one) => elsewhere(one).map((ref) => ref.id)));
  const onTrial = new Set<string>();
  const discarded = new Map<Instruction, readonly Ref[]>();
  for (const one of all) {
    if (one.verb === 'install')
      for (const ref of one.install ?? []) setTrial(onTrial, ref.id, one.trial?.value === true);
    if (one.verb !== 'remove') continue;
    const isSpent = (id: string) => procedure.family?.part(id)?.renew?.value === 'always' && !onTrial.has(id);
    discarded.set(
      one,
      (one.remove ?? []).filter((ref) => isSpent(ref.id) && !handled.has(ref.id)),
    );
    for (const ref of one.remove ?? []) onTrial.delete(ref.id);
  }
  return discarded;
}

function setTrial(onTrial: Set<string>, id: string, trial: boolean): void {
  if (trial) onTrial.add(id);
  else onTrial.delete(id);
}

function elsewhere(one: Instruction): readonly Ref[] {
  if (one.verb === 'discard') return one.discard ?? [];
  if (one.verb === 'return') return one.return ?? [];
  return one.verb === 'send' ? (one.send ?? []) : [];
}

/** Removals of fasteners that an earlier instruction has loosened: they are spun off, and which way was already said. */
export function spunOff(procedure: ProcedureView): ReadonlySet<Instruction> {
  const loose = new Set<string>();
  const spun = new Set<Instruction>();
  for (const { instruction: one } of procedure.steps.flatMap((step) => step.instructions)) {
    if (one.verb === 'loosen') for (const ref of one.loosen ?? []) loose.add(ref.id);
    if (one.verb === 'tighten') for (const ref of one.tighten ?? []) loose.delete(ref.id);
    if (one.verb !== 'remove') continue;
    if ((one.remove ?? []).every((ref) => loose.has(ref.id))) spun.add(one);
    for (const ref of one.remove ?? []) loose.delete(ref.id);
  }
  return spun;
}

/** The parts that an instruction may renew: what it inspects or replaces. */
function renewedRefs(one: Instruction): readonly Ref[] {
  const replaced = ifNotValue(one)?.replace ?? [];
  const inspected = one.verb === 'inspect' ? (one.inspect ?? []) : [];
  return [...inspected.filter((ref) => replaced.every((other) => other.id !== ref.id)), ...replaced];
}

/**
 * Where it is ticked whether a part was used again: at the last instruction of the build that may renew it. Only parts
 * of which some step or instruction asks are in it.
 */
export function renewalBoxes(procedure: ProcedureView, set: BuildSet): ReadonlyMap<Instruction, readonly Ref[]> {
  const { space, family, steps } = procedure;
  const views = steps.flatMap((step) => step.instructions).filter((one) => one.where.overlaps(set));
  const wheres = [...steps.map((step) => step.where), ...views.map((one) => one.where)];
  const asked = new Set(wheres.filter((where) => where.overlaps(set)).flatMap((where) => space.outcomesOf(where)));
  const last = new Map<string, { readonly at: Instruction; readonly ref: Ref }>();
  for (const { instruction } of views) {
    for (const ref of renewedRefs(instruction)) {
      if (asked.has(ref.id) && family?.part(ref.id) !== undefined) last.set(ref.id, { at: instruction, ref });
    }
  }
  const boxes = new Map<Instruction, Ref[]>();
  for (const { at, ref } of last.values()) boxes.set(at, [...(boxes.get(at) ?? []), ref]);
  return boxes;
}
