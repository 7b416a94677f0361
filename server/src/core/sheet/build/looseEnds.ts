import type { BuildSet } from '../../builds';
import type { Phase } from '../../model/generated/types';
import type { Lane } from '../../walk/lane';
import { capital } from '../sentences/grammar';
import type { LooseEnd, LooseNeed, SingleSetting, TorqueSetting } from '../sheet';
import type { BuildContext } from './buildContext';
import { changesOf, placesOf } from './changes';
import { combined, oneNumber } from './pieceCounts';
import { settingOf } from './torque';
import type { Lanes, WalkedWork } from './walkedWork';

/** What is in place and not tight as each phase ends, for whoever goes on from there. */
export function looseEndsOf(work: WalkedWork | undefined, context: BuildContext): ReadonlyMap<Phase, LooseEnd[]> {
  const byPhase = new Map<Phase, LooseEnd[]>();
  if (work === undefined) return byPhase;
  const lanes = new Map(work.start);
  let next = 0;
  for (const phase of context.procedure.value.phases ?? []) {
    // A moment that is remembered from before a change elsewhere knows its step as it is, and its phase as it was.
    const steps = new Set(phase.steps ?? []);
    for (let moment = work.moments[next]; moment !== undefined; moment = work.moments[next]) {
      if (!moment.again && !steps.has(moment.step.step)) break;
      for (const [part, lane] of moment.lanes) lanes.set(part, lane);
      next += 1;
    }
    const after = { lanes: new Map(lanes), from: next };
    byPhase.set(
      phase,
      // A fastener without a torque of the family can get one in the work.
      work.unit.ids.flatMap((part) => endsOf(part, context.uses.tightened.has(part), after, work, context)),
    );
  }
  return byPhase;
}

interface After {
  readonly lanes: Lanes;
  /** The place of the first moment that comes later. */
  readonly from: number;
}

/** One line for each way in which the fastener is made tight later, or comes off again. */
function endsOf(part: string, isTurned: boolean, after: After, work: WalkedWork, context: BuildContext): LooseEnd[] {
  const { unit, moments, known } = work;
  const looseIn = (lane: Lane): BuildSet => {
    if (isTurned || unit.hasTorque(part)) return lane.partly.minus(lane.torqued);
    return unit.isRing(part) || unit.isClamp(part) ? lane.partly.and(lane.released) : unit.space.nothing;
  };
  const lane = after.lanes.get(part);
  if (lane === undefined) return [];
  let rest = looseIn(lane).and(known);
  if (rest.isEmpty) return [];
  const ends: LooseEnd[] = [];
  const later = changesOf(part, { ...work, start: after.lanes, moments: moments.slice(after.from) });
  for (const change of later) {
    const settled = rest.minus(looseIn(change.after));
    if (settled.isEmpty) continue;
    const { instruction } = change.moment;
    const values = instruction.verb === 'tighten' ? instruction : undefined;
    const isOff = settled.isWithin(change.after.partly) === false;
    const need: LooseNeed = isOff ? { kind: 'off' } : needOf(part, values, settled, work, context);
    ends.push({ ...lineOf(part, lane, settled, work, context), need, at: placesOf([change], context) });
    rest = rest.minus(settled);
  }
  if (rest.isEmpty) return ends;
  const need = needOf(part, undefined, rest, work, context);
  return [...ends, { ...lineOf(part, lane, rest, work, context), need, at: [] }];
}

function needOf(
  part: string,
  values: Parameters<typeof settingOf>[0] | undefined,
  where: BuildSet,
  { unit }: WalkedWork,
  context: BuildContext,
): LooseNeed {
  if (values === undefined && !unit.hasTorque(part) && unit.isRing(part)) return { kind: 'seat' };
  return { kind: 'torque', setting: withoutHand(settingOf(values ?? {}, part, where, context)) };
}

/** Which way to turn is said where it is turned; branches that differ in nothing else are one. */
function withoutHand(setting: TorqueSetting): TorqueSetting {
  if (setting.kind !== 'byOutcome') return bare(setting);
  const branches = setting.branches.map(({ condition, setting: one }) => ({ condition, setting: bare(one) }));
  const [first, ...others] = branches.map((branch) => JSON.stringify(branch.setting));
  const [only] = branches;
  return only !== undefined && others.every((one) => one === first) ? only.setting : { kind: 'byOutcome', branches };
}

function bare(setting: SingleSetting): SingleSetting {
  if (setting.kind === 'blank') return { kind: 'blank' };
  const { turn: _, ...value } = setting.value;
  return { kind: 'one', value: { ...value, passes: [] } };
}

function lineOf(
  part: string,
  lane: Lane,
  where: BuildSet,
  { known }: WalkedWork,
  { names, conditions, writing }: BuildContext,
): Pick<LooseEnd, 'what' | 'condition'> {
  const loose = combined(lane.pieces, lane.tight, where, (pieces, tight) => pieces - tight);
  const [number, whole] = [oneNumber(loose, where), oneNumber(lane.pieces, where)];
  const words = writing.phrases.pieces(names.part(part, where), number ?? 1, whole);
  const condition = conditions.condition(where, known);
  return { what: capital(words), ...(condition === undefined ? {} : { condition }) };
}
