import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

const SET =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always, comes-with: [lock-plate] }\n  lock-plate: { name: lock plate, sits-on: core, behind: [cap-nut] }';

export const setMixed = defineRule({
  id: 'set-mixed',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Of parts that are renewed as a set, one is new at the end and another was in use before.',
    why: 'Parts of a set are matched or lock once: an old one beside a new one works loose or sits askew.',
    wrong: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut, lock-plate]\n- install: [lock-plate, cap-nut]\n- tighten: cap-nut',
      ),
      SET,
    ),
    right: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut, lock-plate]\n- discard: lock-plate\n- install: [lock-plate, cap-nut]\n- tighten: cap-nut',
      ),
      SET,
    ),
  },
  messages: {
    fails: (part: string, other: string) =>
      `The ${part} was in use before and is kept beside a new ${other}; they are renewed as a set, so renew it as well`,
  },
  check: {
    failure(failure, ctx) {
      const names = [nameOf(ctx.procedure, failure.about), nameOf(ctx.procedure, failure.other)] as const;
      if (failure.cause === 'set-mixed') reportFailure(ctx, failure, 'fails', [...names]);
    },
  },
});
