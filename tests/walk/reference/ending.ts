import { assemblyParts, type Unit } from './unit';

/** What is wrong when the work is over. */
export function atTheEnd(unit: Unit): void {
  const ends = unit.facts.procedure.value.ends?.id ?? 'assembled';
  for (const id of unit.facts.partIds) {
    leftIn(unit, id, ends);
    leftOff(unit, id, ends);
    if (ends !== 'parts') leftLoose(unit, id);
    alignmentMissing(unit, id);
    setMixed(unit, id);
    if (ends === 'assembled' && unit.of(id).disturbed) fateOpen(unit, id);
  }
  for (const id of unit.open) unit.fail('adjustment-open', id);
  if (ends === 'assembled') unproved(unit);
  if (ends !== 'parts') voidLimits(unit);
}

function leftIn(unit: Unit, id: string, ends: string): void {
  if (!unit.isInPlace(id) || id === unit.facts.base) return;
  const isTemporary = unit.facts.part(id).temporary?.value === true;
  const isStray = isTemporary || (unit.isInUnit(id) && !unit.facts.belongsToFinished(id));
  if (unit.of(id).trial || (ends === 'assembled' && isStray)) unit.fail('left-in', id);
}

function leftOff(unit: Unit, id: string, ends: string): void {
  if (ends === 'parts' || unit.facts.part(id).temporary?.value === true) return;
  const isWanted = ends === 'assembled' || assemblyParts(unit.facts, ends).includes(id);
  if (!isWanted || !unit.facts.belongsToFinished(id)) return;
  if (unit.of(id).pieces < unit.facts.piecesOf(id)) unit.fail('left-off', id);
}

function leftLoose(unit: Unit, id: string): void {
  const { torque, angle, kind } = unit.facts.part(id);
  const { snug, released } = unit.of(id);
  if (!unit.isInPlace(id) || !unit.facts.belongsToFinished(id)) return;
  const isTightened = unit.facts.value(torque) !== undefined || unit.facts.value(angle) !== undefined;
  const isLoose = isTightened ? !unit.isTorqued(id) && !snug : kind?.value === 'retaining-ring' && released;
  if (isLoose) unit.fail('left-loose', id);
}

function alignmentMissing(unit: Unit, id: string): void {
  const { misaligned, partners } = unit.of(id);
  if (!misaligned || !unit.isInPlace(id) || !unit.facts.isUsedAgain(id)) return;
  const partner = [...partners].find((one) => unit.facts.isUsedAgain(one));
  if (partner !== undefined) unit.fail('alignment-missing', id, partner);
}

/** Parts of a set are renewed together, whichever of them names the other. */
function setMixed(unit: Unit, id: string): void {
  const { facts } = unit;
  const isNew = (part: string) => unit.of(part).fitted && unit.of(part).fresh;
  if (!unit.isInPlace(id) || !isNew(id)) return;
  for (const other of facts.partIds) {
    const isSet =
      facts.meant(facts.part(id).comesWith).includes(other) || facts.meant(facts.part(other).comesWith).includes(id);
    if (isSet && unit.isInPlace(other) && !isNew(other)) unit.fail('set-mixed', other, id);
  }
}

function fateOpen(unit: Unit, id: string): void {
  const { scrapped, returned, away } = unit.of(id);
  if (!unit.facts.comesWithUnit(id) || unit.facts.belongsToFinished(id) || unit.isInPlace(id)) return;
  if (!scrapped && !returned && !away) unit.fail('fate-open', id);
}

function unproved(unit: Unit): void {
  const { facts } = unit;
  const { balanceGroups = [], checks = [] } = facts.family.value;
  for (const { id, value } of balanceGroups) {
    const isNew = facts.meant(value.members).some((member) => {
      const state = unit.of(member);
      return state.fitted && unit.isInPlace(member) && (state.fresh || facts.isToldAsRenewed(member));
    });
    if (isNew && !unit.result(id.id).valid) unit.fail('balance-missing', id.id);
  }
  for (const { id, value } of checks) {
    const { valid, due } = unit.result(id.id);
    const isDue = due || (value.after ?? []).length === 0;
    if (facts.holds(value) && isDue && !valid) unit.fail('check-missing', id.id);
  }
}

function voidLimits(unit: Unit): void {
  const { facts } = unit;
  for (const { id, value } of facts.family.value.limits ?? []) {
    const { done, valid } = unit.result(id.id);
    if (facts.holds(value) && done && !valid) unit.fail('result-void', id.id);
  }
}
