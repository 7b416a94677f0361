import type { BuildSet } from '../builds';
import type { TightenInstruction } from '../model/generated/types';
import { locked } from './adjusting';
import { notFinal } from './finalTorque';
import { reportNotFitted, reportReach } from './reach';
import { type Pieces, type Tally, withMore } from './tally';
import { reportUnknownHand } from './threadHand';
import type { Act, Walker } from './walker';

/** Tightens a fastener; it is torqued once the final torque is reached. */
export function tighten(walker: Walker, part: string, instruction: TightenInstruction, act: Act): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const there = asIfThere(walker, part, where);
  reportReach(walker, part, there);
  reportNothingHeld(walker, part, there);
  reportUnknownHand(walker, part, where);
  reportUsed(walker, part, where);
  reportHot(walker, part, where);
  reportBond(walker, part, where);
  reportPlus(walker, part, instruction, act);
  const { pass, contradicts } = notFinal(unit, instruction, part, where);
  const final = where.minus(pass).minus(contradicts);
  state.change(part, where, [], ['released', 'spent', 'snug']);
  state.change(part, contradicts, ['snug']);
  const { tight, threadlocked, pieces } = state.lane(part);
  state.count(part, { tight: withMore(tight, final, instruction.count?.value, inPlace(pieces)) });
  state.change(part, where.and(threadlocked), ['curing']);
  locked(walker, part, act);
  walker.touched(part, where);
  walker.happened('tightened', part, where);
}

/** Seats a ring; it holds from then on. */
export function seat(walker: Walker, part: string, act: Act): void {
  const { state } = walker;
  const where = walker.meant(part, act);
  const there = asIfThere(walker, part, where);
  reportNothingHeld(walker, part, there);
  state.change(part, where, [], ['released']);
  const { tight, pieces } = state.lane(part);
  state.count(part, { tight: withMore(tight, where, undefined, inPlace(pieces)) });
  walker.touched(part, where);
  walker.happened('seated', part, where);
}

/** No more pieces get tight than are in place. */
function inPlace(pieces: Tally): Pieces {
  return [...pieces].map(([number, where]) => ({ number, where }));
}

/** Tells that the fastener is not there. Then it counts as there, so that it is told once. Gives back where it is. */
function asIfThere(walker: Walker, part: string, where: BuildSet): BuildSet {
  const there = reportNotFitted(walker, part, where);
  asIfFitted(walker, part, where.minus(there));
  return there;
}

function asIfFitted({ state, unit }: Walker, part: string, where: BuildSet): void {
  if (where.isEmpty) return;
  const { pieces, tight } = state.lane(part);
  const whole = unit.pieces(part);
  state.count(part, {
    pieces: withMore(pieces, where, undefined, whole),
    tight: withMore(tight, where, undefined, whole),
  });
  state.change(part, where, ['decided', 'supposed'], ['released', 'scrapped', 'misaligned']);
}

/** What the fastener holds must be there, in every build that has it. */
function reportNothingHeld(walker: Walker, fastener: string, where: BuildSet): void {
  const { state, unit } = walker;
  for (const held of unit.relations.heldBy(fastener)) {
    // A nut on the shaft that it fastens is on it wherever the shaft lies.
    if (unit.relations.ridesOn(fastener, held)) continue;
    const missing = where.and(unit.presence(held, 'finished')).minus(state.lane(held).partly);
    if (walker.fail('nothing-held', fastener, missing, { other: held, blame: ['removed'] }))
      asIfFitted(walker, held, missing);
  }
}

function reportUsed(walker: Walker, part: string, where: BuildSet): void {
  const again = where.and(walker.state.lane(part).spent);
  walker.fail('used-again', part, again, { blame: ['loosened'] });
}

function reportHot(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  for (const one of [part, ...unit.relations.heldBy(part)]) {
    const hot = where.and(state.lane(one).hot);
    if (walker.fail('hot-while-tightened', part, hot, { other: one, blame: ['heated'] }))
      state.change(one, hot, [], ['hot']);
  }
}

/** A fastener that was loosened in place has broken its threadlocker; turning it back does not mend that. */
function reportBond(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  if (unit.part(part)?.beforeFitting?.some(({ value }) => value === 'threadlock') !== true) return;
  const { unbonded, spent } = state.lane(part);
  // A single-use fastener that is tightened again is told as such, whatever is on its thread.
  const broken = where.and(unbonded).minus(spent);
  walker.fail('not-threadlocked', part, broken, { blame: ['loosened'] });
  state.change(part, where, [], ['unbonded']);
}

function reportPlus(walker: Walker, part: string, { plus }: TightenInstruction, act: Act): void {
  if (plus === undefined) return;
  const missing = walker.meant(part, act).minus(walker.state.where('done', plus.id));
  if (walker.fail('not-measured', part, missing, { other: plus.id })) walker.state.note('done', plus.id, missing);
}
