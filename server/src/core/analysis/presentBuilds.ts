import type { BuildSet, BuildSpace } from '../builds';
import type { FamilyView } from './familyView';

const remembered = new WeakMap<BuildSpace, Map<string, BuildSet>>();

/** The builds that have a part as they are finished, or as they are received: where it can be worked on at all. */
export function presentBuilds(family: FamilyView, space: BuildSpace, id: string): BuildSet {
  // A space belongs to one family, and procedures with the same builds share it.
  const known = remembered.get(space) ?? new Map<string, BuildSet>();
  remembered.set(space, known);
  const set = known.get(id) ?? family.presence(id, space).or(family.presence(id, space, 'received'));
  known.set(id, set);
  return set;
}
