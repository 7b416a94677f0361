import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const notInspected = defineRule({
  id: 'not-inspected',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that was not inspected since it came off, although the family asks for it.',
    why: 'A cracked or worn part goes back into the unit.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [inspect] }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- inspect: cap-nut\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [inspect] }',
    ),
  },
  messages: {
    fails: (part: string) =>
      `The ${part} is fitted without having been inspected since it came off; inspect it before it is fitted`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'not-inspected')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
