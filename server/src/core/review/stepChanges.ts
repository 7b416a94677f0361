import type { ProcedureView, StepView } from '../analysis/procedureView';
import { UNIT_SHAPES } from '../model/generated/shapes';
import type { Instruction, Phase } from '../model/generated/types';
import type { ChangeClass, Subject } from './change';
import { instructionChanges } from './instructionChanges';
import { type Matched, matchSequence, movedPairs, wordLikeness } from './matchSequence';
import { meaningOf } from './meaning';
import { objectChanges } from './objectChanges';
import { orderWeight, type Reordered, reorderedBy } from './reordered';
import type { Values } from './slot';
import type { Two, TwoDocuments } from './twoSides';

const STEP = { as: 'unit', def: 'procedure/step' } as const;

/** The steps of a procedure, matched by id and then by what is in them. */
export function matchSteps({ before, after }: Two<ProcedureView>): ReturnType<typeof matchSequence<StepView>> {
  return matchSequence(before.steps, after.steps, {
    identity: ({ id }) => (id === '' ? undefined : id),
    likeness: (a, b) => wordLikeness(body(a), body(b)),
    least: 0.6,
  });
}

function body({ step }: StepView): string {
  return meaningOf(step.node, STEP).replace(/\bstep: [a-z0-9-]+/u, '');
}

/** Compares the phases and steps of two versions of a procedure. */
export function stepChanges(two: TwoDocuments, views: Two<ProcedureView>, nameOf: (id: string) => string): void {
  phaseChanges(two, views);
  const { pairs, removed, added } = matchSteps(views);
  const reordered = reorderedBy(views.before);
  for (const pair of pairs) comparePair(two, pair, nameOf, reordered);
  for (const one of removed)
    two.tell(
      { class: goneClass(one), kind: 'removed', of: subjectOf(one), where: undefined },
      one.step.node,
      undefined,
    );
  for (const one of added)
    two.tell({ class: 'fits', kind: 'added', of: subjectOf(one), where: one.where }, undefined, one.step.node);
  for (const pair of movedPairs(pairs, ({ before, after }) => orderWeight([before.id, after.id].toSorted().join('|'))))
    tellMoved(two, pair, pairs, reordered);
}

function tellMoved(
  two: TwoDocuments,
  pair: Matched<StepView>,
  pairs: readonly Matched<StepView>[],
  reordered: Reordered,
): void {
  const passed = pairs.filter((other) => pair.from < other.from !== pair.to < other.to);
  const instructions = (view: StepView): readonly Instruction[] =>
    view.instructions.map(({ instruction }) => instruction);
  const told = reordered(
    instructions(pair.before),
    passed.flatMap(({ before }) => instructions(before)),
  );
  two.tell(
    { ...told, kind: 'moved', of: subjectOf(pair.after), where: pair.after.where },
    titleRange(pair.before),
    titleRange(pair.after),
  );
}

/** A moved step is shown by its first line. */
function titleRange({ step }: StepView) {
  return step.title?.node ?? step.step?.node ?? step.node;
}

function goneClass(view: StepView): ChangeClass {
  const only = view.instructions.every(({ instruction }) => ['record', 'say'].includes(instruction.verb));
  const warned = [view.step.warning, view.step.caution, view.step.notice].some((all) => (all ?? []).length > 0);
  return only && !warned && view.step.sign === undefined ? 'fits' : 'hurt';
}

function subjectOf({ id, step }: StepView): Subject {
  return { kind: 'step', id, name: step.title?.text ?? id, step: id };
}

function comparePair(
  two: TwoDocuments,
  { before, after }: Two<StepView>,
  nameOf: (id: string) => string,
  reordered: Reordered,
): void {
  if (before.id !== after.id)
    two.tell(
      { class: 'looks', kind: 'renamed', of: subjectOf(after), where: after.where },
      before.step.step?.node,
      after.step.step?.node,
    );
  if (before.step.node.item.text === after.step.node.item.text) return;
  const known = two.found.length;
  const within = { before: before.where, after: after.where };
  objectChanges(two, { before: before.step, after: after.step } as unknown as Values, {
    def: 'procedure/step',
    keys: UNIT_SHAPES['procedure/step']?.shape.keys ?? {},
    of: subjectOf(after),
    without: new Set(['step', 'do']),
    within,
  });
  instructionChanges(
    two,
    { before: before.step.do ?? [], after: after.step.do ?? [] },
    { step: after.id, within, nameOf, reordered },
  );
  // The text differs and nothing that it says: a remark, the layout, the order of keys.
  if (two.found.length === known && before.id === after.id)
    two.tell(
      { class: 'looks', kind: 'changed', of: subjectOf(after), note: 'layout or remarks' },
      before.step.node,
      after.step.node,
    );
}

/** Phases go by their titles, and by their place where a title was changed. */
function phaseChanges(two: TwoDocuments, { before, after }: Two<ProcedureView>): void {
  const title = (phase: Phase) => phase.phase?.text ?? '';
  const steps = (phase: Phase) => (phase.steps ?? []).map((step) => step.step?.id ?? '').join(' ');
  const { pairs, removed, added } = matchSequence(before.value.phases ?? [], after.value.phases ?? [], {
    identity: title,
    likeness: (a, b) => wordLikeness(steps(a), steps(b)),
    least: 0.3,
  });
  const of = (phase: Phase): Subject => ({ kind: 'phase', id: '', name: title(phase), step: undefined });
  for (const pair of pairs)
    objectChanges(two, { before: pair.before, after: pair.after } as unknown as Values, {
      def: 'procedure/phase',
      keys: UNIT_SHAPES['procedure/phase']?.shape.keys ?? {},
      of: of(pair.after),
      without: new Set(['steps']),
      within: { before: undefined, after: undefined },
    });
  for (const one of removed)
    two.tell({ class: 'says', kind: 'removed', of: of(one) }, one.phase?.node ?? one.node, undefined);
  for (const one of added)
    two.tell({ class: 'says', kind: 'added', of: of(one) }, undefined, one.phase?.node ?? one.node);
}
