import type { FamilyView } from '../analysis/familyView';
import { heldValues } from '../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../builds';
import type { Limit } from '../model/generated/types';
import type { ByBuild, QuantityValue, SignedTerm } from '../model/values';
import { type StackLink, stackLink } from '../standards/stackUp';

/** A dimension of a chain with the value that it has on some builds. */
export interface ChainLink extends StackLink {
  readonly value: QuantityValue;
}

/** A chain of dimensions on the builds on which each of them has a value. */
export interface Chain {
  readonly where: BuildSet;
  readonly links: readonly ChainLink[];
}

/** The chain of a limit, by build; undefined where a dimension is not declared or has a value that is no length. */
export function chainsOf(
  family: FamilyView,
  limit: Limit,
  space: BuildSpace,
  within: BuildSet,
): readonly Chain[] | undefined {
  let chains: readonly Chain[] = within.isEmpty ? [] : [{ where: within, links: [] }];
  for (const term of limit.from ?? []) {
    const next = withTerm(family, term, space, chains);
    if (next === undefined) return undefined;
    chains = next;
  }
  return chains;
}

function withTerm(
  family: FamilyView,
  { sign, term }: SignedTerm,
  space: BuildSpace,
  chains: readonly Chain[],
): readonly Chain[] | undefined {
  const dimension: ByBuild<QuantityValue> | undefined =
    'id' in term ? dimensionOf(family, term.id) : { is: 'one', node: term.node, value: term };
  if (dimension === undefined) return undefined;
  const name = 'id' in term ? term.id : 'added length';
  const longer: Chain[] = [];
  for (const chain of chains) {
    for (const { value, where } of heldValues(dimension, space, chain.where).held) {
      const { quantity } = value.reading;
      const link = quantity === undefined ? undefined : stackLink(name, sign, quantity);
      if (link === undefined) return undefined;
      longer.push({ where, links: [...chain.links, { ...link, value }] });
    }
  }
  return longer;
}

/** A dimension of the family. */
export function dimensionOf({ value }: FamilyView, id: string): ByBuild<QuantityValue> | undefined {
  return value.dimensions?.find((one) => one.id.id === id)?.value;
}
