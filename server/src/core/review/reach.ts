import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { Uri } from '../analysis/uri';
import { type BuildSet, type BuildSpace, buildsOf, pickBuild } from '../builds';
import { unitsIn } from '../model/facts';
import type { Instruction } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { Reached } from './change';
import type { FoundChange } from './twoSides';
import { proceduresOf, type Version } from './version';

/** Builds are named one by one up to so many. */
const MOST_NAMED = 12;
const MOST_LOOKED_AT = 200;

/** The procedures whose sheets a change comes to. */
export function reachOf(change: FoundChange, uri: Uri, version: Version): readonly Reached[] {
  return proceduresOf(version).flatMap((view) => {
    if (view.document.uri === uri) return reached(view, ownSteps(change, view), change.where);
    if (!dependsOn(view, uri)) return [];
    const steps = view.steps.filter((step) => meets(step, change));
    // What is in a kit or the stores and on no step is still on the list at the front of the sheet.
    return reached(view, steps, change.where);
  });
}

function ownSteps(change: FoundChange, view: ProcedureView): readonly StepView[] {
  return view.steps.filter(({ id }) => id !== '' && id === change.of.step);
}

export function dependsOn(view: ProcedureView, uri: Uri): boolean {
  if (view.family?.document.uri === uri || view.kits.some((kit) => kit.document.uri === uri)) return true;
  return [...(view.value.stores ?? [])].some((path) => {
    const target = view.follow(path);
    return target.is === 'document' && target.document.uri === uri;
  });
}

const REF_KINDS: Readonly<Record<string, readonly string[]>> = {
  limit: ['limit', 'limit-or-reading'],
  reading: ['reading', 'limit-or-reading'],
  'balance group': ['balance-group'],
  'finding of the bench': ['outcome'],
};

function meets({ step }: StepView, { of, key }: FoundChange): boolean {
  const unit = unitOf(step.node);
  if (unit === undefined || of.id === '') return false;
  const kinds = REF_KINDS[of.kind] ?? [of.kind === 'kit line' ? 'part' : of.kind];
  const id = of.kind === 'kit line' ? of.name : of.id;
  return unitsIn(unit).some(({ facts, value }) => {
    if (!isMetBy(value as Partial<Instruction>, of.kind, key)) return false;
    return (
      facts.refs.some(({ ref }) => ref.id === id && kinds.includes(ref.kind)) ||
      facts.prose.some(({ prose }) => prose.mentions.some((mention) => mention.id === id))
    );
  });
}

/** What a family says of tightening is met where the part is tightened, also by a step that states a value of its own. */
function isMetBy(value: Partial<Instruction>, kind: string, key: string | undefined): boolean {
  return kind !== 'part' || key === undefined || !TIGHTENING_KEYS.has(key) || value.verb === 'tighten';
}

const TIGHTENING_KEYS: ReadonlySet<string> = new Set(['torque', 'angle', 'prevailing-torque', 'in-order']);

function reached(view: ProcedureView, steps: readonly StepView[], where: BuildSet | undefined): Reached[] {
  const { space } = view;
  const inSteps = steps.length === 0 ? space.everything : space.union(steps.map((step) => step.where));
  const all = buildsOf(inSteps, space, MOST_LOOKED_AT);
  const builds = where === undefined ? all : all.filter(({ id }) => isIn(id, where, space));
  if (builds.length === 0) return [];
  const ids = builds.map(({ id }) => id);
  return [
    {
      uri: view.document.uri,
      document: view.value.procedure?.text ?? '',
      steps: steps.map(({ id }) => id),
      builds: ids.slice(0, MOST_NAMED),
      more: Math.max(0, ids.length - MOST_NAMED),
    },
  ];
}

/** A set of the family's builds is asked by the names that both know. */
function isIn(build: string, where: BuildSet, space: BuildSpace): boolean {
  const owner = where.owner as BuildSpace;
  const picked = pickBuild(owner === space ? space : owner, build);
  return picked.kind === 'refused' || picked.set.overlaps(where);
}
