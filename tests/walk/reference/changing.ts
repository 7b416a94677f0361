import type { DrawnCase } from './generate';
import type { Planned, PlannedStep } from './planned';

/** All instructions of the steps in their order, without what stands in `if-not`. */
export function workOf(steps: readonly PlannedStep[]): Planned[] {
  return steps.flatMap((step) => step.do);
}

export function find(
  drawn: DrawnCase,
  verb: string,
  id: string,
  keep: (one: Planned) => boolean = () => true,
): Planned[] {
  return workOf(drawn.steps).filter((one) => one.verb === verb && one.object.includes(id) && keep(one));
}

/** The fitting that is meant to last. */
export function fittingOf(drawn: DrawnCase, id: string): Planned | undefined {
  return find(drawn, 'install', id, ({ keys }) => keys.trial === undefined)[0];
}

/** The steps with each instruction replaced by what is given for it. A step that loses all keeps a plain sentence. */
export function change(steps: readonly PlannedStep[], by: (one: Planned) => readonly Planned[]): PlannedStep[] {
  return steps.map((step) => {
    const work = step.do.flatMap(by);
    return { ...step, do: work.length === 0 ? [NOTHING] : work };
  });
}

const NOTHING: Planned = { verb: 'say', object: ['Nothing.'], keys: {}, ifNot: {}, nested: [] };

export function without(steps: readonly PlannedStep[], gone: readonly (Planned | undefined)[]): PlannedStep[] {
  return change(steps, (one) => (gone.includes(one) ? [] : [one]));
}

export function putBefore(steps: readonly PlannedStep[], place: Planned, added: readonly Planned[]): PlannedStep[] {
  return change(steps, (one) => (one === place ? [...added, one] : [one]));
}

export function putAfter(steps: readonly PlannedStep[], place: Planned, added: readonly Planned[]): PlannedStep[] {
  return change(steps, (one) => (one === place ? [one, ...added] : [one]));
}
