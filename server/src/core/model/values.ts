import type { ConditionExpr } from '../builds/condition';
import type { QuantityReading } from '../quantity/quantity';
import type { ItemRange, Node, Remembering, ScalarNode } from '../syntax/node';
import type { RefKind } from './shape';

/** A text that stands for itself: a number of a part, a thread designation. */
export interface Text {
  readonly node: ScalarNode;
  readonly text: string;
}

/** `<id>` or `<kind/id>` in a text for people; offsets are within that text. */
export interface Mention {
  readonly kind: string | undefined;
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** A text for people, with its translations where the writer gave some. */
export interface Prose extends Remembering {
  readonly node: Node;
  readonly scalar: ScalarNode;
  readonly text: string;
  readonly mentions: readonly Mention[];
  readonly translations: Readonly<Partial<Record<'en' | 'de' | 'es', ScalarNode>>>;
}

/** An id that names something declared elsewhere. */
export interface Ref {
  readonly node: ScalarNode;
  readonly kind: RefKind;
  readonly id: string;
  /** Where the id itself stands: the node without a sign before it. */
  readonly range: ItemRange;
  /** It is an entry of a list of what is laid out, not a use. */
  readonly listing: boolean;
}

export interface CountedRef {
  readonly ref: Ref;
  readonly count: Count | undefined;
}

/** `+bearing-bore`, `-shaft-journal`, `-0.05 mm`: a signed dimension or reading by id, or a quantity. */
export interface SignedTerm {
  readonly node: ScalarNode;
  readonly sign: 1 | -1;
  readonly term: Ref | QuantityValue;
}

export type RefOrProse = { readonly is: 'ref'; readonly ref: Ref } | { readonly is: 'prose'; readonly prose: Prose };

/** An id that is declared here. */
export interface Declared {
  readonly node: ScalarNode;
  readonly kind: RefKind;
  readonly id: string;
}

/** A value with its unit. `word` holds a word that may stand in its place, such as `record-only`. */
export interface QuantityValue {
  readonly node: ScalarNode;
  /** What was read; it stands at `offset` within the node's text. */
  readonly text: string;
  readonly offset: number;
  readonly dimension: string;
  readonly reading: QuantityReading;
  readonly word: string | undefined;
}

export interface Count {
  readonly node: ScalarNode;
  /** Undefined where the text is no whole number. */
  readonly value: number | undefined;
}

export interface Flag {
  readonly node: ScalarNode;
  readonly value: boolean;
}

/** A day as `2027-03-01`; undefined where the text is none. */
export interface DateText {
  readonly node: ScalarNode;
  readonly day: string | undefined;
}

export interface Choice<Name extends string = string> {
  readonly node: ScalarNode;
  /** Undefined where the text is none of the choices. */
  readonly value: Name | undefined;
}

export interface PathRef {
  readonly node: ScalarNode;
  readonly path: string;
  readonly to: string;
}

export interface Entry<Value> {
  readonly id: Declared;
  readonly value: Value;
}

/** One name of a condition, as written. `expr` is undefined where the text has no shape of a name. */
export interface ConditionName {
  readonly node: ScalarNode;
  readonly text: string;
  readonly expr: ConditionExpr | undefined;
}

export interface Condition {
  readonly node: Node;
  readonly expr: ConditionExpr;
  readonly names: readonly ConditionName[];
}

export interface BuildCase<Value> {
  readonly key: ScalarNode;
  /** Undefined for `otherwise` and for a key that has no shape of a condition. */
  readonly expr: ConditionExpr | undefined;
  readonly otherwise: boolean;
  readonly value: Value;
}

/** One value for all builds, or values by build and outcome. */
export type ByBuild<Value> =
  | { readonly is: 'one'; readonly node: Node; readonly value: Value }
  | { readonly is: 'cases'; readonly node: Node; readonly cases: readonly BuildCase<Value>[] };

/** Every value that a by-build value can take. */
export function valuesOf<Value>(byBuild: ByBuild<Value> | undefined): readonly Value[] {
  if (byBuild === undefined) return [];
  return byBuild.is === 'one' ? [byBuild.value] : byBuild.cases.map((one) => one.value);
}
