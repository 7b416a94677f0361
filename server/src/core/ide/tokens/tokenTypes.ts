import type { RefKind } from '../../model/shape';

/**
 * What a stretch of a document means, as an editor colours it. Standard types of the protocol where they fit; the others are
 * the kinds of thing that an id can stand for.
 */
export const TOKEN_TYPES = [
  'keyword',
  'number',
  'unit',
  'part',
  'tool',
  'consumable',
  'limit',
  'check',
  'step',
  'figure',
  'condition',
  'enumMember',
] as const;
export type TokenType = (typeof TOKEN_TYPES)[number];

export const TOKEN_MODIFIERS = ['declaration', 'mention', 'unknown', 'unused'] as const;
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

/** What an id of a kind is coloured as; a kind that is left out is not coloured. */
export const TYPE_OF_KIND: Readonly<Partial<Record<RefKind, TokenType>>> = {
  part: 'part',
  assembly: 'part',
  'balance-group': 'part',
  tool: 'tool',
  consumable: 'consumable',
  limit: 'limit',
  reading: 'limit',
  'limit-or-reading': 'limit',
  dimension: 'limit',
  check: 'check',
  step: 'step',
  figure: 'figure',
  variant: 'condition',
  option: 'condition',
  outcome: 'condition',
};
