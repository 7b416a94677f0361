import type { FamilyView } from '../../analysis/familyView';
import { type BuildSet, type BuildSpace, parseConditionText } from '../../builds';

/**
 * The keys of a value by build that together hold for exactly these builds, among those that have the part: variants
 * first, then options, then outcomes; `otherwise` where no such keys say it.
 */
export function keysFor(family: FamilyView, space: BuildSpace, set: BuildSet, within: BuildSet): string[] {
  const { variants = [], options = [], identify = [] } = family.value;
  const outcomes = identify.flatMap(({ id, value }) => (value.values ?? []).map(({ text }) => `${id.id}=${text}`));
  const kinds = [variants.map(({ id }) => id.id), options.map(({ id }) => id.id), outcomes];
  for (const keys of kinds) {
    const inside = keys.flatMap((key) => {
      const where = setOf(space, key).and(within);
      return where.isEmpty || !where.isWithin(set) ? [] : [{ key, where }];
    });
    if (inside.length > 0 && space.union(inside.map((one) => one.where)).equals(set)) {
      return inside.map((one) => one.key);
    }
  }
  return ['otherwise'];
}

function setOf(space: BuildSpace, key: string): BuildSet {
  const expr = parseConditionText(key);
  return expr === undefined ? space.nothing : space.set(expr);
}
