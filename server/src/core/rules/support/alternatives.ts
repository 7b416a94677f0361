import { conditionOf } from '../../analysis/familyView';
import { objectIds, objectRefs } from '../../analysis/instructions';
import type { PhaseHead } from '../../analysis/phaseHead';
import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { BuildSet } from '../../builds';
import type { Instruction } from '../../model/generated/types';
import type { ItemRange } from '../../syntax/node';

/** One thing that is written several times in a phase, each time for other builds. */
export interface Alternatives {
  readonly verb: Instruction['verb'];
  readonly object: string;
  readonly at: ItemRange;
  /** The builds that have the object and that none of them serves. */
  readonly missing: BuildSet;
}

/** Verbs that may well be done for some builds only, or whose object is a text. */
const FREE: ReadonlySet<Instruction['verb']> = new Set([
  'say',
  'record',
  'wait',
  'apply',
  'clean',
  'discard',
  'return',
]);

interface Occurrence {
  readonly step: StepView;
  readonly view: InstructionView;
  readonly key: string;
}

/** Instructions with one verb and one object that exclude each other, and leave out a build that has the object. */
export function alternativesOf(procedure: ProcedureView): Alternatives[] {
  const groups = new Map<PhaseHead, Map<string, Occurrence[]>>();
  const runs = occurrencesByRun(procedure);
  for (const { some } of runs) for (const one of some) add(groups, one);
  return [...groups].flatMap(([phase, byKey]) =>
    [...byKey].flatMap(([key, group]) => {
      // What is done on every build of the phase somewhere is written on top of that.
      const isDone = group.length < 2 || runs.some((run) => run.phase === phase && run.anyway.has(key));
      return isDone ? [] : (leftOut(procedure, group) ?? []);
    }),
  );
}

/** What a stretch of a phase holds for some of its builds only, and the keys of what it holds for all of them. */
interface Occurrences {
  readonly phase: PhaseHead | undefined;
  readonly some: readonly Occurrence[];
  readonly anyway: ReadonlySet<string>;
}

const occurrencesByRun = gatherer((steps): Occurrences => {
  const some: Occurrence[] = [];
  const anyway = new Set<string>();
  for (const step of steps) {
    for (const view of step.instructions) {
      const key = keyOf(view);
      if (key === undefined) continue;
      if (view.where === step.phaseWhere) anyway.add(key);
      else if (!view.where.isEmpty) some.push({ step, view, key });
    }
  }
  return { phase: steps[0]?.phase, some, anyway };
});

function add(groups: Map<PhaseHead, Map<string, Occurrence[]>>, one: Occurrence): void {
  const { phase } = one.step;
  const group = groups.get(phase) ?? new Map<string, Occurrence[]>();
  groups.set(phase, group);
  const known = group.get(one.key);
  if (known === undefined) group.set(one.key, [one]);
  else known.push(one);
}

/** The verb and the one object of an instruction that may be an alternative. */
function keyOf({ instruction, nested }: InstructionView): string | undefined {
  if (nested || FREE.has(instruction.verb)) return undefined;
  const refs = objectRefs(instruction);
  return refs.length === 1 ? `${instruction.verb} ${refs[0]?.id}` : undefined;
}

function leftOut(procedure: ProcedureView, group: readonly Occurrence[]): Alternatives | undefined {
  const first = group[0];
  if (first === undefined) return undefined;
  const { instruction } = first.view;
  const object = objectIds(instruction)[0] ?? '';
  let served = procedure.space.nothing;
  for (const { view } of group) {
    if (view.where.overlaps(served)) return undefined;
    served = served.or(view.where);
  }
  // What is done only where a part is renewed, or only where it is used again, leaves no build out.
  const either = procedure.space.withOutcomesOpen(served, (outcome) => procedure.family?.part(outcome) !== undefined);
  const missing = first.step.phaseWhere.and(buildsWith(procedure, object)).minus(either);
  const at = objectRefs(instruction)[0]?.range;
  return missing.isEmpty || at === undefined ? undefined : { verb: instruction.verb, object, at, missing };
}

/** The builds that have the object: a part may be on some of them only, and so may what is measured or found out. */
function buildsWith(procedure: ProcedureView, object: string): BuildSet {
  const { family, space } = procedure;
  if (family?.part(object) !== undefined)
    return procedure.presence(object, 'finished').or(procedure.presence(object, 'received'));
  const { limits = [], checks = [], identify = [] } = family?.value ?? {};
  const entry = [...limits, ...checks, ...identify].find((one) => one.id.id === object);
  return entry === undefined ? space.everything : space.set(conditionOf(entry.value));
}
