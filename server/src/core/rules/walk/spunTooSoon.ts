import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

const ROTOR =
  'balance-groups:\n  rotor: { name: rotor, members: [wheel, core], grade: G 6.3 }\nparts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }';
const FIT =
  '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: wheel\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut\n- tighten: cap-nut';

export const spunTooSoon = defineRule({
  id: 'spun-too-soon',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A group is balanced while a fastener of one of its members is loose, or before its threadlocker has set.',
    why: 'A rotor that is spun on a loose nut walks on its seat; one that is spun on wet threadlocker lets the nut turn.',
    wrong: withFamily(inStep(`${FIT}\n- balance: rotor`), ROTOR),
    right: withFamily(inStep(`${FIT}\n- wait: cure\n  of: threadlocker\n- balance: rotor`), ROTOR),
  },
  messages: {
    loose: (group: string, fastener: string) =>
      `The ${group} is spun while the ${fastener} is not tight; tighten it first`,
    uncured: (group: string, fastener: string) =>
      `The ${group} is spun before the threadlocker of the ${fastener} has set; wait until it has cured`,
  },
  check: {
    failure(failure, ctx) {
      const names = [nameOf(ctx.procedure, failure.about), nameOf(ctx.procedure, failure.other)] as const;
      if (failure.cause === 'spun-loose') reportFailure(ctx, failure, 'loose', [...names]);
      if (failure.cause === 'spun-uncured') reportFailure(ctx, failure, 'uncured', [...names]);
    },
  },
});
