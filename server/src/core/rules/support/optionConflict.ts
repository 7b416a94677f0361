import type { FamilyView } from '../../analysis/familyView';
import type { Option } from '../../model/generated/types';
import type { Entry, Ref } from '../../model/values';

/** An option that another one needs, straight or through others; `via` is the need that leads to it. */
export interface Needed {
  readonly option: Entry<Option>;
  readonly via: Ref | undefined;
  /** The need of the option itself that leads to it. */
  readonly first: Ref | undefined;
}

/** What contradicts what in the demands of an option that no unit can have. */
export type Conflict =
  | { readonly is: 'excludes'; readonly one: Needed; readonly other: Needed; readonly by: Ref }
  | { readonly is: 'variants'; readonly among: readonly Needed[] };

/** The options by id, the first one where an id stands twice. */
export function optionsOf(family: FamilyView): ReadonlyMap<string, Entry<Option>> {
  const byId = new Map<string, Entry<Option>>();
  for (const option of family.value.options ?? []) if (!byId.has(option.id.id)) byId.set(option.id.id, option);
  return byId;
}

/** The option and all that it needs, the nearest first. */
export function allNeeded(options: ReadonlyMap<string, Entry<Option>>, option: Entry<Option>): Needed[] {
  const found = new Map<string, Needed>([[option.id.id, { option, via: undefined, first: undefined }]]);
  for (const needed of found.values()) {
    for (const via of needed.option.value.needs ?? []) {
      const next = options.get(via.id);
      if (next === undefined || found.has(via.id)) continue;
      found.set(via.id, { option: next, via, first: needed.first ?? via });
    }
  }
  return [...found.values()];
}

/** The first two that exclude each other, else the few whose variants have none in common. */
export function conflictOf(needed: readonly Needed[]): Conflict | undefined {
  for (const [at, other] of needed.entries()) {
    for (const one of needed.slice(0, at)) {
      const by = exclusion(one, other) ?? exclusion(other, one);
      if (by !== undefined) return { is: 'excludes', one, other, by };
    }
  }
  return variantConflict(needed);
}

function exclusion(one: Needed, other: Needed): Ref | undefined {
  return one.option.value.excludes?.find((ref) => ref.id === other.option.id.id);
}

/** Leaves out whom the rest can do without, the farthest first, until each that is left is part of the contradiction. */
function variantConflict(needed: readonly Needed[]): Conflict | undefined {
  let among = needed.filter(({ option }) => (option.value.variants ?? []).length > 0);
  if (hasCommonVariant(among)) return undefined;
  for (const one of [...among].reverse()) {
    const fewer = among.filter((other) => other !== one);
    if (!hasCommonVariant(fewer)) among = fewer;
  }
  return { is: 'variants', among };
}

function hasCommonVariant(among: readonly Needed[]): boolean {
  const [first, ...others] = among.map(({ option }) => new Set((option.value.variants ?? []).map((ref) => ref.id)));
  return first === undefined || [...first].some((id) => others.every((ids) => ids.has(id)));
}
