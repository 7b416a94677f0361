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

/** Where each part is fitted, in the order of the text; a trial fit takes no new part. Gathered once for a reading. */
export function fittingsOf(procedure: ProcedureView): ReadonlyMap<string, readonly Fitting[]> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const byPart = new Map<string, Fitting[]>();
  for (const fittings of fittingsByRun(procedure)) for (const one of fittings) add(byPart, one);
  remembered.set(procedure, byPart);
  return byPart;
}

const fittingsByRun = gatherer((steps, procedure) =>
  steps.flatMap((step) => step.instructions.flatMap((view) => fittingsBy(procedure, step, view))),
);

function add(byPart: Map<string, Fitting[]>, fitting: Fitting): void {
  const known = byPart.get(fitting.ref.id);
  if (known === undefined) byPart.set(fitting.ref.id, [fitting]);
  else known.push(fitting);
}

/** The builds in which each part is fitted somewhere. */
export function fittedOn(procedure: ProcedureView): ReadonlyMap<string, BuildSet> {
  const known = unions.get(procedure);
  if (known !== undefined) return known;
  const union = unionOf(unionsByRun(procedure));
  unions.set(procedure, union);
  return union;
}

const unions = new WeakMap<ProcedureView, ReadonlyMap<string, BuildSet>>();

const unionsByRun = gatherer((steps, procedure) =>
  unionOf(
    steps.flatMap((step) =>
      step.instructions.flatMap((view) =>
        fittingsBy(procedure, step, view).map(({ ref, where }) => new Map([[ref.id, where]])),
      ),
    ),
  ),
);

/** For each id all builds that one of the maps has for it. */
export function unionOf(maps: readonly ReadonlyMap<string, BuildSet>[]): Map<string, BuildSet> {
  const union = new Map<string, BuildSet>();
  for (const map of maps) {
    for (const [id, where] of map) {
      const known = union.get(id);
      if (known !== where) union.set(id, known?.or(where) ?? where);
    }
  }
  return union;
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, readonly Fitting[]>>();

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
