import { change, find, fittingOf, putAfter, without } from './changing';
import type { DrawnCase } from './generate';
import { type Planned, type PlannedStep, planned } from './planned';
import type { MadePart } from './structure';

/** A procedure with one known mistake. */
export interface Broken {
  readonly steps: readonly PlannedStep[];
  /** The instruction that must be the first to fail, in every world in which the mistake shows. */
  readonly at: Planned | 'end';
  /** What it must fail with, among what else it may fail with. */
  readonly cause: string;
  readonly about: string;
  /** In some worlds nothing is wrong: what is renewed needs no cleaning. */
  readonly shows: 'everywhere' | 'somewhere';
}

/** Makes one mistake in a right procedure; gives nothing where the procedure has no place for it. */
export type Breaker = (drawn: DrawnCase) => Broken | undefined;

type Where = (part: MadePart, drawn: DrawnCase) => boolean;

/** Makes the mistake at the first part of the family that it can be made at. */
export function atPart(role: MadePart['role'], where: Where, make: (id: string, part: MadePart) => Breaker): Breaker {
  return (drawn) => {
    if (drawn.plan.work !== 'rebuild') return undefined;
    for (const part of drawn.structure.parts.values()) {
      if (part.role !== role || part.kept || part.builds !== 'all' || !where(part, drawn)) continue;
      const broken = make(part.id, part)(drawn);
      if (broken !== undefined) return broken;
    }
    return undefined;
  };
}

/** Leaves instructions out. */
export function leavesOut(
  gone: (drawn: DrawnCase) => readonly (Planned | undefined)[],
  at: (drawn: DrawnCase) => Planned | 'end' | undefined,
  what: Pick<Broken, 'cause' | 'about' | 'shows'>,
): Breaker {
  return (drawn) => {
    const left = gone(drawn);
    const place = at(drawn);
    if (place === undefined || left.length === 0 || left.includes(undefined)) return undefined;
    return { steps: without(drawn.steps, left), at: place, ...what };
  };
}

export const everywhere = (cause: string, about: string) => ({ cause, about, shows: 'everywhere' as const });
export const somewhere = (cause: string, about: string) => ({ cause, about, shows: 'somewhere' as const });

export function isMember(drawn: DrawnCase, fastener: string): boolean {
  const held = drawn.structure.held(fastener).map(({ id }) => id);
  return drawn.extras.group?.members.some((member) => held.includes(member)) === true;
}

const isScrewed = ({ plan }: MadePart): boolean => ['nut', 'bolts', 'clamp-off'].includes(plan.fastening);
const isRing = ({ plan }: MadePart): boolean => plan.fastening.startsWith('ring');

/** The balancing shows what is loose in a rotor, the end of the work shows it elsewhere. */
function whereLoose(drawn: DrawnCase, id: string): Planned | 'end' | undefined {
  return isMember(drawn, id) ? find(drawn, 'balance', 'rotor')[0] : 'end';
}

function loose(gone: (id: string) => (drawn: DrawnCase) => Planned[]) {
  return (id: string): Breaker =>
    (drawn) => {
      const what = isMember(drawn, id) ? everywhere('spun-loose', 'rotor') : everywhere('left-loose', id);
      return leavesOut(gone(id), (one) => whereLoose(one, id), what)(drawn);
    };
}

function isRepaired(drawn: DrawnCase, id: string): boolean {
  return drawn.extras.limits.some(([limit, causes]) => limit === 'limit-repaired' && causes.includes(id));
}

