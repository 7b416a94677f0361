import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const fittedWhileBlocked = defineRule({
  id: 'fitted-while-blocked',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted when something that goes on after it is in place already.',
    why: 'The fitter has to take it all off again, with seals and lock parts used once more.',
    wrong: inStep('- remove: [cover-screw, cover, cap-nut]\n- install: [cover, cap-nut]'),
    right: inStep('- remove: [cover-screw, cover, cap-nut]\n- install: [cap-nut, cover]'),
  },
  messages: {
    fails: (part: string, other: string) =>
      `The ${part} is fitted when the ${other} is already in its way; fit the ${part} before the ${other}`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'in-the-way')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
