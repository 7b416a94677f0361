import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const leftIn = defineRule({
  id: 'left-in',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A temporary blank, plug or pin is still in the unit when the work is over.',
    why: 'It blocks oil or air: the unit is destroyed at the first start.',
    wrong: withFamily(
      inStep('- install: blank'),
      'parts:\n  blank: { name: inlet blank, temporary: true, sits-on: core }',
    ),
    right: withFamily(
      inStep('- install: blank\n- remove: blank'),
      'parts:\n  blank: { name: inlet blank, temporary: true, sits-on: core }',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} is still in the unit when the work is over; take it out`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'left-in') reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
