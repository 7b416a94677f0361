import { defineRule } from '../defineRule';
import { inStep } from '../examples';
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
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'check-missing') return;
      const key = failure.because === undefined ? 'never' : 'early';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
