import type { BuildSet } from '../builds';
import { locked } from './adjusting';
import { laneWith, withMore } from './lane';
import { reportUnknownHand } from './threadHand';
import type { Act, Walker } from './walker';

/** Tightens a fastener; with several passes, the instruction ends with the final one. */
export function tighten(walker: Walker, part: string, act: Act): void {
  const { state } = walker;
  const where = walker.meant(part, act);
  const lane = state.lane(part);
  const missing = where.minus(lane.partly);
  if (walker.fail('not-fitted', part, missing, { at: act.at, because: walker.lastTime(part, ['removed'], missing) }))
    asIfFitted(walker, part, missing);
  reportNothingHeld(walker, part, where.minus(missing), act);
  reportUnknownHand(walker, part, where, act);
  const again = where.and(lane.spent);
  walker.fail('used-again', part, again, { at: act.at, because: walker.lastTime(part, ['loosened'], again) });
  reportHot(walker, part, where, act);
  state.change(part, where, ['torqued'], ['released', 'spent']);
  locked(walker, part, act);
  walker.touched(part, where);
  walker.happened('tightened', part, act);
}

/** Seats a ring; it holds from then on. */
export function seat(walker: Walker, part: string, act: Act): void {
  const { state } = walker;
  const where = walker.meant(part, act);
  const missing = where.minus(state.lane(part).partly);
  if (walker.fail('not-fitted', part, missing, { at: act.at, because: walker.lastTime(part, ['removed'], missing) }))
    asIfFitted(walker, part, missing);
  reportNothingHeld(walker, part, where.minus(missing), act);
  state.change(part, where, ['torqued'], ['released']);
  walker.touched(part, where);
  walker.happened('tightened', part, act);
}

/** Once it is told that something is not there, it counts as there, so that it is told once. */
function asIfFitted(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  const whole = unit.pieces(part);
  state.put(
    part,
    laneWith(
      withMore(state.lane(part), where, whole, whole),
      where,
      ['torqued'],
      ['released', 'scrapped', 'misaligned'],
    ),
  );
}

/** What the fastener holds must be there, in every build that has it. */
function reportNothingHeld(walker: Walker, fastener: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  for (const held of unit.heldBy(fastener)) {
    const expected = where.and(unit.presence(held, 'finished'));
    const missing = expected.minus(state.lane(held).partly);
    if (
      walker.fail('nothing-held', fastener, missing, {
        at: act.at,
        other: held,
        because: walker.lastTime(held, ['removed'], missing),
      })
    )
      asIfFitted(walker, held, missing);
  }
}

function reportHot(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  for (const one of [part, ...unit.heldBy(part)]) {
    const hot: BuildSet = where.and(state.lane(one).hot);
    if (
      walker.fail('hot-while-tightened', part, hot, {
        at: act.at,
        other: one,
        because: walker.lastTime(one, ['heated'], hot),
      })
    ) {
      state.change(one, hot, [], ['hot']);
    }
  }
}
