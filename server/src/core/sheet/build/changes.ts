import type { BuildSet } from '../../builds';
import { emptyLane, type Lane } from '../../walk/lane';
import type { Moment } from '../../walk/trace';
import type { StepPlace } from '../sheet';
import type { BuildContext } from './buildContext';
import type { WalkedWork } from './walkedWork';

/** What one instruction made of a part. */
export interface Change {
  readonly moment: Moment;
  readonly before: Lane;
  readonly after: Lane;
}

/** What the work makes of a part, in order. What is only done over again, after a result was not right, is left out. */
export function changesOf(part: string, { moments, start, unit }: WalkedWork): Change[] {
  let before = start.get(part) ?? emptyLane(unit.space);
  return moments.flatMap((moment) => {
    const after = moment.lanes.get(part);
    if (after === undefined) return [];
    const change = { moment, before, after };
    before = after;
    return moment.again ? [] : [change];
  });
}

/** The steps of some changes, each once, by the numbers that they have on the sheet. */
export function placesOf(changes: readonly Change[], { stepNames }: BuildContext): StepPlace[] {
  const ids = new Set(changes.map(({ moment }) => moment.step.id));
  return [...ids].flatMap((id) => {
    const step = stepNames.numbers.get(id);
    return step === undefined ? [] : [{ step, stepId: id }];
  });
}

/** Changes that made something true where it matters. */
export function making(changes: readonly Change[], of: (lane: Lane) => BuildSet, where: BuildSet): Change[] {
  return changes.filter(({ before, after }) => of(after).minus(of(before)).overlaps(where));
}
