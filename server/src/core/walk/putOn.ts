import type { BuildSet } from '../builds';
import { locked } from './adjusting';
import type { Cause } from './failure';
import { type LaneKey, laneWith, withMore } from './lane';
import type { Act, Walker } from './walker';

export interface Fitting {
  readonly count: number | undefined;
  readonly trial: boolean;
}

/** Fits a part: it must be off, what carries it there, and nothing in its way. */
export function install(walker: Walker, part: string, act: Act, fitting: Fitting): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const lane = state.lane(part);
  const already = where.and(lane.fitted);
  walker.fail('fitted-already', part, already, { at: act.at, because: walker.lastTime(part, ['fitted'], already) });
  const off = where.minus(already);
  state.change(part, already, [], ['spent']);
  reportCarrier(walker, part, off, act);
  reportInTheWay(walker, part, off, act);
  if (!fitting.trial) reportPreparation(walker, part, off, act);
  reportUsedSeals(walker, part, off, act);
  const more = withMore(lane, off, fitting.count ?? unit.pieces(part), unit.pieces(part));
  const clamp = unit.part(part)?.kind?.value === 'clamp' || unit.isRing(part);
  state.put(part, laneWith(more, off, clamp ? ['released'] : [], ['torqued', 'scrapped', 'away', 'spent']));
  if (!unit.hasTorque(part)) locked(walker, part, act);
  walker.touched(part, where);
  walker.happened('fitted', part, act);
}

/** A part that was sent out, or a carrier that was, cannot be fitted; what lies on the bench can. */
function reportCarrier(walker: Walker, part: string, where: BuildSet, act: Act): void {
  for (const carrier of [part, ...walker.unit.carriers(part)]) {
    const lane = walker.state.lane(carrier);
    const gone = where.and(lane.away);
    walker.fail('carrier-missing', part, gone, {
      at: act.at,
      other: carrier,
      because: walker.lastTime(carrier, ['removed'], gone),
    });
  }
}

/** What was fitted too early: a fastener of the part, or something that the part, or what rides on it, is behind. */
function reportInTheWay(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  for (const fastener of unit.fasteners(part)) {
    if (state.ridesOn(fastener, part)) continue;
    const lane = state.lane(fastener);
    const holding = unit.freesLoose(fastener, part) ? lane.partly.minus(lane.released) : lane.partly;
    report(walker, part, fastener, where.and(holding).and(unit.everPresent(fastener)), act);
  }
  const onCarrier = where.and(carriedInUnit(walker, part));
  for (const moved of [part, ...ridersInPlace(walker, part, where)]) {
    for (const cover of unit.behind(moved)) {
      if (state.ridesOn(moved, cover) || cover === part) continue;
      const riding = state.ridesOn(cover, part) ? state.lane(cover).partly : unit.space.nothing;
      const blocked = onCarrier.and(state.inUnit(cover)).or(where.and(riding));
      report(walker, part, cover, blocked.and(unit.everPresent(moved)), act);
    }
  }
}

function report(walker: Walker, part: string, other: string, where: BuildSet, act: Act): void {
  const because = walker.lastTime(other, ['fitted', 'tightened'], where);
  walker.fail('in-the-way', part, where, { at: act.at, other, because });
}

/** Where the part goes into the unit, and not onto a sub-assembly on the bench. */
function carriedInUnit(walker: Walker, part: string): BuildSet {
  const { state, unit } = walker;
  const carriers = unit.carriers(part);
  return carriers.length === 0 ? unit.space.everything : unit.space.union(carriers.map((one) => state.inUnit(one)));
}

/** What is fitted to the part already and goes in with it. */
function ridersInPlace(walker: Walker, part: string, where: BuildSet): string[] {
  const { state, unit } = walker;
  const found: string[] = [];
  const visit = (carrier: string): void => {
    for (const rider of unit.riders(carrier)) {
      if (found.includes(rider) || !state.lane(rider).partly.overlaps(where)) continue;
      // What sits on the base as well is in the unit by itself and does not move with the part.
      if (unit.carriers(rider).length > 1 && rider !== part) continue;
      found.push(rider);
      visit(rider);
    }
  };
  visit(part);
  return found;
}

const PREPARATION: Readonly<
  Record<string, { readonly key: LaneKey; readonly cause: Cause; readonly newIsEnough: boolean }>
> = {
  clean: { key: 'clean', cause: 'not-cleaned', newIsEnough: true },
  inspect: { key: 'inspected', cause: 'not-inspected', newIsEnough: true },
  lubricate: { key: 'lubricated', cause: 'not-lubricated', newIsEnough: false },
  threadlock: { key: 'threadlocked', cause: 'not-threadlocked', newIsEnough: false },
};

/** What had to be done to the part since it came off, or since it came out of its bag. */
function reportPreparation(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const lane = walker.state.lane(part);
  for (const { value } of walker.unit.part(part)?.beforeFitting ?? []) {
    const wanted = value === undefined ? undefined : PREPARATION[value];
    if (wanted === undefined) continue;
    const met = wanted.newIsEnough ? lane[wanted.key].or(lane.fresh) : lane[wanted.key];
    const failing = where.minus(met);
    walker.fail(wanted.cause, part, failing, {
      at: act.at,
      because: walker.lastTime(part, ['removed', 'cleaned'], failing),
    });
  }
}

/** A joint that was opened is closed over the seal that was in it. */
function reportUsedSeals(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  for (const seal of unit.sealsOf(part)) {
    const lane = state.lane(seal);
    const used = where.and(lane.spent).and(lane.partly);
    if (
      walker.fail('seal-used-again', seal, used, {
        at: act.at,
        other: part,
        because: walker.lastTime(part, ['removed'], used),
      })
    ) {
      state.change(seal, used, [], ['spent']);
    }
  }
}
