import { conditionOf } from '../../analysis/familyView';
import { objectIds, objectRefs } from '../../analysis/instructions';
import type { PhaseHead } from '../../analysis/phaseHead';
import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
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
}

/** Instructions with one verb and one object that exclude each other, and leave out a build that has the object. */
export function alternativesOf(procedure: ProcedureView): Alternatives[] {
  const groups = new Map<PhaseHead, Map<string, Occurrence[]>>();
  for (const step of procedure.steps) {
    for (const view of step.instructions) if (view.where !== step.phaseWhere) add(groups, step, view);
  }
  const wanted = [...groups].flatMap(([phase, byKey]) =>
    [...byKey].flatMap(([key, group]) => (group.length < 2 ? [] : [{ phase, key, group }])),
  );
  if (wanted.length === 0) return [];
  const done = doneAnyway(procedure, new Set(wanted.map(({ group }) => group[0]?.view.instruction.verb)));
  return wanted.flatMap(({ phase, key, group }) =>
    done.get(phase)?.has(key) === true ? [] : (leftOut(procedure, group) ?? []),
  );
}

function add(groups: Map<PhaseHead, Map<string, Occurrence[]>>, step: StepView, view: InstructionView): void {
  const key = keyOf(view);
  if (key === undefined || view.where.isEmpty) return;
  const group = groups.get(step.phase) ?? new Map<string, Occurrence[]>();
  groups.set(step.phase, group);
  const known = group.get(key);
  if (known === undefined) group.set(key, [{ step, view }]);
  else known.push({ step, view });
}

/** The verb and the one object of an instruction that may be an alternative. */
function keyOf({ instruction, nested }: InstructionView): string | undefined {
  if (nested || FREE.has(instruction.verb)) return undefined;
  if (!keys.has(instruction)) keys.set(instruction, makeKey(instruction));
  return keys.get(instruction);
}

const keys = new WeakMap<Instruction, string | undefined>();

function makeKey(instruction: Instruction): string | undefined {
  const [id, ...more] = objectIds(instruction);
  return id === undefined || more.length > 0 ? undefined : `${instruction.verb} ${id}`;
}

/** What is done on every build of a phase somewhere, so that what is written for some builds comes on top. */
function doneAnyway(
  procedure: ProcedureView,
  verbs: ReadonlySet<Instruction['verb'] | undefined>,
): Map<PhaseHead, Set<string>> {
  const done = new Map<PhaseHead, Set<string>>();
  for (const step of procedure.steps) {
    const keys = done.get(step.phase) ?? new Set<string>();
    done.set(step.phase, keys);
    for (const view of step.instructions) {
      if (view.where === step.phaseWhere && verbs.has(view.instruction.verb)) keys.add(keyOf(view) ?? '');
    }
  }
  return done;
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
