import type { ProcedureView } from '../../analysis/procedureView';
import type { Ref } from '../../model/values';
import type { Instruction } from './instructionKeys';

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
