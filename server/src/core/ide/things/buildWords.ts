import { heldValues } from '../../analysis/heldValues';
import { type BuildSet, type BuildSpace, buildsOf, countBuilds, describeBuilds } from '../../builds';
import type { ByBuild } from '../../model/values';
import { type CardRow, row } from './card';

/** So many builds are told by name. */
const mostBuilds = 8;

/** A set in words with how many builds it touches: `V4-28R with the wide inlet (2 of 9 builds)`, `all 9 builds`. */
export function buildsText(set: BuildSet, space: BuildSpace): string {
  const all = countBuilds(space.everything, space);
  if (set.isEverything) return all === 1 ? 'every unit' : `all ${all} builds`;
  if (set.isEmpty) return 'no build';
  const count = `${countBuilds(set, space)} of ${all} builds`;
  // A build of which only some outcomes are meant is counted as well.
  return `${describeBuilds(set, space)} (${space.outcomesOf(set).length === 0 ? '' : 'possible on '}${count})`;
}

/** Where something exists; nothing where that is everywhere, since that goes without saying. */
export function buildsRow(label: string, set: BuildSet | undefined, space: BuildSpace | undefined): CardRow[] {
  if (set === undefined || space === undefined || set.isEverything) return [];
  return row(label, buildsText(set, space));
}

/** The builds of a set by name, a line for each; the rest is counted. */
export function namedBuildsRow(label: string, set: BuildSet, space: BuildSpace): CardRow[] {
  const shown = buildsOf(set, space, mostBuilds).map((build) => build.label);
  const more = countBuilds(set, space) - shown.length;
  return row(label, [...shown, ...(more > 0 ? [`and ${more} more`] : [])], mostBuilds + 1);
}

/**
 * A value by build, a line for each value: `left`, or `right on V4-20` and so on where it differs. Without a family, or
 * where a case cannot be read, as it is written.
 */
export function valueLines<Value>(
  byBuild: ByBuild<Value> | undefined,
  space: BuildSpace | undefined,
  within: BuildSet | undefined,
  textOf: (value: Value) => string,
): string[] {
  if (byBuild === undefined) return [];
  if (byBuild.is === 'one') return [textOf(byBuild.value)];
  if (space === undefined || within === undefined) {
    return byBuild.cases.map(({ key, value }) => `${key.text}: ${textOf(value)}`);
  }
  const byText = new Map<string, BuildSet>();
  for (const { value, where } of heldValues(byBuild, space, within).held) {
    const text = textOf(value);
    byText.set(text, where.or(byText.get(text) ?? space.nothing));
  }
  const lines = [...byText].map(([text, where]) =>
    where.equals(within) ? text : `${text} on ${textOfBuilds(where, space)}`,
  );
  return lines;
}

function textOfBuilds(where: BuildSet, space: BuildSpace): string {
  return describeBuilds(where, space) || 'every build';
}
