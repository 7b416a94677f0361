import { withOtherText } from '../../analysis/otherText';
import { ProcedureView, type StepView } from '../../analysis/procedureView';
import type { Snapshot } from '../../analysis/snapshot';
import { checkDocument } from '../../rules/checkDocument';
import type { Finding } from '../../rules/finding';
import type { EntryLines } from '../../rules/support/walkFixes/block';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { applyEdits, type TextEdit } from '../../text/span';
import { unitBefore } from '../completion/rankingState';
import type { Refactor } from './refactor';
import { stepEdits } from './reverseEdit';
import { reverseEntries } from './reverseEntries';
import { reversePlaces, type StepPlace } from './reversePlaces';
import { conditionsFor, stepLines } from './reverseStepLines';
import { type TakenApart, takenApart } from './takenApart';

/**
 * Writes the step that puts right what the step at an offset took apart and nothing puts right yet. It goes where the walk
 * finds least to say; what only the writer can know is left to be found missing.
 */
export function reverseStep(snapshot: Snapshot, document: SyntaxDocument, offset: number, today: string): Refactor[] {
  const item = document.itemAt(offset)?.item;
  const procedure = document.kind === 'procedure' ? ProcedureView.of(snapshot, document) : undefined;
  const step = procedure?.steps.find((one) => one.step.node.item === item && item !== undefined);
  const family = procedure?.family;
  if (procedure === undefined || step === undefined || family === undefined) return [];
  if (takenApart(procedure, family, step).length === 0) return [];
  const title = `Write the step that fits again what "${step.step.title?.text ?? step.id}" takes off`;
  return [{ id: 'reverse-step', kind: 'rewrite', title, edits: () => bestOf(procedure, step, today)?.edits }];
}

/** A way to write the step, and what a check then finds that it did not find before. */
export interface ReversedStep {
  readonly edits: readonly TextEdit[];
  /** What only the writer can mend: a missing amount, a torque that the family does not state. */
  readonly open: readonly string[];
  /** What should not be there. */
  readonly faults: readonly string[];
}

/** The best of the places; of equals the likeliest. */
export function bestOf(procedure: ProcedureView, step: StepView, today: string): ReversedStep | undefined {
  const { family } = procedure;
  const apart = family === undefined ? [] : takenApart(procedure, family, step);
  if (apart.length === 0) return undefined;
  const before = countsOf(checkDocument(procedure.snapshot, procedure.document, { today }).findings);
  let best: ReversedStep | undefined;
  for (const conditions of conditionsFor(procedure, step, apart)) {
    for (const place of reversePlaces(procedure, step)) {
      const edits = editsAt(procedure, step, apart, place, conditions);
      if (edits === undefined) continue;
      const tried = judged(procedure, edits, before, apart, today);
      if (best === undefined || isBetter(tried, best)) best = tried;
      if (best.faults.length + best.open.length === 0) return best;
    }
    // Other conditions only change for which builds it holds, so they are tried where the step's own are wrong.
    if (best?.faults.length === 0) return best;
  }
  return best;
}

function isBetter(one: ReversedStep, other: ReversedStep): boolean {
  if (one.faults.length !== other.faults.length) return one.faults.length < other.faults.length;
  return one.open.length < other.open.length;
}

function editsAt(
  procedure: ProcedureView,
  step: StepView,
  apart: readonly TakenApart[],
  place: StepPlace,
  conditions: EntryLines,
): readonly TextEdit[] | undefined {
  const next = procedure.steps[place.stands];
  const at = next ?? procedure.steps.at(-1);
  const standing = at && unitBefore(procedure, at, next === undefined ? (at.step.do ?? []).length : 0);
  if (standing === undefined) return undefined;
  const entries = reverseEntries(apart, standing);
  return stepEdits(procedure, place, stepLines(procedure, step, apart, entries, conditions));
}

/** What only a writer can say: how much, by which torque, how hot, what is decided and measured once more. */
const OPEN: ReadonlySet<string> = new Set([
  'amount-missing',
  'torque-missing',
  'tolerance-missing',
  'torque-tool-missing',
  'angle-tool-missing',
  'counter-hold-missing',
  'socket-missing',
  'not-heated',
  'not-lubricated',
  'not-threadlocked',
  'disposition-missing',
  'decided-too-late',
  'balance-missing',
  'check-missing',
  'result-void',
  'adjustment-not-locked',
  'hand-not-identified',
  'part-not-in-kit',
  'kit-quantity-short',
  'mark-missing',
  'alignment-missing',
  'set-mixed',
]);

function judged(
  { snapshot, document }: ProcedureView,
  edits: readonly TextEdit[],
  before: ReadonlyMap<string, number>,
  apart: readonly TakenApart[],
  today: string,
): ReversedStep {
  const changed = withOtherText(snapshot, document, applyEdits(document.text, edits));
  const after = countsOf(checkDocument(changed.snapshot, changed.document, { today }).findings);
  const added = [...after].flatMap(([kind, count]) => (count > (before.get(kind) ?? 0) ? [kind] : []));
  // What the step is for has to be done on every build.
  const left = apart
    .map(({ part, is }) => `left-${is} ${part}`)
    .filter((kind) => after.has(kind) && !added.includes(kind));
  const isOpen = (kind: string): boolean => OPEN.has(kind.split(' ')[0] ?? '');
  return { edits, open: added.filter(isOpen), faults: [...added.filter((kind) => !isOpen(kind)), ...left] };
}

/** How often each rule finds something about the same things, wherever it stands. */
function countsOf(findings: readonly Finding[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { rule, about } of findings) {
    const kind = [rule, ...about].join(' ');
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
}
