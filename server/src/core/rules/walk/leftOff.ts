import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const leftOff = defineRule({
  id: 'left-off',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part of the finished unit is not in place when the work is over.',
    why: 'It stays on the bench, and the unit leaks, rubs or falls apart.',
    wrong: inStep('- remove: [cover-screw, cover, cover-seal]\n- install: [cover, cover-screw]'),
    right: inStep('- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover, cover-screw]'),
  },
  messages: {
    fails: (part: string) => `The ${part} is not in place when the work is over; fit it before the end`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'left-off') reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
