import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const leftIn = defineRule({
  id: 'left-in',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A temporary blank, plug or pin, a part that was fitted on trial, or one that is not part of the finished unit is still in place when the work is over.',
    why: 'It blocks oil or air, or takes the place of the right part: the unit is destroyed at the first start.',
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
    trial: (part: string) =>
      `The ${part} is fitted on trial only and is still in place when the work is over; take it off, or fit it for good`,
    foreign: (part: string) =>
      `The ${part} is still in the unit when the work is over, but does not belong to the finished unit; take it off`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'left-in') return;
      const fitting = instructionAt(ctx.procedure, failure.because?.at);
      const isTrial = fitting?.verb === 'install' && fitting.trial?.value === true;
      const isTemporary = ctx.family?.part(failure.about)?.temporary?.value === true;
      const key = isTemporary ? 'fails' : isTrial ? 'trial' : 'foreign';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
