import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const handNotIdentified = defineRule({
  id: 'hand-not-identified',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is turned before the bench has found out the hand of its thread.',
    why: 'A left-hand nut that is loosened the usual way is tightened until it breaks off.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover]\n- loosen: cap-nut'),
      'identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { nut-hand=left: left, nut-hand=right: right }, torque: 4.6 ± 0.3 N·m, behind: [cover] }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover]\n- identify: nut-hand\n- loosen: cap-nut'),
      'identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { nut-hand=left: left, nut-hand=right: right }, torque: 4.6 ± 0.3 N·m, behind: [cover] }',
    ),
  },
  messages: {
    fails: (part: string, outcome: string) =>
      `The ${part} is turned before the ${outcome} is identified; identify it first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'hand-unknown')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
