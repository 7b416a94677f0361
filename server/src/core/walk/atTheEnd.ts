import { conditionOf } from '../analysis/familyView';
import type { BuildSet } from '../builds';
import { reportOpen } from './adjusting';
import { fittedNew, reportUnbalanced } from './balancing';
import { reportMisaligned } from './positions';
import { assemblyOf } from './start';
import type { Walker } from './walker';

/** What must be true when the work is over, on the ways that come to the end. */
export function atTheEnd(walker: Walker, alive: BuildSet): void {
  const { unit } = walker;
  const ends = unit.procedure.value.ends?.id ?? 'assembled';
  const members = assemblyOf(unit, ends);
  for (const id of unit.ids) {
    leftIn(walker, id, alive, ends === 'assembled');
    if (ends === 'assembled' || members?.has(id) === true) leftOff(walker, id, alive);
    if (ends !== 'parts') leftLoose(walker, id, alive);
    reportMisaligned(walker, id, alive);
    if (ends === 'assembled') fateOpen(walker, id, alive);
    setMixed(walker, id, alive);
  }
  reportOpen(walker, alive);
  if (ends !== 'parts') voidResults(walker, alive);
  if (ends !== 'assembled') return;
  reportUnbalanced(walker, alive);
  missingChecks(walker, alive);
}

/** A blank that belongs to no finished unit, a part that another one takes the place of, or a trial fit. */
function leftIn(walker: Walker, id: string, alive: BuildSet, whole: boolean): void {
  const { unit, state } = walker;
  const { partly, trial } = state.lane(id);
  if (partly.isEmpty) return;
  const foreign = unit.isTemporary(id) ? partly : state.inUnit(id).minus(unit.presence(id, 'finished'));
  const where = (whole ? foreign : unit.space.nothing).or(trial.and(partly)).and(alive);
  walker.fail('left-in', id, where, { blame: ['fitted'] });
}

function leftOff(walker: Walker, id: string, alive: BuildSet): void {
  if (walker.unit.isTemporary(id)) return;
  const missing = walker.unit.presence(id, 'finished').minus(walker.state.lane(id).fitted).and(alive);
  walker.fail('left-off', id, missing, { blame: ['removed', 'fitted', 'sent'] });
}

/** A fastener with a torque that has not got it, or a ring that was released and never seated. */
function leftLoose(walker: Walker, id: string, alive: BuildSet): void {
  const { unit, state } = walker;
  const { partly, torqued, released, snug } = state.lane(id);
  const loose = unit.hasTorque(id)
    ? partly.minus(torqued).minus(snug)
    : unit.isRing(id)
      ? partly.and(released)
      : unit.space.nothing;
  const there = loose.and(unit.presence(id, 'finished')).and(alive);
  walker.fail('left-loose', id, there, { blame: ['fitted', 'loosened', 'tightened'] });
}

/** A part that the unit came with and leaves without, and nobody says what becomes of it. */
function fateOpen(walker: Walker, id: string, alive: BuildSet): void {
  const { unit, state } = walker;
  if (unit.isTemporary(id)) return;
  const leaves = unit.presence(id, 'received').minus(unit.presence(id, 'finished')).and(alive);
  if (leaves.isEmpty) return;
  const { partly, scrapped, returned, away, disturbed } = state.lane(id);
  const open = leaves.and(disturbed).minus(partly).minus(scrapped).minus(returned).minus(away);
  walker.fail('fate-open', id, open, { blame: ['removed'] });
}

/** Parts that are renewed as a set: a new one is in place beside one that was in use. */
function setMixed(walker: Walker, id: string, alive: BuildSet): void {
  const { unit } = walker;
  const renewed = fittedNew(walker, id).and(alive);
  if (renewed.isEmpty) return;
  for (const other of unit.relations.setOf(id)) {
    const old = walker.state.lane(other).partly.minus(fittedNew(walker, other));
    walker.fail('set-mixed', other, renewed.and(old), { other: id, blame: ['fitted'] });
  }
}

/** Results that were made worthless after the last time. */
function voidResults(walker: Walker, alive: BuildSet): void {
  const { unit, state } = walker;
  const { limits = [] } = unit.family.value;
  for (const { id, value } of limits) {
    const lost = state.where('done', id.id).minus(state.where('valid', id.id)).and(alive);
    walker.fail('result-void', id.id, lost.and(unit.space.set(conditionOf(value))), { blame: ['measured'] });
  }
}

function missingChecks(walker: Walker, alive: BuildSet): void {
  const { unit, state } = walker;
  const { checks = [] } = unit.family.value;
  for (const { id, value } of checks) {
    // A check that says behind what it comes is due only where that was touched.
    const due = (value.after ?? []).length === 0 ? alive : alive.and(state.where('due', id.id));
    const wanted = unit.space.set(conditionOf(value)).and(due);
    walker.fail('check-missing', id.id, wanted.minus(state.where('valid', id.id)), { blame: ['measured'] });
  }
}
