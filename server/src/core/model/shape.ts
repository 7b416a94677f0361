/** The kinds of thing an id can name. */
export type RefKind =
  | 'part'
  | 'tool'
  | 'consumable'
  | 'limit'
  | 'reading'
  | 'check'
  | 'step'
  | 'figure'
  | 'variant'
  | 'option'
  | 'outcome'
  | 'assembly'
  | 'balance-group'
  | 'dimension'
  | 'family'
  | 'rule'
  | 'limit-or-reading';

/** What a scalar at a place stands for. */
export type ScalarShape =
  | { readonly is: 'text' }
  | { readonly is: 'prose' }
  | { readonly is: 'declares'; readonly kind: RefKind }
  | { readonly is: 'ref'; readonly kind: RefKind; readonly words?: readonly string[]; readonly listing?: true }
  | { readonly is: 'ref-or-prose'; readonly kind: RefKind }
  | { readonly is: 'signed'; readonly kind: RefKind }
  | { readonly is: 'quantity'; readonly dimension: string }
  | { readonly is: 'count' }
  | { readonly is: 'flag' }
  | { readonly is: 'date' }
  | { readonly is: 'choice'; readonly choices: readonly string[] }
  | { readonly is: 'path'; readonly to: string };

/**
 * The shape of a value, made from the JSON Schema. Every part that is present says what the value is when the node is
 * of that kind: a scalar, a list, a map with known keys, or a map with keys of the writer's own.
 */
export type Shape =
  | { readonly as: 'scalar'; readonly scalar: ScalarShape; readonly many: boolean }
  | { readonly as: 'prose'; readonly many: boolean }
  | { readonly as: 'condition' }
  | { readonly as: 'by-build'; readonly scalar: ScalarShape }
  | { readonly as: 'counted'; readonly kind: RefKind }
  | { readonly as: 'list'; readonly items: Shape }
  | { readonly as: 'entries'; readonly declares?: RefKind | undefined; readonly values: Shape }
  | { readonly as: 'object'; readonly keys: Keys; readonly shorthand?: string | undefined; readonly many: boolean }
  | { readonly as: 'unit'; readonly def: string }
  | { readonly as: 'instruction' };

export interface KeyShape {
  readonly shape: Shape;
  readonly description: string;
  readonly required: boolean;
}

export interface Keys {
  readonly [key: string]: KeyShape;
}

/** A definition that is validated and read by itself. */
export interface UnitShape {
  readonly def: string;
  readonly description: string;
  readonly verb?: string | undefined;
  readonly shape: Shape & { readonly as: 'object' };
}
