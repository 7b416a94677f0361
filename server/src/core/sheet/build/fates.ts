import type { BuildSet } from '../../builds';
import type { Lane } from '../../walk/lane';
import type { FateGroup, FateKind, FateLine } from '../sheet';
import type { BuildContext } from './buildContext';
import { type Change, lastMaking, placesOf } from './changes';
import { oneNumber } from './pieceCounts';
import type { WalkedWork } from './walkedWork';

/** In the order in which a bench is cleared: what is in the unit, then what is not. */
const ORDER: readonly FateKind[] = ['used', 'bench', 'renewed', 'new', 'returned', 'sent', 'discarded', 'off'];

/** What becomes of every part that the work takes off or fits. Blanks and pins are counted elsewhere. */
export function fatesOf(work: WalkedWork | undefined, context: BuildContext): FateGroup[] {
  if (work === undefined) return [];
  const parts = work.unit.ids.filter((part) => !work.unit.isTemporary(part));
  const all = parts.flatMap((part) => fatesOfPart(part, work, context));
  return ORDER.flatMap((kind) => {
    const lines = all.flatMap((one) => (one.kind === kind ? [one.line] : []));
    return lines.length === 0 ? [] : [{ kind, lines }];
  });
}

function fatesOfPart(part: string, work: WalkedWork, context: BuildContext): { kind: FateKind; line: FateLine }[] {
  const lane = work.end.get(part);
  if (lane === undefined) return [];
  const where = touchedIn(part, lane, work);
  if (where.isEmpty) return [];
  return [...kindsOf(part, lane, where, work)].flatMap(([kind, set]) =>
    set.isEmpty ? [] : [{ kind, line: lineOf(part, kind, set, work, context) }],
  );
}

/** The parts that the bench uses again or renews, and where that is open. */
export function benchParts(work: WalkedWork | undefined): { part: string; where: BuildSet }[] {
  if (work === undefined) return [];
  return work.unit.ids.flatMap((part) => {
    const lane = work.end.get(part);
    const where = lane === undefined ? undefined : touchedIn(part, lane, work);
    if (lane === undefined || where === undefined || work.unit.isTemporary(part)) return [];
    const open = kindsOf(part, lane, where, work).get('bench');
    return open === undefined || open.isEmpty ? [] : [{ part, where: open }];
  });
}

function touchedIn(part: string, lane: Lane, { unit, known }: WalkedWork): BuildSet {
  const touched = lane.disturbed.or(lane.handled).or(lane.scrapped).or(lane.returned).or(lane.away);
  return touched.and(known).and(unit.everPresent(part));
}

/** Where each fate holds. */
function kindsOf(part: string, lane: Lane, where: BuildSet, { unit }: WalkedWork): Map<FateKind, BuildSet> {
  const { partly, fresh, returned, away, scrapped } = lane;
  const received = unit.presence(part, 'received');
  const back = where.and(partly).and(received);
  const renewed = back.and(fresh);
  const onBench = !renewed.isEmpty && renewed.equals(back.and(unit.renewed(part))) && renewed.key !== back.key;
  const off = where.minus(partly);
  const gone = off.and(returned.or(away));
  return new Map([
    ['used', onBench ? unit.space.nothing : back.minus(fresh)],
    ['bench', onBench ? back : unit.space.nothing],
    ['renewed', onBench ? unit.space.nothing : renewed],
    ['new', where.and(partly).minus(received)],
    ['returned', off.and(returned)],
    ['sent', off.and(away).minus(returned)],
    ['discarded', off.and(scrapped).minus(gone)],
    ['off', off.minus(scrapped).minus(gone)],
  ]);
}

/** What makes a fate, where the step of it is worth looking up. */
const MADE_BY: { readonly [Kind in FateKind]?: (lane: Lane) => BuildSet } = {
  new: (lane) => lane.partly,
  returned: (lane) => lane.returned,
  sent: (lane) => lane.away,
  discarded: (lane) => lane.scrapped,
};

function lineOf(part: string, kind: FateKind, where: BuildSet, work: WalkedWork, context: BuildContext): FateLine {
  const { names, conditions, writing } = context;
  const made = MADE_BY[kind];
  const maker = made === undefined ? undefined : lastMaking(part, made, where, work);
  const name = names.part(part, where);
  const number = oneNumber(work.end.get(part)?.pieces ?? new Map(), where) ?? name.count ?? 1;
  const condition = conditions.condition(where, work.known);
  const to = destination(maker, context);
  return {
    part: writing.phrases.pieces(name, number),
    ...(condition === undefined ? {} : { condition }),
    ...(to === undefined ? {} : { to }),
    at: placesOf(maker === undefined ? [] : [maker], context),
  };
}

function destination(change: Change | undefined, { names }: BuildContext): string | undefined {
  const one = change?.moment.instruction;
  if (one?.verb !== 'return' && one?.verb !== 'send' && one?.verb !== 'discard') return undefined;
  return names.written(one.to);
}
