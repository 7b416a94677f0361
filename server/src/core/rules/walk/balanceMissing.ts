import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const balanceMissing = defineRule({
  id: 'balance-missing',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A group with a new member is not balanced after it was put together.',
    why: 'At full speed the rotor destroys its bearings.',
    wrong: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- remove: wheel\n- install: [wheel, cap-nut]\n- tighten: cap-nut',
      ),
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: always }\nbalance-groups:\n  rotor: { name: rotor, members: [wheel], permissible: 0.2 g·mm }',
    ),
    right: withFamily(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- remove: wheel\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n- balance: rotor',
      ),
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: always }\nbalance-groups:\n  rotor: { name: rotor, members: [wheel], permissible: 0.2 g·mm }',
    ),
  },
  messages: {
    fails: (group: string) =>
      `The ${group} gets a new member and is not balanced afterwards; balance it once its parts have their torque`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'balance-missing')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
