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
    bare: (part: string) =>
      `The ${part} bears no mark to go by here; mark it before it comes off, so that no cleaning takes the mark away`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'mark-missing') return;
      // Something is to blame only where a mark is looked for that was never made, or that is gone.
      const key = failure.because === undefined ? 'fails' : 'bare';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
