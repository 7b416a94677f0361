import type { StepView } from '../../analysis/procedureView';
import type { Step } from '../../model/generated/types';
import { type CardRow, oneLine, row, sideRow } from './card';
import { type StepUse, verbOf } from './stepUses';

/** What the work with a part is called, by the verbs that do it. */
const WORK: readonly { readonly label: string; readonly verbs: readonly string[] }[] = [
  { label: 'Comes off in', verbs: ['loosen', 'remove'] },
  { label: 'Goes on in', verbs: ['install', 'seat', 'tighten', 'press'] },
];

/** Where a part comes off and goes on in the procedure, and where else it is worked on. */
export function workRows(uses: readonly StepUse[]): CardRow[] {
  const done = (verbs: readonly string[]) => uses.filter((use) => verbs.includes(verbOf(use) ?? ''));
  const others = uses.filter((use) => !WORK.some(({ verbs }) => verbs.includes(verbOf(use) ?? '')));
  const rows = WORK.flatMap(({ label, verbs }) => row(label, stepNames(done(verbs))));
  return [...rows, ...sideRow('Also in', otherWork(others))];
}

/** The steps that name a thing, each once. */
export function stepsRow(label: string, uses: readonly StepUse[]): CardRow[] {
  return row(label, stepNames(uses));
}

/** A step as it is spoken of: `Fit the compressor nut (fit-compressor-nut)`. */
export function stepName({ step, title }: Step): string {
  const id = step?.id ?? '';
  const text = oneLine(title?.text ?? '');
  if (text === '') return id || 'a step without a title';
  return id === '' ? text : `${text} (${id})`;
}

export function stepNames(uses: readonly StepUse[]): string[] {
  return [...new Set(uses.map((use) => use.step))].map(({ step }) => stepName(step));
}

/** The rest in one line, so that a part that is washed, looked at and measured does not fill the screen. */
function otherWork(uses: readonly StepUse[]): string {
  const byStep = new Map<StepView, Set<string>>();
  for (const use of uses) {
    const words = byStep.get(use.step) ?? new Set<string>();
    byStep.set(use.step, words.add(verbOf(use) ?? ''));
  }
  const shown = [...byStep].slice(0, 6).map(([{ step }, verbs]) => {
    const words = [...verbs].filter((verb) => verb !== '');
    const name = step.step?.id ?? stepName(step);
    return words.length === 0 ? name : `${name} (${words.join(', ')})`;
  });
  return [...shown, ...(byStep.size > shown.length ? [`${byStep.size - shown.length} more`] : [])].join(', ');
}
