import { Names } from '../../analysis/names';
import type { BuildSpace, ConditionAtom, ConditionExpr } from '../../builds';
import { conditionAtoms } from '../../builds';
import type { Unit } from '../../model/facts';
import type { RefKind } from '../../model/shape';
import type { ScalarNode } from '../../syntax/node';
import type { RuleContext, Surroundings } from '../ruleContext';

/** One name of a condition, or the key of a value by build; `expr` is undefined where it has no shape of a name. */
export interface WrittenName {
  readonly node: ScalarNode;
  readonly text: string;
  readonly expr: ConditionExpr | undefined;
}

const NO_NAMES: readonly WrittenName[] = [];

/** Every name that the conditions and values by build of a unit look at. */
export function namesOfUnit(unit: Unit): readonly WrittenName[] {
  const { conditions, byBuilds } = unit.facts;
  if (conditions.length === 0 && byBuilds.length === 0) return NO_NAMES;
  const inConditions = conditions.flatMap(({ condition }) => condition.names);
  const inValues = byBuilds.flatMap(({ byBuild }) =>
    byBuild.is === 'cases' ? byBuild.cases.filter((one) => !one.otherwise) : [],
  );
  return [...inConditions, ...inValues.map(({ key, expr }) => ({ node: key, text: key.text, expr }))];
}

/** The space in which the names of a document are known; undefined where its family cannot be read. */
export function knownSpace(ctx: Pick<RuleContext, 'family' | 'procedure'>): BuildSpace | undefined {
  return ctx.family === undefined ? undefined : (ctx.procedure?.space ?? ctx.family.space);
}

/** Whether a name that nothing has may be declared where the text cannot be read. */
export function mayBeDeclared(around: Surroundings, atom: ConditionAtom): boolean {
  const names = Names.of(around.snapshot, around.document);
  const id = atom.kind === 'outcome' ? atom.name : atom.id;
  const kinds: RefKind[] = atom.kind === 'outcome' ? ['outcome', 'part'] : ['variant', 'option'];
  return kinds.some((kind) => names.lookUp(kind, id).is === 'unreadable');
}

/** Whether every name of a condition is known, so that it can be said where it holds. */
export function isUnderstood(space: BuildSpace, names: readonly WrittenName[]): boolean {
  return names.every(({ expr }) => expr !== undefined && space.unknownNames(expr).length === 0);
}

/** Whether what is wrong with the family or with what the procedure covers may be why a condition is never met. */
export function isFollowUp(space: BuildSpace, exprs: readonly ConditionExpr[]): boolean {
  if (space.problems.length === 0) return false;
  const spoilt = new Set(space.problems.map((problem) => ('owner' in problem ? problem.owner : problem.id)));
  // Where the procedure names something unknown, what it covers is not known either.
  if (spoilt.has('')) return true;
  return exprs.some((expr) =>
    [...conditionAtoms(expr)].some((atom) => spoilt.has(atom.kind === 'outcome' ? atom.name : atom.id)),
  );
}
