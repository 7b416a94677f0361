import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const markMissing = defineRule({
  id: 'mark-missing',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part that must go back in its balanced position comes off without a mark.',
    why: 'Nobody can find the position again, and the rotor runs out of balance.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- remove: wheel'),
      'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- mark: wheel\n  across: shaft\n- remove: wheel'),
      'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} comes off without a mark, but must go back in its position; mark it first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'mark-missing')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
