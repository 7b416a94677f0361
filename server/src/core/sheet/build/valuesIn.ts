import { type BuildSet, type BuildSpace, valuesByBuild } from '../../builds';
import type { ByBuild } from '../../model/values';

/** A value and the builds and outcomes that have it; undefined where nothing is stated for them. */
export interface ValueCase<Value> {
  readonly value: Value | undefined;
  readonly where: BuildSet;
}

/** The values that a value by build takes within a set, first written first; what has none comes last. */
export function valuesIn<Value>(
  byBuild: ByBuild<Value> | undefined,
  within: BuildSet,
  space: BuildSpace,
): ValueCase<Value>[] {
  if (byBuild === undefined) return [{ value: undefined, where: within }];
  if (byBuild.is === 'one') return [{ value: byBuild.value, where: within }];
  const named = byBuild.cases.flatMap((one) => (one.expr === undefined ? [] : [{ expr: one.expr, value: one.value }]));
  const otherwise = byBuild.cases.find((one) => one.otherwise);
  const entries = named.map(({ expr }) => ({ key: '', expr }));
  const decided = valuesByBuild(space, entries, { within, otherwise: otherwise !== undefined });
  const cases: ValueCase<Value>[] = named.map(({ value }, place) => ({
    value,
    where: decided.coverage[place] ?? space.nothing,
  }));
  cases.push({ value: otherwise?.value, where: decided.otherwise }, { value: undefined, where: decided.absent });
  return cases.filter(({ where }) => !where.isEmpty);
}

/** The value where there is one and the same for all of a set. */
export function oneValueIn<Value>(
  byBuild: ByBuild<Value> | undefined,
  within: BuildSet,
  space: BuildSpace,
): Value | undefined {
  const cases = valuesIn(byBuild, within, space);
  return cases.length === 1 ? cases[0]?.value : undefined;
}

/** Cases with equal values made one, in the order in which each value is first met. */
export function merged<Value>(
  cases: readonly ValueCase<Value>[],
  keyOf: (value: Value | undefined) => string,
): ValueCase<Value>[] {
  const byKey = new Map<string, ValueCase<Value>>();
  for (const one of cases) {
    const key = keyOf(one.value);
    const known = byKey.get(key);
    byKey.set(key, known === undefined ? one : { value: known.value, where: known.where.or(one.where) });
  }
  return [...byKey.values()];
}
