import { longestRising } from '../text/longestRising';
import { commonEnds } from './commonEnds';

/** A stretch of two lists, by where it begins in each: of the same members, or of what stands in one's place of the other. */
export type Segment =
  | { readonly is: 'same'; readonly now: number; readonly before: number; readonly count: number }
  | { readonly is: 'changed'; readonly now: readonly [number, number]; readonly before: readonly [number, number] };

/**
 * Lays two lists beside each other, so that as many members as can stand in one order meet: whoever moves one or changes
 * many here and there still finds the others. Each member stands once in a list.
 */
export function alignmentOf<T>(now: readonly T[], then: readonly T[]): Segment[] {
  const [same, behind] = commonEnds(now, then);
  const meetings: Meeting[] = [[0, 0, same]];
  const places = new Map<T, number>();
  for (let i = same; i < then.length - behind; i++) places.set(then[i] as T, i);
  const met: Meeting[] = [];
  for (let i = same; i < now.length - behind; i++) {
    const place = places.size === 0 ? undefined : places.get(now[i] as T);
    if (place !== undefined) met.push([i, place, 1]);
  }
  meetings.push(...longestRising(met), [now.length - behind, then.length - behind, behind]);
  return segmentsOf(meetings);
}

/** Where two lists meet: the place in each, and how many members long. */
type Meeting = readonly [now: number, before: number, count: number];

/** What lies between the meetings is changed; meetings without anything between are one. */
function segmentsOf(meetings: readonly Meeting[]): Segment[] {
  const segments: Segment[] = [];
  let [now, before] = [0, 0];
  for (const [nextNow, nextBefore, count] of meetings) {
    if (nextNow > now || nextBefore > before)
      segments.push({ is: 'changed', now: [now, nextNow], before: [before, nextBefore] });
    [now, before] = [nextNow + count, nextBefore + count];
    if (count === 0) continue;
    const last = segments.at(-1);
    if (last?.is === 'same') segments[segments.length - 1] = { ...last, count: last.count + count };
    else segments.push({ is: 'same', now: nextNow, before: nextBefore, count });
  }
  return segments;
}
