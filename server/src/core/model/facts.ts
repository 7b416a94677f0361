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
  readonly refs: RefFact[];
  readonly declared: Declared[];
  readonly prose: ProseFact[];
  readonly quantities: QuantityFact[];
  readonly conditions: ConditionFact[];
  readonly byBuilds: ByBuildFact[];
  readonly paths: PathRef[];
}

/** What was read from one definition: its value, the facts in it, and the units inside. */
export interface Unit<Value = unknown> {
  readonly def: string;
  readonly node: Node;
  readonly value: Value;
  readonly facts: Facts;
  readonly problems: readonly ShapeProblem[];
  readonly children: readonly Unit[];
}

export function noFacts(): Facts {
  return { refs: [], declared: [], prose: [], quantities: [], conditions: [], byBuilds: [], paths: [] };
}

/** A unit and all units inside it, in the order of the text. */
export function* unitsIn(unit: Unit): Generator<Unit> {
  yield unit;
  for (const child of unit.children) yield* unitsIn(child);
}
