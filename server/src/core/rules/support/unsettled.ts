import { Names } from '../../analysis/names';
import type { ProcedureView } from '../../analysis/procedureView';
import { type Unit, unitsIn } from '../../model/facts';
import type { Instruction } from '../../model/generated/types';
import type { RefKind } from '../../model/shape';

/** Whether a torn text, a half-typed instruction or an id that nothing has may yet turn out to use something of the kinds. */
export function mayUseMore(procedure: ProcedureView, kinds: readonly RefKind[]): boolean {
  if (procedure.document.problems.length > 0) return true;
  for (const unit of procedure.units()) if (isUnsettled(unit) || namesUnknown(procedure, unit, kinds)) return true;
  return false;
}

/** The same for what stands within one step. */
export function isStepUnsettled(procedure: ProcedureView, step: unknown): boolean {
  const unit = unitOf(procedure, step);
  return unit !== undefined && unitsIn(unit).some((one) => isUnsettled(one) || namesUnknown(procedure, one, STORES));
}

/** Whether an instruction holds a key that nothing reads or that has no value yet, so that what seems to be missing may be it. */
export function isHalfTyped(procedure: ProcedureView, instruction: Instruction): boolean {
  const unit = unitOf(procedure, instruction);
  return unit !== undefined && isUnsettled(unit);
}

const STORES: readonly RefKind[] = ['part', 'tool', 'consumable'];

function isUnsettled({ def, problems }: Unit): boolean {
  if (problems.length === 0 || !isOfStep(def)) return false;
  return problems.some(({ kind }) => kind !== 'duplicate-key' && kind !== 'wrong-id' && kind !== 'wrong-date');
}

function isOfStep(def: string): boolean {
  return (
    def === 'procedure/step' ||
    def === 'procedure/phase' ||
    def === 'procedure/sentence' ||
    def.startsWith('procedure/verb-')
  );
}

function namesUnknown(procedure: ProcedureView, { facts }: Unit, kinds: readonly RefKind[]): boolean {
  const names = Names.of(procedure.snapshot, procedure.document);
  return (
    facts.refs.some(
      ({ ref }) => !ref.listing && kinds.includes(ref.kind) && names.lookUp(ref.kind, ref.id).is === 'unknown',
    ) || facts.prose.some(({ prose }) => prose.mentions.some((one) => names.lookUpMention(one).is === 'unknown'))
  );
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<unknown, Unit>>();

/** The unit that a step or instruction was read from; looked for once for a reading. */
function unitOf(procedure: ProcedureView, value: unknown): Unit | undefined {
  const known = remembered.get(procedure) ?? new Map(Array.from(procedure.units(), (unit) => [unit.value, unit]));
  remembered.set(procedure, known);
  return known.get(value);
}
