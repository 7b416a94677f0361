import { atPart, type Breaker, everywhere, isMember, leavesOut, somewhere } from './breakers';
import { change, find, fittingOf, putAfter, workOf } from './changing';
import { type Planned, planned } from './planned';
import type { MadePart } from './structure';
import { fastenerPreparation } from './writeFamily';

/** Mistakes in what proves the work and in what is kept in its position. */
export const PROVING: Readonly<Record<string, Breaker>> = {
  'a check is not made': (drawn) => {
    // A check is due where something that it comes behind is fitted again.
    const isDue = (causes: readonly string[]) => causes.some((id) => fittingOf(drawn, id) !== undefined);
    const check = drawn.extras.checks.find(([, causes]) => causes.length === 0 || isDue(causes))?.[0];
    if (check === undefined || drawn.plan.work === 'strip') return undefined;
    return leavesOut(
      (one) => find(one, 'check', check),
      () => 'end',
      everywhere('check-missing', check),
    )(drawn);
  },
  'a limit is measured too soon': atPart(
    'fastener',
    (part) =>
      part.behind.length === 0 &&
      ['nut', 'bolts'].includes(part.plan.fastening) &&
      !part.plan.singleUse &&
      !part.plan.fastenerPreparation.endsWith('threadlock'),
    (id) => (drawn) => {
      const limit = drawn.extras.limits.find(([name, causes]) => /^limit-\d/.test(name) && causes.includes(id))?.[0];
      const last = workOf(drawn.steps).at(-1);
      if (limit === undefined || last === undefined) return undefined;
      const again = [planned('loosen', id), planned('tighten', id, { torque: '9 ± 1 N·m', angle: '60 ± 5°' })];
      return { steps: putAfter(drawn.steps, last, again), at: 'end', ...everywhere('result-void', limit) };
    },
  ),
  'the hand is not found out': atPart(
    'fastener',
    ({ plan }) => plan.fastening === 'nut' && plan.handByBuild,
    (id) => (drawn) => {
      const turned = workOf(drawn.steps).find(
        (one) => ['loosen', 'remove', 'tighten'].includes(one.verb) && isHanded(drawn.structure.parts, one),
      );
      if (turned?.object.includes(id) !== true) return undefined;
      return leavesOut(
        (one) => find(one, 'identify', 'nut-hand'),
        () => turned,
        somewhere('hand-unknown', id),
      )(drawn);
    },
  ),
  'nothing is marked': (drawn) => {
    const { group } = drawn.extras;
    const at = workOf(drawn.steps).find(
      ({ verb, object }) => verb === 'remove' && group?.members.includes(object[0] ?? ''),
    );
    if (group?.keepPosition !== true || drawn.plan.work === 'assembly') return undefined;
    const what = somewhere('mark-missing', at?.object[0] ?? '');
    return leavesOut(
      (one) => workOf(one.steps).filter(({ verb }) => verb === 'mark'),
      () => at,
      what,
    )(drawn);
  },
  'nothing is aligned': (drawn) => {
    const aligned = workOf(drawn.steps).filter(({ verb }) => verb === 'align');
    if (drawn.plan.work !== 'rebuild') return undefined;
    return leavesOut(
      () => aligned,
      () => 'end',
      somewhere('alignment-missing', aligned[0]?.object[0] ?? ''),
    )(drawn);
  },
  'a painted mark is washed off': (drawn) => {
    const { group } = drawn.extras;
    const washed = group?.members.find((member) => find(drawn, 'clean', member).length > 0);
    const at = workOf(drawn.steps).find(({ verb }) => verb === 'align');
    if (drawn.plan.work !== 'rebuild' || washed === undefined || at === undefined) return undefined;
    const paint = (one: Planned) => (one.verb === 'mark' ? [{ ...one, keys: { ...one.keys, by: 'paint' } }] : [one]);
    return { steps: change(drawn.steps, paint), at, ...somewhere('mark-missing', washed) };
  },
  'new parts are not balanced': (drawn) => {
    const isFresh = drawn.extras.group?.members.some((member) => {
      const { plan } = drawn.structure.part(member);
      return plan.onCondition || plan.extra === 'sizes';
    });
    if (isFresh !== true || drawn.plan.work !== 'rebuild') return undefined;
    return leavesOut(
      (one) => find(one, 'balance', 'rotor'),
      () => 'end',
      somewhere('balance-missing', 'rotor'),
    )(drawn);
  },
  'the rotor is spun before the threadlocker sets': atPart(
    'fastener',
    (part, drawn) => fastenerPreparation(part).includes('threadlock') && isMember(drawn, part.id),
    () =>
      leavesOut(
        (drawn) => find(drawn, 'wait', 'cure'),
        (drawn) => find(drawn, 'balance', 'rotor')[0],
        everywhere('spun-uncured', 'rotor'),
      ),
  ),
  'an adjustment is not locked': (drawn) =>
    leavesOut(
      (one) => find(one, 'tighten', 'lock-nut'),
      () => (drawn.plan.work === 'strip' ? undefined : 'end'),
      everywhere('adjustment-open', 'adjuster'),
    )(drawn),
  'a fastener comes after what covers it': atPart(
    'fastener',
    ({ behind, carrier }) => behind.length > 0 && carrier === 'base-housing',
    (id, { behind }) =>
      (drawn) => {
        const cover = drawn.structure.part(behind[0] ?? '');
        const place = fittingOf(drawn, cover.id);
        const at = fittingOf(drawn, id);
        if (cover.carrier !== 'base-housing' || cover.builds !== 'all' || place === undefined || at === undefined)
          return undefined;
        const moved = workOf(drawn.steps)
          .slice(workOf(drawn.steps).indexOf(at))
          .filter(({ verb, object }) => ['install', 'tighten', 'seat'].includes(verb) && object.includes(id));
        const steps = change(drawn.steps, (one) =>
          one === place ? [one, ...moved] : moved.includes(one) ? [] : [one],
        );
        return { steps, at, ...everywhere('in-the-way', id) };
      },
  ),
};

function isHanded(parts: ReadonlyMap<string, MadePart>, { object }: Planned): boolean {
  const part = parts.get(object[0] ?? '');
  return part?.role === 'fastener' && part.plan.fastening === 'nut' && part.plan.handByBuild;
}
