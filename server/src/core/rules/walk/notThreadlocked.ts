import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const notThreadlocked = defineRule({
  id: 'not-threadlocked',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that was not given threadlocker since it came off, although the family asks for it.',
    why: 'The fastener works loose in service.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [threadlock] }',
    ),
    right: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut',
      ),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [threadlock] }',
    ),
  },
  messages: {
    fails: (part: string) =>
      `The ${part} is fitted without having been given threadlocker since it came off; put threadlocker on it before it is fitted`,
    bare: (part: string) =>
      `The ${part} is fitted without threadlocker: nothing puts it on after the thread was cleaned; put threadlocker on it before it is fitted`,
    broken: (part: string) =>
      `The ${part} is tightened again after it was loosened, which broke its threadlocker; take it off and put new threadlocker on it`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'not-threadlocked') return;
      const before = failure.because?.what;
      const key = before === 'loosened' ? 'broken' : before === 'cleaned' ? 'bare' : 'fails';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
