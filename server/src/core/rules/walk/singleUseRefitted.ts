import { defineRule } from '../defineRule';
import { inStep, withFamily, withKit } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

const SINGLE_USE =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always }';
const KIT = '- { item: 10, part: cap-nut, number: PK-105, quantity: 1 }';

export const singleUseRefitted = defineRule({
  id: 'single-use-refitted',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part that is always renewed is loosened and then tightened again.',
    why: 'A lock nut or a stretched screw holds once; used again it comes loose in service.',
    wrong: withKit(
      withFamily(inStep('- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut'), SINGLE_USE),
      KIT,
    ),
    right: withKit(
      withFamily(inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut\n- tighten: cap-nut'), SINGLE_USE),
      KIT,
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
