import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

const HOT_WHEEL =
  'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [heat] }';

export const notHeated = defineRule({
  id: 'not-heated',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part that must be hot or cold when it is fitted has not been heated or cooled, or has had time to come back to the temperature of the bench.',
    why: 'An interference fit that is forced together cold scores its seat, and the part sits askew.',
    wrong: withFamily(inStep('- remove: [cover-screw, cover, cap-nut, wheel]\n- install: wheel'), HOT_WHEEL),
    right: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut, wheel]\n- heat: wheel\n  until: 120 °C\n- install: wheel'),
      HOT_WHEEL,
    ),
  },
  messages: {
    heat: (part: string) => `The ${part} is not hot when it is fitted; heat it right before`,
    cool: (part: string) => `The ${part} is not cold when it is fitted; cool it right before`,
  },
  check: {
    failure(failure, ctx) {
      const name = nameOf(ctx.procedure, failure.about);
      if (failure.cause === 'not-heated') reportFailure(ctx, failure, 'heat', [name]);
      if (failure.cause === 'not-cooled') reportFailure(ctx, failure, 'cool', [name]);
    },
  },
});
