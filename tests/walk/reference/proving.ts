import type {
  BalanceInstruction,
  MeasureInstruction,
  WaitInstruction,
} from '../../../server/src/core/model/generated/types';
import type { QuantityValue, SignedTerm } from '../../../server/src/core/model/values';
import { boundsOf } from '../../../server/src/core/quantity/bounds';
import type { Unit } from './unit';

export function measure(unit: Unit, { measure: what, accept }: MeasureInstruction): void {
  if (what === undefined) return;
  const recordOnly = unit.facts.value(accept)?.word === 'record-only';
  made(unit, what.id, !recordOnly);
}

/** A result was got; one that is only written down proves nothing. */
export function made(unit: Unit, id: string, proves = true): void {
  const result = unit.result(id);
  result.taken = true;
  if (!proves) return;
  result.done = true;
  result.valid = true;
}

/** What stands in a sum was read before. */
export function needsReadings(unit: Unit, about: string, sum: readonly SignedTerm[] | undefined): void {
  for (const { term } of sum ?? []) {
    if (!('kind' in term) || !isReadingOrLimit(unit, term.id)) continue;
    if (!unit.result(term.id).taken) unit.fail('not-measured', about, term.id);
  }
}

function isReadingOrLimit({ facts }: Unit, id: string): boolean {
  const { limits = [], readings = [] } = facts.family.value;
  return [...limits, ...readings, ...(facts.procedure.value.readings ?? [])].some((entry) => entry.id.id === id);
}

export function balance(unit: Unit, { balance: group }: BalanceInstruction): void {
  if (group === undefined) return;
  const { facts } = unit;
  const entry = facts.family.value.balanceGroups?.find(({ id }) => id.id === group.id);
  const members = facts.meant(entry?.value.members).filter((member) => unit.isInPlace(member));
  const fasteners = new Set(members.flatMap((member) => facts.fastenersOf(member)));
  for (const fastener of fasteners) {
    if (!unit.isInPlace(fastener)) continue;
    if (!unit.isTorqued(fastener)) unit.fail('spun-loose', group.id, fastener);
    if (unit.of(fastener).curing) unit.fail('spun-uncured', group.id, fastener);
  }
  made(unit, group.id);
}

/** Time passes: what was hot or cold is so no more, and threadlocker sets where it was long enough. */
export function wait(unit: Unit, { wait: time, of }: WaitInstruction): void {
  for (const state of unit.parts.values()) {
    state.hot = false;
    state.cold = false;
    if (time?.word === 'cure' || (time !== undefined && lowest(time) >= longestCure(unit, of))) state.curing = false;
  }
}

function longestCure(unit: Unit, of: WaitInstruction['of']): number {
  const { procedure } = unit.facts;
  const listed = of ?? procedure.value.consumables;
  const ids = listed === undefined ? [...procedure.consumables.keys()] : listed.map(({ id }) => id);
  const cures = ids.flatMap((id) => {
    const value = procedure.consumables.get(id)?.entry.value;
    return value?.kind?.value === 'threadlocker' && value.cure !== undefined ? [lowest(value.cure)] : [];
  });
  return cures.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...cures);
}

function lowest(value: QuantityValue): number {
  const { quantity } = value.reading;
  return quantity === undefined ? Number.NaN : boundsOf(quantity).nominal;
}
