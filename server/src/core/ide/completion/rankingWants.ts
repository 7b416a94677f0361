import type { BuildSet } from '../../builds';
import type { Lane } from '../../walk/lane';
import type { StandingUnit } from './rankingState';

/** Where each thing that the family may ask before fitting is done. A new part is clean and sound. */
const MET: Readonly<Record<string, (lane: Lane) => BuildSet>> = {
  clean: ({ clean, fresh }) => clean.or(fresh),
  inspect: ({ inspected, fresh }) => inspected.or(fresh),
  lubricate: ({ lubricated }) => lubricated,
  threadlock: ({ threadlocked }) => threadlocked,
  heat: ({ hot }) => hot,
  cool: ({ cold }) => cold,
  mark: ({ marked }) => marked,
};

/** What is still to be done to a part, in a few words. */
export const NOT_YET: Readonly<Record<string, string>> = {
  clean: 'still to be cleaned',
  inspect: 'still to be inspected',
  lubricate: 'still to be oiled',
  threadlock: 'still without threadlocker',
  heat: 'still to be heated',
  cool: 'still to be cooled',
  mark: 'still to be marked',
};

/** The first thing asked before fitting that is not done on some of the builds. */
export function firstUnmet(unit: StandingUnit, id: string, where: BuildSet): string | undefined {
  return wantsOf(unit, id).find((want) => isUnmet(unit, id, want, where));
}

export function wantsOf({ unit }: StandingUnit, id: string): string[] {
  return (unit.part(id)?.beforeFitting ?? []).flatMap(({ value }) => value ?? []);
}

/** Whether something that can be asked before fitting is not done; it need not be asked. */
export function isUnmet(unit: StandingUnit, id: string, want: string, where: BuildSet): boolean {
  const met = MET[want];
  return met !== undefined && !where.minus(met(unit.lane(id))).isEmpty;
}
