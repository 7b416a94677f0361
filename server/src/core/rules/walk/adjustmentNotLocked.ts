import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { listed } from '../support/phrases';
import { nameOf, reportFailure } from '../support/walkFailure';

export const adjustmentNotLocked = defineRule({
  id: 'adjustment-not-locked',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'An adjustment is set and what locks it is not tightened afterwards.',
    why: 'It turns by itself in service, and the setting is lost.',
    wrong: withFamily(
      inStep('- loosen: lock-nut\n  with: socket-10\n- adjust: rod\n  until: it just touches'),
      'parts:\n  rod: { name: rod, sits-on: core, locked-by: [lock-nut] }\n  lock-nut: { name: lock nut, kind: nut, sits-on: core, thread: M6×1, hand: right, torque: 4 ± 0.4 N·m }',
    ),
    right: withFamily(
      inStep(
        '- loosen: lock-nut\n  with: socket-10\n- adjust: rod\n  until: it just touches\n- tighten: lock-nut\n  torque: 4 ± 0.4 N·m\n  with: [torque-wrench-10, socket-10]',
      ),
      'parts:\n  rod: { name: rod, sits-on: core, locked-by: [lock-nut] }\n  lock-nut: { name: lock nut, kind: nut, sits-on: core, thread: M6×1, hand: right, torque: 4 ± 0.4 N·m }',
    ),
  },
  messages: {
    fails: (part: string, locks: string) =>
      `The ${part} is set here and never locked; lock it with ${locks} afterwards`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'adjustment-open') return;
      const { procedure } = ctx;
      const locks = ctx.family?.part(failure.about)?.lockedBy ?? [];
      const names = locks.map((ref) => `the ${nameOf(procedure, ref.id)}`);
      reportFailure(ctx, failure, 'fails', [nameOf(procedure, failure.about), listed(names, 'or')]);
    },
  },
});
