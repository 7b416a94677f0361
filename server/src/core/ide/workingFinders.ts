import type { Finder, FoundWorking } from './finders/finder';
import { fitFinders } from './finders/fits';
import { limitFinders } from './finders/limits';
import { sealFinders } from './finders/seals';
import { toolFinders } from './finders/tools';
import { torqueFinders } from './finders/torques';
import { unbalanceFinders } from './finders/unbalance';
import type { Place } from './place';

/** Every calculation that can be asked for. A quantity that none of them knows shows its units alone. */
const FINDERS: readonly Finder[] = [
  ...torqueFinders,
  ...limitFinders,
  ...fitFinders,
  ...sealFinders,
  ...unbalanceFinders,
  ...toolFinders,
];

/** The calculations that the documents hold for a place. */
export function workingsFound(place: Place): readonly FoundWorking[] {
  const { owner, key } = place;
  const wanted = 'id' in owner && key === owner.id ? 'id' : key;
  return FINDERS.filter((one) => one.owner === owner.is && (one.keys === 'all' || one.keys.has(wanted))).flatMap(
    (one) => one.find(place),
  );
}
