import type { TightenInstruction } from '../../../server/src/core/model/generated/types';
import { boundsOf } from '../../../server/src/core/quantity/bounds';
import { needsHand, touch } from './touching';
import type { Unit } from './unit';

export function seat(unit: Unit, id: string): void {
  if (!unit.isInPlace(id)) unit.fail('not-fitted', id);
  needsWhatItHolds(unit, id);
  const state = unit.of(id);
  state.tight = state.pieces;
  state.released = false;
  touch(unit, id);
}

function needsWhatItHolds(unit: Unit, id: string): void {
  for (const held of unit.facts.fastenedBy(id)) {
    if (unit.facts.ridesOn(id, held)) continue;
    if (unit.facts.belongsToFinished(held) && !unit.isInPlace(held)) unit.fail('nothing-held', id, held);
  }
}

export function tighten(unit: Unit, id: string, instruction: TightenInstruction): void {
  const { facts } = unit;
  const state = unit.of(id);
  if (!unit.isInPlace(id)) unit.fail('not-fitted', id);
  unit.needsReach(id);
  needsWhatItHolds(unit, id);
  needsHand(unit, id);
  if (state.spent) unit.fail('used-again', id);
  for (const hot of [id, ...facts.fastenedBy(id)]) if (unit.of(hot).hot) unit.fail('hot-while-tightened', id, hot);
  const wantsThreadlocker = facts.part(id).beforeFitting?.some(({ value }) => value === 'threadlock');
  if (wantsThreadlocker && state.threadlockBroken) unit.fail('not-threadlocked', id);
  const { plus } = instruction;
  if (plus !== undefined && !unit.result(plus.id).taken) unit.fail('not-measured', id, plus.id);
  state.released = false;
  state.spent = false;
  const isFinal = isFinalPass(unit, id, instruction);
  const count = instruction.count?.value;
  // What was tight stays so under a lower torque: the wrench clicks before anything turns.
  if (isFinal) state.tight = count === undefined ? state.pieces : Math.min(state.pieces, state.tight + count);
  // Passes that stop short leave it loose; a torque that is too low is told where it is written.
  state.snug = !isFinal && instruction.passes === undefined;
  if (state.threadlocked) state.curing = true;
  for (const adjuster of facts.lockedBy(id)) unit.open.delete(adjuster);
  touch(unit, id);
}

/** Whether the fastener has what the family states afterwards, as far as a tightening can be told from a first pass. */
function isFinalPass(unit: Unit, id: string, { torque, angle, passes }: TightenInstruction): boolean {
  const { facts } = unit;
  const own = passes?.at(-1) ?? facts.value(torque);
  if (own === undefined) return true;
  const { torque: familyTorque, angle: familyAngle } = facts.part(id);
  const statement = own.reading.quantity;
  const wanted = facts.value(familyTorque)?.reading.quantity;
  if (statement !== undefined && wanted !== undefined && boundsOf(statement).highest < boundsOf(wanted).lowest) {
    return false;
  }
  const hasAngle = facts.value(angle) !== undefined || statement?.form === 'torque-angle';
  return facts.value(familyAngle) === undefined || hasAngle;
}
