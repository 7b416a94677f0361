import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { BuildSet } from '../../builds';
import type { Count, Ref } from '../../model/values';

/** A place of the procedure at which a part goes into the unit, and the builds in which it does. */
export interface Fitting {
  readonly step: StepView;
  readonly view: InstructionView;
  readonly ref: Ref;
  readonly where: BuildSet;
  /** How many pieces; undefined where it is all of them. */
  readonly count: Count | undefined;
  /** It happens at most when something was not as it should be. */
  readonly ifNeeded: boolean;
}

/** What a stretch of the steps fits of one part. */
interface FittedPart {
  readonly fittings: Fitting[];
  where: BuildSet;
}

const fittedByRun = gatherer((steps, procedure) => {
  const byPart = new Map<string, FittedPart>();
  for (const step of steps) {
    for (const view of step.instructions) for (const one of fittingsBy(procedure, step, view)) add(byPart, one);
  }
  return byPart;
});

function add(byPart: Map<string, FittedPart>, fitting: Fitting): void {
  const { ref, where } = fitting;
  const known = byPart.get(ref.id);
  if (known === undefined) {
    byPart.set(ref.id, { fittings: [fitting], where });
    return;
  }
  known.fittings.push(fitting);
  known.where = known.where.or(where);
}

/** Where a part is fitted, in the order of the text; a trial fit takes no new part. */
export function fittingsOf(procedure: ProcedureView, part: string): readonly Fitting[] {
  return fittedByRun(procedure).flatMap((byPart) => byPart.get(part)?.fittings ?? NO_FITTINGS);
}

/** The builds in which each part is fitted somewhere. Gathered once for a reading. */
export function fittedOn(procedure: ProcedureView): ReadonlyMap<string, BuildSet> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const union = new Map<string, BuildSet>();
  for (const byPart of fittedByRun(procedure)) for (const [id, { where }] of byPart) unite(union, id, where);
  remembered.set(procedure, union);
  return union;
}

/** For each id all builds that one of the maps has for it. */
export function unionOf(maps: readonly ReadonlyMap<string, BuildSet>[]): Map<string, BuildSet> {
  const union = new Map<string, BuildSet>();
  for (const map of maps) for (const [id, where] of map) unite(union, id, where);
  return union;
}

function unite(union: Map<string, BuildSet>, id: string, where: BuildSet): void {
  const known = union.get(id);
  if (known !== where) union.set(id, known?.or(where) ?? where);
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, BuildSet>>();

const NO_REFS: readonly Ref[] = [];
const NO_FITTINGS: readonly Fitting[] = [];

function fittingsBy(procedure: ProcedureView, step: StepView, view: InstructionView): readonly Fitting[] {
  const { instruction, where, nested } = view;
  const replaced = 'ifNot' in instruction ? (instruction.ifNot?.replace ?? NO_REFS) : NO_REFS;
  if (instruction.verb !== 'install' && instruction.verb !== 'press' && replaced.length === 0) return NO_FITTINGS;
  const found = fittedRefs(instruction).map(({ ref, count }) => ({ ref, count, ifNeeded: nested }));
  const all = [...found, ...replaced.map((ref) => ({ ref, count: undefined, ifNeeded: true }))];
  return all.flatMap((one) => {
    const there = where.and(procedure.presence(one.ref.id));
    return there.isEmpty ? [] : [{ ...one, step, view, where: there }];
  });
}

function fittedRefs(instruction: InstructionView['instruction']): { ref: Ref; count: Count | undefined }[] {
  if (instruction.verb === 'press') return (instruction.press ?? []).map((ref) => ({ ref, count: undefined }));
  if (instruction.verb !== 'install' || instruction.trial?.value === true) return [];
  return (instruction.install ?? []).map((ref) => ({ ref, count: instruction.count }));
}

/** The first place of the text at which a part is fitted in some of the builds. */
export function firstWithin(fittings: readonly Fitting[], where: BuildSet): Fitting | undefined {
  return where.isEmpty ? undefined : fittings.find((one) => one.where.overlaps(where));
}
