import type { BuildSet } from '../builds';
import { locked } from './adjusting';
import { reportPreparation } from './preparation';
import { holding } from './takeOff';
import { withMore } from './tally';
import type { Act, Walker } from './walker';

export interface Fitting {
  readonly count: number | undefined;
  readonly trial: boolean;
}

/** Fits a part: it must be off, what carries it there, and nothing in its way. */
export function install(walker: Walker, part: string, act: Act, fitting: Fitting): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  // Everything else sits on the base, so putting it on its stand is no second fitting.
  const { fitted, supposed } = state.lane(part);
  const already = part === unit.base ? unit.space.nothing : where.and(fitted).minus(supposed);
  walker.fail('fitted-already', part, already, { blame: ['fitted'] });
  const off = where.minus(already);
  reportCarrier(walker, part, off);
  reportInTheWay(walker, part, off);
  if (!fitting.trial) reportPreparation(walker, part, off);
  reportUsedSeals(walker, part, off);
  const { pieces } = state.lane(part);
  state.count(part, { pieces: withMore(pieces, off, fitting.count, unit.pieces(part)) });
  state.change(
    part,
    where,
    ['handled'],
    ['snug', 'spent', 'scrapped', 'away', 'returned', 'trial', 'released', 'supposed'],
  );
  if (unit.isClamp(part) || unit.isRing(part)) state.change(part, off, ['released']);
  if (fitting.trial) state.change(part, off, ['trial']);
  if (!unit.hasTorque(part)) locked(walker, part, act);
  walker.touched(part, where);
  walker.happened('fitted', part, where);
}

/** A part that was sent out or given back, or a carrier that was, cannot be fitted; what lies on the bench can. */
function reportCarrier(walker: Walker, part: string, where: BuildSet): void {
  for (const one of [part, ...walker.unit.relations.carriers(part)]) {
    const { away, returned } = walker.state.lane(one);
    const gone = where.and(away.or(returned)).and(walker.unit.everPresent(one));
    walker.fail('carrier-missing', part, gone, { other: one, blame: ['sent', 'removed'] });
  }
}

/** What was fitted too early: a fastener of the part, or something that the part, or what rides on it, is behind. */
function reportInTheWay(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  const { relations } = unit;
  for (const fastener of relations.fasteners(part)) {
    if (!relations.ridesOn(fastener, part)) report(walker, part, fastener, where.and(holding(walker, fastener, part)));
  }
  let onCarrier: BuildSet | undefined;
  for (const moved of [part, ...ridersInPlace(walker, part, where)]) {
    const moves = moved === part ? where : where.and(state.lane(moved).partly);
    for (const cover of relations.behind(moved)) {
      if (relations.ridesOn(moved, cover) || cover === part) continue;
      // What is made up on the bench goes in as one; only the part itself may not be behind what it carries already.
      const rides = moved === part && relations.ridesOn(cover, part);
      const riding = rides ? state.lane(cover).partly : unit.space.nothing;
      onCarrier ??= where.and(state.carried(part));
      report(walker, part, cover, moves.and(onCarrier.and(state.inUnit(cover)).or(riding)));
    }
  }
}

function report(walker: Walker, part: string, other: string, where: BuildSet): void {
  walker.fail('in-the-way', part, where, { other, blame: ['fitted', 'tightened', 'seated'] });
}

/** What is fitted to the part already and goes in with it; what sits on something else as well stays where it is. */
function ridersInPlace({ state, unit }: Walker, part: string, where: BuildSet): string[] {
  const found: string[] = [];
  const visit = (carrier: string): void => {
    for (const rider of unit.relations.riders(carrier)) {
      if (rider === part || found.includes(rider) || !state.lane(rider).partly.overlaps(where)) continue;
      if ((unit.part(rider)?.sitsOn?.length ?? 0) > 1) continue;
      found.push(rider);
      visit(rider);
    }
  };
  visit(part);
  return found;
}

/** A joint that was opened is closed over the seal that was in it. */
function reportUsedSeals(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  for (const seal of unit.relations.sealsOf(part)) {
    const { spent, partly } = state.lane(seal);
    const used = where.and(spent).and(partly);
    const details = { other: part, blame: ['removed'] as const };
    if (walker.fail('seal-used-again', seal, used, details)) state.change(seal, used, [], ['spent']);
  }
}
