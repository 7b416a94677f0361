import type { BuildSet } from '../builds';
import type { Cause, Deed } from './failure';
import type { Lane, LaneKey } from './lane';
import type { Walker } from './walker';

interface Wanted {
  readonly cause: Cause;
  /** What makes good for it, and what counts as done once it is told. */
  readonly met: (lane: Lane) => BuildSet;
  readonly sets: LaneKey;
}

/** What may be asked before a part is fitted. A new part is clean and sound, but neither oiled nor marked. */
const WANTED: Readonly<Record<string, Wanted>> = {
  clean: { cause: 'not-cleaned', met: ({ clean, fresh }) => clean.or(fresh), sets: 'clean' },
  inspect: { cause: 'not-inspected', met: ({ inspected, fresh }) => inspected.or(fresh), sets: 'inspected' },
  lubricate: { cause: 'not-lubricated', met: ({ lubricated }) => lubricated, sets: 'lubricated' },
  threadlock: { cause: 'not-threadlocked', met: ({ threadlocked }) => threadlocked, sets: 'threadlocked' },
  heat: { cause: 'not-heated', met: ({ hot }) => hot, sets: 'hot' },
  cool: { cause: 'not-cooled', met: ({ cold }) => cold, sets: 'cold' },
  mark: { cause: 'mark-missing', met: ({ marked }) => marked, sets: 'marked' },
};

const BLAME: readonly Deed[] = ['removed', 'cleaned'];

/** What had to be done to the part since it came off, or since it came out of its bag, and decided about it. */
export function reportPreparation(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  for (const { value } of unit.part(part)?.beforeFitting ?? []) {
    const wanted = value === undefined ? undefined : WANTED[value];
    if (wanted === undefined) continue;
    const failing = where.minus(wanted.met(state.lane(part)));
    if (!walker.fail(wanted.cause, part, failing, { blame: BLAME })) continue;
    state.change(part, failing, [wanted.sets], wanted.sets === 'clean' ? ['dirty'] : []);
    // Nobody heats or cools what is told to be missing; that it still is so later must not be told on top.
    if (wanted.sets === 'hot' || wanted.sets === 'cold') state.change(part, failing, [], [wanted.sets]);
  }
  const blasted = where.and(state.lane(part).dirty);
  if (walker.fail('not-cleaned', part, blasted, { blame: ['cleaned'] })) state.change(part, blasted, [], ['dirty']);
  reportUndecided(walker, part, where);
}

/** A part of the family that is renewed on condition goes back, and nobody decided about it; or its size is open. */
function reportUndecided(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  const { disturbed, fresh, decided, chosen, scrapped } = state.lane(part);
  const facts = unit.part(part);
  if (facts?.renew?.value === 'on-condition') {
    const open = where.and(disturbed).minus(fresh).minus(decided);
    if (walker.fail('undecided', part, open, { blame: ['removed'] })) state.change(part, open, ['decided']);
  }
  if (facts?.sizes === undefined) return;
  const renewed = unit.isAlwaysRenewed(part) ? where : where.and(fresh.or(scrapped));
  const unsized = renewed.minus(chosen);
  if (walker.fail('size-not-chosen', part, unsized)) state.change(part, unsized, ['chosen']);
}