/** Mistakes in taking off, fitting and tightening. */
export const HOLDING: Readonly<Record<string, Breaker>> = {
  'a part is not fitted': atPart(
    'body',
    ({ fastenedBy }) => fastenedBy.length === 0,
    (id) =>
      leavesOut(
        (drawn) => [fittingOf(drawn, id)],
        () => 'end',
        everywhere('left-off', id),
      ),
  ),
  'a fastener is tightened on nothing': atPart(
    'body',
    // A fastener that sits on what it holds lies on the bench with it.
    ({ id, fastenedBy }, { structure }) =>
      fastenedBy.length > 0 && structure.parts.get(fastenedBy[0] ?? '')?.carrier !== id,
    (id, { fastenedBy }) => {
      const fastener = fastenedBy[0] ?? '';
      const turned = (drawn: DrawnCase) => find(drawn, 'tighten', fastener)[0] ?? find(drawn, 'seat', fastener)[0];
      return leavesOut((drawn) => [fittingOf(drawn, id)], turned, everywhere('nothing-held', fastener));
    },
  ),
  'a part stays in the way of its own fitting': atPart(
    'body',
    ({ id, plan }, { structure }) => {
      const covers = [...structure.parts.values()].some(({ behind }) => behind.includes(id));
      return !covers && plan.extra !== 'sent' && plan.seal === 'none';
    },
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'remove', id).slice(0, 1),
        (drawn) => find(drawn, 'install', id)[0],
        everywhere('fitted-already', id),
      ),
  ),
  'a fastener still holds': atPart(
    'fastener',
    (part, { structure }) => {
      const held = structure.held(part.id);
      return (
        held.length === 1 &&
        held[0]?.kept === false &&
        (isScrewed(part) ? part.plan.fastening !== 'clamp-off' : isRing(part))
      );
    },
    (id) => (drawn) => {
      const held = drawn.structure.held(id)[0]?.id ?? '';
      const gone = (one: DrawnCase) => [...find(one, 'loosen', id), ...find(one, 'remove', id)];
      return leavesOut(gone, (one) => find(one, 'remove', held)[0], everywhere('still-fastened', held))(drawn);
    },
  ),
  'a ring is not seated': atPart(
    'fastener',
    isRing,
    loose((id) => (drawn) => find(drawn, 'seat', id)),
  ),
  'a fastener is not tightened': atPart(
    'fastener',
    (part, drawn) => !isRing(part) && !isRepaired(drawn, part.id),
    loose((id) => (drawn) => find(drawn, 'tighten', id)),
  ),
  'the final pass is left out': atPart(
    'fastener',
    ({ plan }) => plan.tightening === 'passes' && plan.fastening !== 'none' && !plan.fastening.startsWith('ring'),
    (id) => (drawn) => {
      const place = whereLoose(drawn, id);
      if (place === undefined || isRepaired(drawn, id)) return undefined;
      const what = isMember(drawn, id) ? everywhere('spun-loose', 'rotor') : everywhere('left-loose', id);
      const isIt = ({ verb, object }: Planned) => verb === 'tighten' && object.includes(id);
      const steps = change(drawn.steps, (one) => (isIt(one) ? [{ ...one, keys: { passes: '[5 N·m]' } }] : [one]));
      return { steps, at: place, ...what };
    },
  ),
  'a part is fitted twice': atPart('body', () => true, repeats('install', 'fitted-already')),
  'a part is taken off twice': atPart('body', () => true, repeats('remove', 'not-fitted')),
  'a single-use fastener is tightened again': atPart(
    'fastener',
    (part) => isScrewed(part) && part.plan.singleUse,
    (id) => (drawn) => {
      const last = find(drawn, 'tighten', id).at(-1);
      const again = planned('tighten', id, { torque: '9 ± 1 N·m' });
      if (last === undefined) return undefined;
      const steps = putAfter(drawn.steps, last, [planned('loosen', id), again]);
      return { steps, at: again, ...everywhere('used-again', id) };
    },
  ),
  'the blank is left in': (drawn) =>
    drawn.plan.work === 'strip'
      ? undefined
      : leavesOut(
          (one) => find(one, 'remove', 'blank'),
          () => 'end',
          everywhere('left-in', 'blank'),
        )(drawn),
  'an old seal is fitted again': atPart(
    'seal',
    () => true,
    (id) => (drawn) => {
      const body = id.replace('seal', 'body');
      const gone = (one: DrawnCase) => [...find(one, 'remove', id), ...find(one, 'install', id)];
      return leavesOut(gone, (one) => fittingOf(one, body), everywhere('seal-used-again', id))(drawn);
    },
  ),
  'the fate of a part stays open': (drawn) => {
    const replaced = [...drawn.structure.parts.values()].find(
      ({ role, builds }) => role === 'body' && builds === 'substitute',
    );
    if (replaced === undefined || drawn.plan.work !== 'rebuild') return undefined;
    return leavesOut(
      (one) => find(one, 'discard', replaced.id),
      () => 'end',
      somewhere('fate-open', replaced.id),
    )(drawn);
  },
};

function repeats(verb: string, cause: string) {
  return (id: string): Breaker =>
    (drawn) => {
      const place = verb === 'install' ? fittingOf(drawn, id) : find(drawn, verb, id)[0];
      if (place === undefined) return undefined;
      const again = { ...place };
      return { steps: putAfter(drawn.steps, place, [again]), at: again, ...everywhere(cause, id) };
    };
}
