import type { FamilyView } from '../../analysis/familyView';
import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Prose } from '../../model/values';
import { type FastenerNamed, fastenersNamed } from './fastenersNamed';
import type { HandClaim } from './handClaims';
import { turnedParts } from './turnedParts';

interface Place {
  readonly procedure: ProcedureView | undefined;
  readonly step: StepView | undefined;
  readonly instruction: InstructionView | undefined;
}

/**
 * The fasteners of which a sentence claims a hand: those that it names, else those that its instruction turns, else the
 * only one that its step turns. Where it names several, only the one right behind the claim.
 */
export function claimedFasteners(family: FamilyView, prose: Prose, claim: HandClaim, place: Place): string[] {
  const { sentence } = claim;
  const named = fastenersNamed(family, prose).filter((one) => one.start >= sentence.start && one.end <= sentence.end);
  if (new Set(named.map((one) => one.id)).size > 1)
    return named.filter((one) => follows(one, claim)).map((one) => one.id);
  const [only] = named;
  if (only !== undefined) return [only.id];
  const turned = place.instruction === undefined ? [] : idsTurned(family, [place.instruction]);
  if (turned.length > 0) return turned;
  const inStep = idsTurned(family, place.step?.instructions ?? []);
  return inStep.length === 1 ? inStep : [];
}

function follows(named: FastenerNamed, claim: HandClaim): boolean {
  return named.start > claim.start && named.start - claim.end <= 2;
}

function idsTurned(family: FamilyView, views: readonly InstructionView[]): string[] {
  return [...new Set(views.flatMap((view) => turnedParts(view.instruction, family).map(({ ref }) => ref.id)))];
}

/** The builds that a sentence speaks of: those of its place, narrowed to the variants and options that it names. */
export function buildsSpokenOf(procedure: ProcedureView, text: string, where: BuildSet): BuildSet {
  const { variants = [], options = [] } = procedure.family?.value ?? {};
  const named = [...variants, ...options].filter(
    ({ id, value }) => hasWord(text, id.id) || hasWord(text, value.name?.text ?? ''),
  );
  if (named.length === 0) return where;
  return where.and(procedure.space.union(named.map(({ id }) => procedure.space.set({ kind: 'is', id: id.id }))));
}

/** Whether a text holds a name by itself, not as the start of a longer one. */
function hasWord(text: string, name: string): boolean {
  const at = name === '' ? -1 : text.indexOf(name);
  return at >= 0 && !/[\w-]/.test(text.charAt(at - 1)) && !/^-?\w/.test(text.slice(at + name.length));
}
