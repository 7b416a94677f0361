import { atPart, type Breaker, everywhere, leavesOut, somewhere } from './breakers';
import { find, fittingOf, putBefore, workOf } from './changing';
import { type Planned, planned } from './planned';
import type { MadePart } from './structure';
import { bodyPreparation, fastenerPreparation } from './writeFamily';

const isNew = ({ plan }: MadePart): boolean => plan.extra === 'sizes';

/** What shows in a part that goes back only where it is decided to. */
function usedAgain({ plan }: MadePart, cause: string, about: string) {
  return plan.onCondition ? somewhere(cause, about) : everywhere(cause, about);
}

/** Mistakes in what is done to parts on the bench. */
export const PREPARING: Readonly<Record<string, Breaker>> = {
  'a part is not cleaned': atPart(
    'body',
    (part) => bodyPreparation(part).includes('clean') && part.plan.extra !== 'trial' && !isNew(part),
    (id, part) =>
      leavesOut(
        (drawn) => find(drawn, 'clean', id),
        (drawn) => fittingOf(drawn, id),
        usedAgain(part, 'not-cleaned', id),
      ),
  ),
  'blasting is not washed off': atPart(
    'body',
    ({ plan }) => plan.extra === 'blasted',
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'clean', id, ({ keys }) => keys.by === 'wash'),
        (drawn) => fittingOf(drawn, id),
        everywhere('not-cleaned', id),
      ),
  ),
  'a part is not oiled': atPart(
    'body',
    ({ plan }) => plan.lubricate,
    (id) =>
      leavesOut(
        (drawn) => applied(drawn.steps, id),
        (drawn) => fittingOf(drawn, id),
        everywhere('not-lubricated', id),
      ),
  ),
  'a fastener gets no threadlocker': atPart(
    'fastener',
    (part) => fastenerPreparation(part).includes('threadlock'),
    (id) =>
      leavesOut(
        (drawn) => applied(drawn.steps, id),
        (drawn) => fittingOf(drawn, id),
        everywhere('not-threadlocked', id),
      ),
  ),
  'threadlocker goes on oil': atPart(
    'fastener',
    (part) => fastenerPreparation(part).includes('threadlock'),
    (id) => (drawn) => {
      const at = applied(drawn.steps, id)[0];
      if (at === undefined) return undefined;
      const oiled = planned('apply', 'bench-oil', { to: id, at: 'thread' });
      return { steps: putBefore(drawn.steps, at, [oiled]), at, ...everywhere('threadlocker-on-oil', id) };
    },
  ),
  'a part is not decided on': atPart(
    'body',
    (part) => part.plan.onCondition && !isNew(part),
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'inspect', id),
        (drawn) => fittingOf(drawn, id),
        everywhere('undecided', id),
      ),
  ),
  'a part is not inspected': atPart(
    'body',
    (part) => bodyPreparation(part).includes('inspect') && !part.plan.onCondition && !isNew(part),
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'inspect', id),
        (drawn) => fittingOf(drawn, id),
        everywhere('not-inspected', id),
      ),
  ),
  'a size is not chosen': atPart('body', isNew, (id, { plan }) => {
    const what = plan.onCondition ? somewhere('size-not-chosen', id) : everywhere('size-not-chosen', id);
    return leavesOut(
      (drawn) => find(drawn, 'choose', id),
      (drawn) => fittingOf(drawn, id),
      what,
    );
  }),
  'a size is chosen without the reading': atPart('body', isNew, (id) =>
    leavesOut(
      (drawn) => find(drawn, 'measure', `read-${id}`),
      (drawn) => find(drawn, 'choose', id)[0],
      everywhere('not-measured', id),
    ),
  ),
  'a part is not heated': atPart(
    'body',
    ({ plan }) => plan.extra.startsWith('heat'),
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'heat', id),
        (drawn) => fittingOf(drawn, id),
        everywhere('not-heated', id),
      ),
  ),
  'a fastener is tightened on a hot part': atPart(
    'body',
    ({ plan, fastenedBy }) => plan.extra === 'heat-and-cool' && fastenedBy.length > 0,
    (id, { fastenedBy }) =>
      (drawn) => {
        const fastener = fastenedBy[0] ?? '';
        const at = find(drawn, 'tighten', fastener)[0];
        const work = workOf(drawn.steps);
        const between = work.slice(
          work.indexOf(fittingOf(drawn, id) ?? NEVER),
          at === undefined ? 0 : work.indexOf(at),
        );
        if (between.some(({ verb }) => verb === 'wait')) return undefined;
        return leavesOut(
          (one) => find(one, 'cool', id),
          () => at,
          everywhere('hot-while-tightened', fastener),
        )(drawn);
      },
  ),
  'a part is not taken in again': atPart(
    'body',
    ({ id, plan }, { structure }) =>
      plan.extra === 'sent' && ![...structure.parts.values()].some(({ carrier }) => carrier === id),
    (id) =>
      leavesOut(
        (drawn) => find(drawn, 'receive', id),
        (drawn) => fittingOf(drawn, id),
        everywhere('carrier-missing', id),
      ),
  ),
};

const NEVER = planned('say', '');

function applied(steps: Parameters<typeof workOf>[0], id: string): Planned[] {
  return workOf(steps).filter(({ verb, keys }) => verb === 'apply' && keys.to === id);
}
