import { conditionOf } from '../analysis/familyView';
import { reportOpen } from './adjusting';
import { reportMisaligned, reportUnbalanced } from './positions';
import type { Walker } from './walker';

/** What must be true when the work is over. */
export function atTheEnd(walker: Walker): void {
  const { unit } = walker;
  const ends = unit.procedure.value.ends?.id ?? 'assembled';
  for (const id of unit.ids) {
    leftIn(walker, id);
    if (ends === 'assembled') leftOff(walker, id);
    leftLoose(walker, id);
    reportMisaligned(walker, id);
  }
  reportOpen(walker);
  if (ends !== 'assembled') return;
  reportUnbalanced(walker);
  results(walker);
}

function leftIn(walker: Walker, id: string): void {
  if (walker.unit.part(id)?.temporary?.value !== true) return;
  const where = walker.state.lane(id).partly;
  walker.fail('left-in', id, where, { because: walker.lastTime(id, ['fitted'], where) });
}

function leftOff(walker: Walker, id: string): void {
  if (walker.unit.part(id)?.temporary?.value === true) return;
  const missing = walker.unit.presence(id, 'finished').minus(walker.state.lane(id).fitted);
  walker.fail('left-off', id, missing, { because: walker.lastTime(id, ['removed', 'fitted'], missing) });
}

/** A fastener with a torque that has not got it, or a ring or clamp that was released and never seated. */
function leftLoose(walker: Walker, id: string): void {
  const { unit, state } = walker;
  const lane = state.lane(id);
  const needs = unit.hasTorque(id)
    ? lane.partly.minus(lane.torqued)
    : unit.isRing(id)
      ? lane.partly.and(lane.released)
      : unit.space.nothing;
  const there = needs.and(unit.presence(id, 'finished'));
  walker.fail('left-loose', id, there, { because: walker.lastTime(id, ['fitted', 'loosened', 'tightened'], there) });
}

/** Results that were made worthless after the last time, and checks that were never made. */
function results(walker: Walker): void {
  const { unit, state } = walker;
  const { checks = [], limits = [] } = unit.family.value;
  for (const { id, value } of limits) {
    const ever = state.done.get(id.id) ?? unit.space.nothing;
    const lost = ever.minus(state.valid.get(id.id) ?? unit.space.nothing).and(unit.space.set(conditionOf(value)));
    walker.fail('result-void', id.id, lost, { because: walker.lastTime(id.id, ['measured'], lost) });
  }
  for (const { id, value } of checks) {
    const wanted = unit.space.set(conditionOf(value));
    const missing = wanted.minus(state.valid.get(id.id) ?? unit.space.nothing);
    walker.fail('check-missing', id.id, missing, { because: walker.lastTime(id.id, ['measured'], missing) });
  }
}
