import type { FamilyView } from '../../analysis/familyView';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Ref } from '../../model/values';
import { type Instruction, ifNotValue } from './instructionKeys';
import type { Plan, UseHere } from './plannedSteps';

/** The instructions of the sheet that can say something of the parts that they take off, fit or exchange. */
type Fitting = readonly UseHere[];

/**
 * Which removals end with the old part in the bin: those of parts that are always renewed, unless the part was only on
 * trial, or an instruction of its own says where it goes.
 */
export function discardedRefs(uses: Fitting, family: FamilyView | undefined): ReadonlyMap<Instruction, readonly Ref[]> {
  const handled = new Set<string>();
  for (const { instruction: one } of uses) for (const ref of elsewhere(one)) handled.add(ref.id);
  const onTrial = new Set<string>();
  const discarded = new Map<Instruction, readonly Ref[]>();
  for (const { instruction: one } of uses) {
    if (one.verb === 'install')
      for (const ref of one.install ?? []) setTrial(onTrial, ref.id, one.trial?.value === true);
    if (one.verb !== 'remove') continue;
    const isSpent = (id: string) => family?.part(id)?.renew?.value === 'always' && !onTrial.has(id);
    const spent = (one.remove ?? []).filter((ref) => isSpent(ref.id) && !handled.has(ref.id));
    if (spent.length > 0) discarded.set(one, spent);
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

/**
 * Removals of fasteners that an earlier instruction has loosened wherever the removal holds: they are spun off, and
 * which way was already said.
 */
export function spunOff(uses: Fitting, { nothing }: BuildSpace): ReadonlySet<Instruction> {
  const loose = new Map<string, BuildSet>();
  const spun = new Set<Instruction>();
  for (const { instruction: one, where } of uses) {
    const looseOf = (ref: Ref) => loose.get(ref.id) ?? nothing;
    const tight = one.verb === 'tighten' ? one.tighten : one.verb === 'remove' ? one.remove : undefined;
    if (one.verb === 'remove' && (one.remove ?? []).every((ref) => where.isWithin(looseOf(ref)))) spun.add(one);
    if (one.verb === 'loosen') for (const ref of one.loosen ?? []) loose.set(ref.id, looseOf(ref).or(where));
    for (const ref of tight ?? []) loose.set(ref.id, looseOf(ref).minus(where));
  }
  return spun;
}

function replacedRefs(one: Instruction): readonly Ref[] {
  return ifNotValue(one)?.replace ?? [];
}

/** The parts that an instruction may renew: what it inspects or replaces. */
function renewedRefs(one: Instruction): readonly Ref[] {
  const replaced = replacedRefs(one);
  const inspected = one.verb === 'inspect' ? (one.inspect ?? []) : [];
  return [...inspected.filter((ref) => replaced.every((other) => other.id !== ref.id)), ...replaced];
}

/**
 * Where it is ticked whether a part was used again: at the last instruction of the build that may renew it. Only parts
 * that are renewed on condition, or of which some step or instruction asks, are in it.
 */
export function renewalBoxes(
  plan: Plan,
  uses: Fitting,
  family: FamilyView | undefined,
): ReadonlyMap<Instruction, readonly Ref[]> {
  const last = new Map<string, { readonly at: Instruction; readonly ref: Ref }>();
  for (const { instruction } of uses) {
    for (const ref of renewedRefs(instruction)) {
      const part = family?.part(ref.id);
      const isDecided = part?.renew?.value === 'on-condition' && replacedRefs(instruction).includes(ref);
      if (part !== undefined && (plan.outcomes.has(ref.id) || isDecided)) last.set(ref.id, { at: instruction, ref });
    }
  }
  const boxes = new Map<Instruction, Ref[]>();
  for (const { at, ref } of last.values()) boxes.set(at, [...(boxes.get(at) ?? []), ref]);
  return boxes;
}
