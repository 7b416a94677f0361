import type { Node } from '../syntax/node';
import type { ShapeProblem } from './shapeProblem';
import type { ByBuild, Condition, Declared, PathRef, Prose, QuantityValue, Ref } from './values';

/** A quantity and the key it stands under. */
export interface QuantityFact {
  readonly key: string;
  readonly value: QuantityValue;
}

export interface ProseFact {
  readonly key: string;
  readonly prose: Prose;
}

export interface RefFact {
  readonly key: string;
  readonly ref: Ref;
}

export interface ConditionFact {
  readonly key: string;
  readonly condition: Condition;
}

export interface ByBuildFact {
  readonly key: string;
  readonly byBuild: ByBuild<unknown>;
}

/** Everything of one kind that stands in a unit, in the order of the text, without what its inner units hold. */
export interface Facts {
  readonly refs: readonly RefFact[];
  readonly declared: readonly Declared[];
  readonly prose: readonly ProseFact[];
  readonly quantities: readonly QuantityFact[];
  readonly conditions: readonly ConditionFact[];
  readonly byBuilds: readonly ByBuildFact[];
  readonly paths: readonly PathRef[];
}

/** What was read from one definition: its value, the facts in it, and the units inside. */
export interface Unit<Value = unknown> {
  readonly def: string;
  readonly node: Node;
  readonly value: Value;
  readonly facts: Facts;
  readonly problems: readonly ShapeProblem[];
  readonly children: readonly Unit[];
  /** What later layers remember of the unit; see the nodes. */
  remembered: unknown;
  /** What was gathered from the unit and all that is in it, where somebody has. */
  summary: unknown;
  /** The unit as it stands in its document, where somebody has looked at it so. */
  view: unknown;
  /** This unit and all units inside it, in the order of the text; made on first use. */
  all: readonly Unit[] | undefined;
}

const NONE: readonly never[] = [];

/** Collects facts. Most units hold facts of one or two kinds, so a list is only made for the first fact of its kind. */
export class FactCollector implements Facts {
  refs: readonly RefFact[] = NONE;
  declared: readonly Declared[] = NONE;
  prose: readonly ProseFact[] = NONE;
  quantities: readonly QuantityFact[] = NONE;
  conditions: readonly ConditionFact[] = NONE;
  byBuilds: readonly ByBuildFact[] = NONE;
  paths: readonly PathRef[] = NONE;

  add<Kind extends keyof Facts>(kind: Kind, fact: Facts[Kind][number]): void {
    const list = this[kind] as unknown[];
    if ((list as readonly unknown[]) === NONE) (this as Record<keyof Facts, readonly unknown[]>)[kind] = [fact];
    else list.push(fact);
  }
}

/** A unit and all units inside it, in the order of the text. */
export function unitsIn(unit: Unit): readonly Unit[] {
  if (unit.all !== undefined) return unit.all;
  const all: Unit[] = [unit];
  for (const child of unit.children) for (const one of unitsIn(child)) all.push(one);
  unit.all = all;
  return all;
}
