import type { BuildSet } from './buildSet';
import type { BuildSpace, UnitState } from './buildSpace';
import type { ConditionExpr } from './condition';

/** One entry of a value by build: the key as written, and the condition that it stands for. */
export interface ValueEntry {
  readonly key: string;
  readonly expr: ConditionExpr;
}

export interface EntryOverlap {
  /** Places in the list of entries, `first` before `second`. */
  readonly first: number;
  readonly second: number;
  readonly where: BuildSet;
}

export interface ValuesByBuild {
  /** Where each entry applies, place by place. */
  readonly coverage: readonly BuildSet[];
  /** Where `otherwise` applies; empty where there is no `otherwise`. */
  readonly otherwise: BuildSet;
  /** Where there is no value. */
  readonly absent: BuildSet;
  readonly overlaps: readonly EntryOverlap[];
  /** Places of the entries that never apply. */
  readonly neverTrue: readonly number[];
}

export interface ValuesByBuildOptions {
  readonly otherwise?: boolean;
  /** Where the value is looked at, such as the builds that have the part; everything by default. */
  readonly within?: BuildSet;
  readonly as?: UnitState;
}

/** Decides which entry of a value by build holds where. Entries must exclude each other; `otherwise` takes the rest. */
export function valuesByBuild(
  space: BuildSpace,
  entries: readonly ValueEntry[],
  options: ValuesByBuildOptions = {},
): ValuesByBuild {
  const within = options.within ?? space.everything;
  const coverage = entries.map(({ expr }) => space.set(expr, options.as).and(within));
  const rest = within.minus(space.union(coverage));
  return {
    coverage,
    otherwise: options.otherwise === true ? rest : space.nothing,
    absent: options.otherwise === true ? space.nothing : rest,
    overlaps: overlapsOf(coverage),
    neverTrue: coverage.flatMap((set, place) => (set.isEmpty ? [place] : [])),
  };
}

function overlapsOf(coverage: readonly BuildSet[]): EntryOverlap[] {
  return coverage.flatMap((second, place) =>
    coverage.slice(0, place).flatMap((first, earlier) => {
      const where = first.and(second);
      return where.isEmpty ? [] : [{ first: earlier, second: place, where }];
    }),
  );
}
