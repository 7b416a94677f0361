import { touch } from './touching';
import type { Unit } from './unit';

export interface Fitting {
  readonly count: number | undefined;
  readonly trial: boolean;
}

export function install(unit: Unit, id: string, { count, trial }: Fitting): void {
  const state = unit.of(id);
  const all = unit.facts.piecesOf(id);
  if (state.pieces >= all && id !== unit.facts.base) unit.fail('fitted-already', id);
  needsCarrier(unit, id);
  needsFreeWay(unit, id);
  if (!trial) needsPreparation(unit, id);
  state.pieces = count === undefined ? all : Math.min(all, state.pieces + count);
  state.snug = false;
  state.spent = false;
  state.scrapped = false;
  state.away = false;
  state.trial = trial;
  state.fitted = true;
  if (unit.facts.isRingOrClamp(id)) state.released = true;
  if (unit.facts.value(unit.facts.part(id).torque) === undefined) {
    for (const adjuster of unit.facts.lockedBy(id)) unit.open.delete(adjuster);
  }
  touch(unit, id);
}

function needsCarrier(unit: Unit, id: string): void {
  const { away, returned } = unit.of(id);
  if (away || returned) unit.fail('carrier-missing', id);
  for (const carrier of unit.facts.carriersOf(id)) {
    if (unit.of(carrier).away) unit.fail('carrier-missing', id, carrier);
  }
}

function needsFreeWay(unit: Unit, id: string): void {
  const { facts } = unit;
  for (const fastener of facts.fastenersOf(id)) {
    if (unit.holdsFast(fastener, id) && !facts.ridesOn(fastener, id)) unit.fail('in-the-way', id, fastener);
  }
  const goesIntoUnit = facts.carriersOf(id).some((carrier) => unit.isInUnit(carrier)) || facts.needsNoCarrier(id);
  for (const moved of [id, ...ridersOf(unit, id)]) {
    for (const cover of facts.coversOf(moved)) {
      if (facts.ridesOn(moved, cover)) continue;
      const isInUnit = goesIntoUnit && unit.isInUnit(cover);
      const ridesAlong = moved === id && facts.ridesOn(cover, id) && unit.isInPlace(cover);
      if (isInUnit || ridesAlong) unit.fail('in-the-way', id, cover);
    }
  }
}

/** What is in place on a part and on nothing else, so that it moves with it. */
function ridersOf(unit: Unit, id: string, seen: readonly string[] = []): string[] {
  const { facts } = unit;
  const riders = facts.partIds.filter((rider) => {
    const carriers = facts.carriersOf(rider);
    return unit.isInPlace(rider) && carriers.length === 1 && carriers[0] === id && !seen.includes(rider);
  });
  return riders.flatMap((rider) => [rider, ...ridersOf(unit, rider, [...seen, ...riders])]);
}

function needsPreparation(unit: Unit, id: string): void {
  const { facts } = unit;
  const part = facts.part(id);
  const state = unit.of(id);
  const asked = new Set((part.beforeFitting ?? []).map(({ value }) => value));
  const isNew = state.fresh;
  if (state.dirty || (asked.has('clean') && !state.clean && !isNew)) unit.fail('not-cleaned', id);
  if (asked.has('inspect') && !state.inspected && !isNew) unit.fail('not-inspected', id);
  if (asked.has('lubricate') && !state.lubricated) unit.fail('not-lubricated', id);
  if (asked.has('threadlock') && !state.threadlocked) unit.fail('not-threadlocked', id);
  if (asked.has('heat') && !state.hot) unit.fail('not-heated', id);
  if (asked.has('cool') && !state.cold) unit.fail('not-cooled', id);
  if (asked.has('mark') && !state.marked) unit.fail('mark-missing', id);
  const isRenewed = part.renew?.value === 'always' || facts.isToldAsRenewed(id) || isNew;
  if (part.sizes !== undefined && isRenewed && !state.chosen) unit.fail('size-not-chosen', id);
  if (part.renew?.value === 'on-condition' && state.disturbed && !isNew && !state.decided) unit.fail('undecided', id);
  for (const seal of facts.sealsOf(id)) {
    if (unit.isInPlace(seal) && unit.of(seal).spent) unit.fail('seal-used-again', seal, id);
  }
}
