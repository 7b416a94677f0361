import { Names } from '../../analysis/names';
import type { ProcedureView } from '../../analysis/procedureView';
import { isUnsettled, summariesOf } from '../../analysis/unitSummary';
import { type Unit, unitsIn } from '../../model/facts';
import type { Instruction, Step } from '../../model/generated/types';
import { unitOf } from '../../model/readUnit';
import type { RefKind } from '../../model/shape';
import type { Mention } from '../../model/values';

/** Whether a torn text, a half-typed instruction or an id that nothing has may yet turn out to use something of the kinds. */
export function mayUseMore(procedure: ProcedureView, kinds: readonly RefKind[]): boolean {
  if (procedure.document.problems.length > 0) return true;
  const names = Names.of(procedure.snapshot, procedure.document);
  const isUnknown = (mention: Mention): boolean => names.lookUpMention(mention).is === 'unknown';
  return summariesOf(procedure.unit).some(
    ({ unsettled, named, mentions, noted }) =>
      unsettled ||
      kinds.some((kind) => [...(named.get(kind) ?? [])].some((id) => names.lookUp(kind, id).is === 'unknown')) ||
      mentions.some(isUnknown) ||
      noted.some(isUnknown),
  );
}

/** The same for what stands within one step. */
export function isStepUnsettled(procedure: ProcedureView, step: Step | undefined): boolean {
  const unit = step === undefined ? undefined : unitOf(step.node);
  return unit !== undefined && unitsIn(unit).some((one) => isUnsettled(one) || namesUnknown(procedure, one, STORES));
}

/** Whether an instruction holds a key that nothing reads or that has no value yet, so that what seems to be missing may be it. */
export function isHalfTyped(instruction: Instruction): boolean {
  const unit = unitOf(instruction.node);
  return unit !== undefined && isUnsettled(unit);
}

const STORES: readonly RefKind[] = ['part', 'tool', 'consumable'];

function namesUnknown(procedure: ProcedureView, { facts }: Unit, kinds: readonly RefKind[]): boolean {
  const names = Names.of(procedure.snapshot, procedure.document);
  return (
    facts.refs.some(
      ({ ref }) => !ref.listing && kinds.includes(ref.kind) && names.lookUp(ref.kind, ref.id).is === 'unknown',
    ) || facts.prose.some(({ prose }) => prose.mentions.some((one) => names.lookUpMention(one).is === 'unknown'))
  );
}
