import { type BuildSet, type BuildSpace, valuesByBuild } from '../builds';
import type { ByBuild } from '../model/values';

export interface HeldValue<Value> {
  readonly value: Value;
  /** Where it holds; never empty. */
  readonly where: BuildSet;
}

type Cases<Value> = Extract<ByBuild<Value>, { is: 'cases' }>['cases'];

/** What a value by build comes to within some builds. */
export interface HeldValues<Value> {
  readonly held: readonly HeldValue<Value>[];
  /** Where it certainly has no value; a case that cannot be read may stand for any build, so then nothing is certain. */
  readonly absent: BuildSet;
}

/**
 * A dozen rules ask for the values of a family for the same builds, in each of its procedures. A set of builds goes with its
 * reading of the family, while a value stays the same as long as its text does, so it must not hold on to the sets.
 */
const resolved = new WeakMap<ByBuild<unknown>, WeakMap<BuildSet, HeldValues<unknown>>>();

/** Resolves a value by build for some of the builds. */
export function heldValues<Value>(
  byBuild: ByBuild<Value> | undefined,
  space: BuildSpace,
  within: BuildSet,
): HeldValues<Value> {
  if (byBuild === undefined) return { held: [], absent: within };
  if (byBuild.is === 'one') return { held: present([{ value: byBuild.value, where: within }]), absent: space.nothing };
  const known = resolved.get(byBuild) ?? new WeakMap<BuildSet, HeldValues<unknown>>();
  resolved.set(byBuild, known);
  const values = known.get(within) ?? heldCases(byBuild.cases, space, within);
  known.set(within, values);
  return values as HeldValues<Value>;
}

function heldCases<Value>(cases: Cases<Value>, space: BuildSpace, within: BuildSet): HeldValues<Value> {
  const entries = cases.flatMap(({ key, expr, value }) => (expr === undefined ? [] : [{ key: key.text, expr, value }]));
  const otherwise = cases.find((one) => one.otherwise);
  const values = valuesByBuild(space, entries, { otherwise: otherwise !== undefined, within });
  // Where two cases overlap nobody can tell which one is meant.
  const doubtful = space.union(values.overlaps.map((overlap) => overlap.where));
  const held = entries.map(({ value }, place) => ({
    value,
    where: values.coverage[place]?.minus(doubtful) ?? space.nothing,
  }));
  if (otherwise !== undefined) held.push({ value: otherwise.value, where: values.otherwise });
  const unread = cases.some(
    ({ expr, otherwise: rest }) => !rest && (expr === undefined || space.unknownNames(expr).length > 0),
  );
  return { held: present(held), absent: unread ? space.nothing : values.absent };
}

/** Whether two cases of a value by build hold for one build. */
export function overlaps(byBuild: ByBuild<unknown> | undefined, space: BuildSpace, within: BuildSet): boolean {
  if (byBuild === undefined || byBuild.is === 'one') return false;
  const entries = byBuild.cases.flatMap(({ key, expr }) => (expr === undefined ? [] : [{ key: key.text, expr }]));
  return valuesByBuild(space, entries, { within }).overlaps.length > 0;
}

function present<Value>(held: readonly HeldValue<Value>[]): HeldValue<Value>[] {
  return held.filter(({ where }) => !where.isEmpty);
}

/** All builds in which there is a value. */
export function anyHeldOf(held: readonly HeldValue<unknown>[], space: BuildSpace): BuildSet {
  return space.union(held.map((one) => one.where));
}

/** Two values with the builds in which both hold. */
export function* meetings<A, B>(
  first: readonly HeldValue<A>[],
  second: readonly HeldValue<B>[],
): Generator<{ readonly first: A; readonly second: B; readonly where: BuildSet }> {
  for (const a of first) {
    for (const b of second) {
      const where = a.where.and(b.where);
      if (!where.isEmpty) yield { first: a.value, second: b.value, where };
    }
  }
}

/** The builds of a finding, left out where it holds for all that its place serves. */
export function whereUnless(
  set: BuildSet,
  served: BuildSet,
  space: BuildSpace,
): { where?: { readonly set: BuildSet; readonly space: BuildSpace } } {
  return set.equals(served) ? {} : { where: { set, space } };
}
