import type { Working } from '../workings/working';

/**
 * Of workings that are about the same thing on different builds and come to the same calculation, only the first is told
 * whole; of the others, the rows that differ. Two screens of equal numbers hide the one that is not equal.
 */
export function shortRepeats(workings: readonly Working[]): Working[] {
  return workings.map((working, i) => {
    const first = workings.slice(0, i).find((before) => isRepeat(working, before));
    return first === undefined ? working : shortened(working, first);
  });
}

function isRepeat(working: Working, before: Working): boolean {
  const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
  const isCalculation = working.steps.length > 0 && same(working.steps, before.steps);
  return isCalculation && working.title === before.title && same(working.missing, before.missing);
}

function shortened(working: Working, first: Working): Working {
  const told = new Set(first.rows.map(({ label, text }) => `${label}: ${text}`));
  const rows = working.rows.filter(({ label, text }) => !told.has(`${label}: ${text}`));
  const rest = {
    label: rows.length === 0 ? 'all' : 'the rest',
    text: first.builds === '' ? 'as above' : `as on ${first.builds}`,
  };
  return { ...working, rows: [...rows, rest], steps: [], missing: [], sources: [] };
}
