import type { RefKind } from '../../model/shape';

const NOUNS: Readonly<Partial<Record<RefKind, string>>> = {
  outcome: 'thing to identify',
  'balance-group': 'balance group',
  'limit-or-reading': 'limit or reading',
};

/** What messages call a kind of thing: "step", "balance group". */
export function nounOf(kind: RefKind): string {
  return NOUNS[kind] ?? kind;
}
