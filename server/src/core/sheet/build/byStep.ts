import type { SheetPhase, SheetStep } from '../sheet';

/**
 * Something that is gathered from all steps of a sheet, remembered for each step: a step that nothing has changed is the
 * object of the last sheet, and gives the same objects again.
 */
export function gatheredByStep<Found>(of: (step: SheetStep) => readonly Found[]) {
  const known = new WeakMap<SheetStep, readonly Found[]>();
  return (phases: readonly SheetPhase[]): Found[] => {
    const all: Found[] = [];
    for (const { steps } of phases) {
      for (const step of steps) {
        const found = known.get(step) ?? of(step);
        known.set(step, found);
        for (const one of found) all.push(one);
      }
    }
    return all;
  };
}
