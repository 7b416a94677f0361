import type { ProcedureView } from '../analysis/procedureView';
import { isSameLane, type Lane } from '../walk/lane';
import type { Moment, Stretch } from '../walk/trace';
import { type AppliedTo, isSameApplied, type LanesNow } from './fitSurroundings';
import { TemperatureWalk } from './fitTemperatures';
import type { Fitting, Heating, TemperedPart } from './fitTrace';

/** What of the work so far can still warm something: what is hot or cold, and what was put on which part. */
export interface HeatState {
  readonly tempered: readonly TemperedPart[];
  readonly applied: AppliedTo;
}

export const NOTHING_HEATED: HeatState = { tempered: [], applied: new Map() };

/** What is heated, cooled and fitted in a stretch of the work, and how things are behind it. */
export interface StretchHeat {
  readonly fittings: readonly Fitting[];
  readonly heatings: readonly Heating[];
  readonly after: HeatState;
}

/** With all that it was worked out from. */
interface KnownHeat extends StretchHeat {
  readonly before: HeatState;
  readonly stretch: Stretch;
  /** The lanes that were asked for, as they were before the stretch. */
  readonly lanes: ReadonlyMap<string, Lane | undefined>;
  /** The parts of which it mattered, or changed, what was put on them. */
  readonly touched: ReadonlySet<string>;
}

const known = new WeakMap<Stretch['moments'], KnownHeat>();
const heating = new WeakMap<Stretch['moments'], boolean>();

/** Whether anything is heated or cooled in a stretch. */
export function heatsAnything({ moments }: Stretch): boolean {
  const already = heating.get(moments);
  if (already !== undefined) return already;
  const heats = moments.some(({ instruction: { verb } }) => verb === 'heat' || verb === 'cool');
  heating.set(moments, heats);
  return heats;
}

/** Works out a stretch, or takes what was worked out of it before, where all that it looked at is as it was. */
export function heatWithin(procedure: ProcedureView, stretch: Stretch, before: HeatState): StretchHeat {
  const earlier = known.get(stretch.moments);
  if (earlier?.before === before && earlier.stretch === stretch) return earlier;
  const holds = earlier !== undefined && isSameBefore(earlier, before) && areSameLanes(earlier, stretch);
  const heat = holds
    ? { ...earlier, before, stretch, after: afterOf(earlier, before) }
    : worked(procedure, stretch, before);
  known.set(stretch.moments, heat);
  return heat;
}

function worked(procedure: ProcedureView, stretch: Stretch, before: HeatState): KnownHeat {
  const lanes = new LanesWithin(stretch);
  const walk = new TemperatureWalk(procedure, before, lanes);
  for (const moment of stretch.moments) {
    walk.moment(moment);
  }
  return { ...walk.result(), before, stretch, lanes: lanes.asked, touched: walk.around.touched };
}

/** The lanes at each moment of a stretch; those from before it are noted. */
export class LanesWithin implements LanesNow {
  readonly asked = new Map<string, Lane | undefined>();
  readonly #now = new Map<string, Lane>();

  constructor(readonly stretch: Stretch) {}

  get(id: string): Lane | undefined {
    const now = this.#now.get(id);
    if (now !== undefined) return now;
    const lane = this.stretch.lane(id);
    this.asked.set(id, lane);
    return lane;
  }

  put({ lanes }: Moment): void {
    for (const [id, lane] of lanes) this.#now.set(id, lane);
  }
}

function isSameBefore({ before: was, touched }: KnownHeat, before: HeatState): boolean {
  if (was === before) return true;
  if (!areSameParts(was.tempered, before.tempered)) return false;
  if (was.applied === before.applied) return true;
  for (const id of touched) if (!isSameApplied(was.applied.get(id), before.applied.get(id))) return false;
  return true;
}

function areSameParts(some: readonly TemperedPart[], others: readonly TemperedPart[]): boolean {
  return some.length === others.length && some.every((one, i) => one === others[i] || isSamePart(one, others[i]));
}

function isSamePart(one: TemperedPart, other: TemperedPart | undefined): boolean {
  if (one.instruction !== other?.instruction || one.part !== other.part || one.step !== other.step) return false;
  return one.until === other.until && one.served === other.served && one.where === other.where;
}

function areSameLanes({ lanes, stretch: was }: KnownHeat, stretch: Stretch): boolean {
  if (was === stretch) return true;
  for (const [id, lane] of lanes) {
    const now = stretch.lane(id);
    if (lane === now) continue;
    if (lane === undefined || now === undefined || !isSameLane(lane, now)) return false;
  }
  return true;
}

/** What was put on parts that the stretch has nothing to do with is handed on as it is now. */
function afterOf({ before: was, after, touched }: KnownHeat, before: HeatState): HeatState {
  if (isSameOn(was.applied, before.applied)) return after;
  const applied = new Map(before.applied);
  for (const id of touched) {
    const list = after.applied.get(id);
    if (list === undefined) applied.delete(id);
    else applied.set(id, list);
  }
  return { tempered: after.tempered, applied };
}

function isSameOn(some: AppliedTo, others: AppliedTo): boolean {
  if (some === others) return true;
  if (some.size !== others.size) return false;
  for (const [id, list] of some) if (!isSameApplied(list, others.get(id))) return false;
  return true;
}
