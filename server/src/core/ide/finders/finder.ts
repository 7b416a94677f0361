import type { BuildSet, BuildSpace } from '../../builds';
import type { Working } from '../../workings/working';
import type { Place, PlaceOwner } from '../place';

/** A working, and the builds that it is for where its function tells them apart. */
export interface FoundWorking {
  readonly working: Working;
  readonly holds: { readonly set: BuildSet; readonly space: BuildSpace } | undefined;
}

type OwnerKind = PlaceOwner['is'];
type OwnerOf<Kind extends OwnerKind> = Extract<PlaceOwner, { is: Kind }>;

/** Which calculation is asked for at which places. */
export interface Finder {
  readonly owner: OwnerKind;
  /** The keys at which it is asked; `id` stands for the entry as a whole. */
  readonly keys: ReadonlySet<string> | 'all';
  find(place: Place): readonly FoundWorking[];
}

/** Pairs an owner's kind with what is asked of it, so that nobody needs to look which kind came. */
export function finder<Kind extends OwnerKind>(
  owner: Kind,
  keys: readonly string[] | 'all',
  find: (owner: OwnerOf<Kind>, place: Place) => readonly FoundWorking[],
): Finder {
  const isOwn = (one: PlaceOwner): one is OwnerOf<Kind> => one.is === owner;
  return {
    owner,
    keys: keys === 'all' ? 'all' : new Set(keys),
    find: (place) => (isOwn(place.owner) ? find(place.owner, place) : []),
  };
}

export function foundOn(working: Working, set: BuildSet, space: BuildSpace): FoundWorking {
  return { working, holds: { set, space } };
}

export function foundEverywhere(working: Working): FoundWorking {
  return { working, holds: undefined };
}
