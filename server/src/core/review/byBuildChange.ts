import { heldValues } from '../analysis/heldValues';
import { type BuildSet, buildsOf, describeBuilds, pickBuild } from '../builds';
import type { ByBuild } from '../model/values';
import type { Node } from '../syntax/node';
import type { TwoSets, TwoSpaces } from './twoSides';

/** Any typed value that a by-build value can hold. */
export interface NodeValue {
  readonly node: Node;
}

/** Builds in which one value gave way to another; undefined is no value. */
export interface ValuePair {
  readonly before: NodeValue | undefined;
  readonly after: NodeValue | undefined;
  readonly builds: string;
  readonly where: BuildSet | undefined;
}

type Values = ByBuild<NodeValue> | undefined;

/** More builds than these are not looked at one by one. */
const MOST_BUILDS = 200;

/**
 * The pairs of values that meet in some build, where both sides are resolved for each build before they are compared: a
 * value for all builds that becomes one value each, all equal, is no change.
 */
export function valuePairs(before: Values, after: Values, spaces: TwoSpaces, within: TwoSets): ValuePair[] {
  return spaces.same ? inOneSpace(before, after, spaces, within) : buildByBuild(before, after, spaces, within);
}

function inOneSpace(before: Values, after: Values, { after: space }: TwoSpaces, within: TwoSets): ValuePair[] {
  // Equal facts make equal spaces, so that the older conditions mean the same in the newer one.
  const all = within.after ?? space.everything;
  const [old, now] = [heldValues(before, space, all), heldValues(after, space, all)];
  const withNothing = <Held>(held: readonly Held[], absent: BuildSet) => [
    ...held,
    ...(absent.isEmpty ? [] : [{ value: undefined, where: absent }]),
  ];
  return withNothing(old.held, old.absent).flatMap((first) =>
    withNothing(now.held, now.absent).flatMap((second): ValuePair[] => {
      const where = first.where.and(second.where);
      if (where.isEmpty || (first.value === undefined && second.value === undefined)) return [];
      const builds = where.equals(all) ? '' : describeBuilds(where, space);
      return [{ before: first.value, after: second.value, builds, where }];
    }),
  );
}

/** Where the builds themselves differ, each build that both have is looked at for itself. */
function buildByBuild(before: Values, after: Values, spaces: TwoSpaces, within: TwoSets): ValuePair[] {
  const ids = new Set(
    buildsOf(within.before ?? spaces.before.everything, spaces.before, MOST_BUILDS).map(({ id }) => id),
  );
  const common = buildsOf(within.after ?? spaces.after.everything, spaces.after, MOST_BUILDS).filter(({ id }) =>
    ids.has(id),
  );
  const pairs = new Map<string, { pair: ValuePair; labels: string[] }>();
  for (const { id, label } of common) {
    const [old, now] = [valueIn(before, spaces.before, id), valueIn(after, spaces.after, id)];
    if (old === undefined && now === undefined) continue;
    const key = `${places.of(old)}|${places.of(now)}`;
    const known = pairs.get(key) ?? { pair: { before: old, after: now, builds: '', where: undefined }, labels: [] };
    known.labels.push(label);
    pairs.set(key, known);
  }
  return [...pairs.values()].map(({ pair, labels }) => ({
    ...pair,
    builds: labels.length === common.length ? '' : labels.join('; or '),
  }));
}

function valueIn(values: Values, space: TwoSpaces['before'], build: string): NodeValue | undefined {
  const picked = pickBuild(space, build);
  if (picked.kind === 'refused') return undefined;
  return heldValues(values, space, picked.set).held[0]?.value;
}

/** A number for each object, to key pairs by. */
const places = {
  numbers: new WeakMap<object, number>(),
  next: 0,
  of(one: object | undefined): number {
    if (one === undefined) return -1;
    const known = this.numbers.get(one) ?? this.next++;
    this.numbers.set(one, known);
    return known;
  },
};
