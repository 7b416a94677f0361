import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const alignmentMissing = defineRule({
  id: 'alignment-missing',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part that was marked before it came off is not aligned with its mark when it is back.',
    why: 'It stands in another position, as if it had never been marked.',
    wrong: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- mark: wheel\n  across: shaft\n- remove: wheel\n- install: wheel',
      ),
      'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }',
    ),
    right: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- mark: wheel\n  across: shaft\n- remove: wheel\n- install: wheel\n- align: wheel\n  to: shaft',
      ),
      'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} is fitted here and never aligned with its mark; add an align instruction`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'alignment-missing')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
