import type { ProcedureView } from '../../analysis/procedureView';
import type { Failure } from '../../walk/failure';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const checkMissing = defineRule({
  id: 'check-missing',
  group: 'walk',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A check of the family is not made after the last touch of what it depends on.',
    why: 'What the check would have found goes out of the door.',
    wrong: inStep('- loosen: cover-screw'),
    right: inStep('- check: free-turn'),
  },
  messages: {
    never: (check: string) => `The check ${check} is never made; make it at the end`,
    early: (check: string) =>
      `The check ${check} is not made again after what it depends on was touched; make it again at the end`,
    failed: (check: string) =>
      `The check ${check} may fail here and is not made again then; make it again at the end of that way`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'check-missing') return;
      // What was made, and lost its worth though nothing was touched, failed.
      const key = failure.because === undefined ? 'never' : failure.undone === undefined ? 'failed' : 'early';
      reportFailure(ctx, atItsName(failure, ctx.procedure), key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});

/** The check that came too early is named behind its verb, which alone the walk knows. */
function atItsName(failure: Failure, procedure: ProcedureView | undefined): Failure {
  const { because } = failure;
  const made = instructionAt(procedure, because?.at);
  if (because === undefined || made?.verb !== 'check' || made.check?.is !== 'ref') return failure;
  return { ...failure, because: { ...because, at: made.check.ref.range } };
}
