import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Phase } from '../../model/generated/types';
import type { Lane } from '../../walk/lane';
import type { Moment } from '../../walk/trace';
import { capital } from '../sentences/grammar';
import type { LooseEnd, LooseNeed, SingleSetting, TorqueSetting } from '../sheet';
import type { BuildContext } from './buildContext';
import { changesOf, laneAt, type MomentPlace, placesOf } from './changes';
import { combined, oneNumber } from './pieceCounts';
import { settingOf } from './torque';
import type { WalkedWork } from './walkedWork';

/** What is in place and not tight as each phase ends, for whoever goes on from there. */
export function looseEndsOf(work: WalkedWork | undefined, context: BuildContext): ReadonlyMap<Phase, LooseEnd[]> {
  const byPhase = new Map<Phase, LooseEnd[]>();
  if (work === undefined) return byPhase;
  const ends = endsOfPhases(context.procedure, work);
  for (const [phase, end] of ends) {
    // A fastener without a torque of the family can get one in the work.
    const all = work.unit.ids.flatMap((part) => endsOf(part, context.uses.tightened.has(part), end, work, context));
    byPhase.set(phase, all);
  }
  return byPhase;
}

/** Where each phase ends among the moments of the work. What is done over again belongs to the phase that goes back. */
function endsOfPhases({ phases }: ProcedureView, { stretches }: WalkedWork): Map<Phase, MomentPlace> {
  const ends = new Map<Phase, MomentPlace>();
  let [stretch, moments] = [0, 0];
  for (const { phase, steps: views } of phases) {
    // A moment that is remembered from before a change elsewhere knows its step as it is, and its phase as it was.
    const steps = new Set(views.map(({ step }) => step));
    const isHere = (moment: Moment) => moment.again || steps.has(moment.step.step);
    for (let here = stretches[stretch]; here !== undefined; here = stretches[stretch]) {
      const next = here.moments.findIndex((moment, place) => place >= moments && !isHere(moment));
      moments = Math.max(0, next);
      if (next >= 0) break;
      stretch += 1;
    }
    ends.set(phase, { stretch, moments });
  }
  return ends;
}

/** One line for each way in which the fastener is made tight later, or comes off again. */
function endsOf(part: string, isTurned: boolean, at: MomentPlace, work: WalkedWork, context: BuildContext): LooseEnd[] {
  const { unit, known } = work;
  const looseIn = (lane: Lane): BuildSet => {
    if (isTurned || unit.hasTorque(part)) return lane.partly.minus(lane.torqued);
    return unit.isRing(part) || unit.isClamp(part) ? lane.partly.and(lane.released) : unit.space.nothing;
  };
  const lane = laneAt(part, work, at);
  let rest = looseIn(lane).and(known);
  const ends: LooseEnd[] = [];
  if (rest.isEmpty) return ends;
  for (const change of changesOf(part, work, at)) {
    const settled = rest.minus(looseIn(change.after));
    if (settled.isEmpty) continue;
    const { instruction } = change.moment;
    const values = instruction.verb === 'tighten' ? instruction : undefined;
    const isOff = settled.isWithin(change.after.partly) === false;
    const need: LooseNeed = isOff ? { kind: 'off' } : needOf(part, values, settled, work, context);
    ends.push({ ...lineOf(part, lane, settled, work, context), need, at: placesOf([change], context) });
    rest = rest.minus(settled);
    if (rest.isEmpty) return ends;
  }
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
