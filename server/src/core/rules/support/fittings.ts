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
export interface FittedPart {
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

/** All that is fitted of one part: the builds, and the stretches in which it is, in the order of the text. */
export interface Fitted {
  where: BuildSet;
  readonly stretches: FittedPart[];
}

/** What is fitted, by part; a trial fit takes no new part. Gathered once for a reading. */
export function fittedParts(procedure: ProcedureView): ReadonlyMap<string, Fitted> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const fitted = new Map<string, Fitted>();
  for (const byPart of fittedByRun(procedure)) for (const [id, part] of byPart) addStretch(fitted, id, part);
  remembered.set(procedure, fitted);
  return fitted;
}

function addStretch(fitted: Map<string, Fitted>, id: string, part: FittedPart): void {
  const known = fitted.get(id);
  if (known === undefined) {
    fitted.set(id, { where: part.where, stretches: [part] });
    return;
  }
  known.stretches.push(part);
  if (known.where !== part.where) known.where = known.where.or(part.where);
}

/** Where a part is fitted, in the order of the text. */
export function fittingsOf(procedure: ProcedureView, part: string): readonly Fitting[] {
  return (
    fittedParts(procedure)
      .get(part)
      ?.stretches.flatMap((one) => one.fittings) ?? NO_FITTINGS
  );
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

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, Fitted>>();

const NO_REFS: readonly Ref[] = [];
const NO_FITTINGS: readonly Fitting[] = [];

function fittingsBy(procedure: ProcedureView, step: StepView, view: InstructionView): readonly Fitting[] {
  const { instruction, where, nested } = view;
  const replaced = 'ifNot' in instruction ? (instruction.ifNot?.replace ?? NO_REFS) : NO_REFS;
  if (instruction.verb !== 'install' && instruction.verb !== 'press' && replaced.length === 0) return NO_FITTINGS;
  const fittings: Fitting[] = [];
  const add = (ref: Ref, count: Count | undefined, ifNeeded: boolean): void => {
    const there = where.and(procedure.presence(ref.id));
    if (!there.isEmpty) fittings.push({ step, view, ref, where: there, count, ifNeeded });
  };
  const count = instruction.verb === 'install' ? instruction.count : undefined;
  for (const ref of fittedRefs(instruction)) add(ref, count, nested);
  for (const ref of replaced) add(ref, undefined, true);
  return fittings;
}

function fittedRefs(instruction: InstructionView['instruction']): readonly Ref[] {
  if (instruction.verb === 'press') return instruction.press ?? NO_REFS;
  if (instruction.verb !== 'install' || instruction.trial?.value === true) return NO_REFS;
  return instruction.install ?? NO_REFS;
}

/** The first place of the text at which a part is fitted in some of the builds. */
export function firstWithin(fittings: readonly Fitting[], where: BuildSet): Fitting | undefined {
  return where.isEmpty ? undefined : fittings.find((one) => one.where.overlaps(where));
}
