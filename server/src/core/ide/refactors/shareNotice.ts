import { ProcedureView } from '../../analysis/procedureView';
import type { Snapshot } from '../../analysis/snapshot';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { TextEdit } from '../../text/span';
import { removeNotice, writeBeforeYouStart, writeNotice } from './noticeEdits';
import { type NoticeUse, noticeUses } from './noticeUses';
import type { Refactor } from './refactor';

/**
 * A warning, caution or notice that stands several times is said once: at the head of the step, or of the phase, or before
 * the work starts, the places that the format has for what holds throughout. Offered where one of them stands.
 */
export function shareNotice(snapshot: Snapshot, document: SyntaxDocument, offset: number): Refactor[] {
  const procedure = ProcedureView.of(snapshot, document);
  const all = procedure === undefined ? [] : noticeUses(procedure);
  const here = all.find(({ node }) => {
    const { start, end } = document.spanOf(node);
    return start <= offset && offset <= end;
  });
  if (procedure === undefined || here === undefined) return [];
  const alike = all.filter(({ key, text }) => key === here.key && text === here.text);
  const inPhase = alike.filter(({ phase }) => phase === here.phase);
  const inStep = inPhase.filter(({ step }) => step === here.step);
  return [...toStep(procedure, here, inStep), ...toPhase(procedure, here, inPhase), ...toStart(procedure, here, alike)];
}

/** How many different steps, or phases, the uses stand in. */
function countOf(uses: readonly NoticeUse[], by: 'step' | 'phase'): number {
  return new Set(uses.map((use) => use[by])).size;
}

function toStep(procedure: ProcedureView, here: NoticeUse, uses: readonly NoticeUse[]): Refactor[] {
  const step = here.step === undefined ? undefined : procedure.steps[here.step]?.step;
  if (step?.node.kind !== 'map' || here.of !== 'instruction' || uses.length < 2) return [];
  const { node } = step;
  const title = `Say this ${here.key} once, at the head of step "${step.title?.text ?? step.step?.id ?? ''}"`;
  const edits = () => shared(procedure.document, uses, 'step', () => writeNotice(procedure.document, node, here));
  return [{ id: 'share-in-step', kind: 'extract', title, edits }];
}

function toPhase(procedure: ProcedureView, here: NoticeUse, uses: readonly NoticeUse[]): Refactor[] {
  const { node, phase } = here.phase;
  if (node.kind !== 'map' || here.of === 'phase' || countOf(uses, 'step') < 2) return [];
  const title = `Say this ${here.key} once, at the head of phase "${phase?.text ?? ''}"`;
  const edits = () => shared(procedure.document, uses, 'phase', () => writeNotice(procedure.document, node, here));
  return [{ id: 'share-in-phase', kind: 'extract', title, edits }];
}

function toStart(procedure: ProcedureView, here: NoticeUse, uses: readonly NoticeUse[]): Refactor[] {
  if (countOf(uses, 'phase') < 2) return [];
  const lines = procedure.value.beforeYouStart ?? [];
  const isThere = lines.some(
    (line) =>
      line.when === undefined && line.unless === undefined && line[here.key]?.some(({ text }) => text === here.text),
  );
  const edits = () =>
    shared(procedure.document, uses, undefined, () => (isThere ? [] : writeBeforeYouStart(procedure.document, here)));
  return [{ id: 'share-at-start', kind: 'extract', title: `Say this ${here.key} once, before the work starts`, edits }];
}

/** Takes the notice away wherever it stands, and writes it at the head unless it stands there already. */
function shared(
  document: SyntaxDocument,
  uses: readonly NoticeUse[],
  head: NoticeUse['of'] | undefined,
  write: () => readonly TextEdit[] | undefined,
): readonly TextEdit[] | undefined {
  const moved = uses.filter(({ of }) => of !== head);
  const removed = moved.map((use) => removeNotice(document, use));
  const written = moved.length < uses.length ? [] : write();
  if (written === undefined || removed.includes(undefined)) return undefined;
  return [...removed.flatMap((edit) => edit ?? []), ...written];
}
