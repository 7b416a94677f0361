import type { ConditionExpr } from '../../builds';
import { unitOf } from '../../model/readUnit';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { type NodePath, scalarAt } from '../nodePath';

/** The condition in which a name stands. */
export interface ConditionThere {
  readonly expr: ConditionExpr;
  /** The name is all of it, so that what is told of the name tells of the condition. */
  readonly isTold: boolean;
}

/** The condition whose name stands at an offset: of `when` and `unless`, or the key of a value by build. */
export function conditionOfName(document: SyntaxDocument, offset: number): ConditionThere | undefined {
  const path = scalarAt(document, offset);
  if (path === undefined) return undefined;
  for (const { condition, key } of conditionsOn(path)) {
    const name = condition.names.find(({ node }) => node === path.scalar);
    if (name !== undefined)
      return { expr: holding(key, condition.expr), isTold: key === 'when' && condition.node === path.scalar };
  }
  for (const { byBuild } of path.nodes.flatMap((node) => unitOf(node)?.facts.byBuilds ?? [])) {
    const found = byBuild.is === 'one' ? undefined : byBuild.cases.find(({ key }) => key === path.scalar);
    if (found?.expr !== undefined) return { expr: found.expr, isTold: true };
  }
  return undefined;
}

/** The condition behind a key such as `when`, or around one such as `none`. */
export function conditionBehindKey({ nodes, pairs, scalar }: NodePath): ConditionExpr | undefined {
  const value = pairs.at(-1)?.key === scalar ? pairs.at(-1)?.value : undefined;
  const found = conditionsOn({ nodes }).find(
    ({ condition }) => condition.node === value || nodes.includes(condition.node),
  );
  return found === undefined ? undefined : holding(found.key, found.condition.expr);
}

function conditionsOn({ nodes }: Pick<NodePath, 'nodes'>) {
  return nodes.flatMap((node) => unitOf(node)?.facts.conditions ?? []);
}

/** What must be so for the owner to hold. */
function holding(key: string, expr: ConditionExpr): ConditionExpr {
  return key === 'unless' ? { kind: 'none', of: [expr] } : expr;
}
