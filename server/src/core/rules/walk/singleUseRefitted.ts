import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const singleUseRefitted = defineRule({
  id: 'single-use-refitted',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part that is always renewed is loosened and then tightened again.',
    why: 'A lock nut or a stretched screw holds once; used again it comes loose in service.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut\n- tighten: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always }',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} is used up and is tightened again; take it off and fit a new one`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'used-again') reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
