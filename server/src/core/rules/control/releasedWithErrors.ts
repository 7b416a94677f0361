import { defineRule } from '../defineRule';
import { inHead } from '../examples';

export const releasedWithErrors = defineRule({
  id: 'released-with-errors',
  group: 'control',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A procedure is released and has errors that no concession lets stand.',
    why: 'A sheet that says “released” is followed at the bench without another look.',
    wrong: inHead('status: released', '- tighten: cap-nut\n  torque: 45'),
    right: inHead('status: draft', '- tighten: cap-nut\n  torque: 45'),
  },
  messages: {
    errors: (count: number) =>
      `The procedure is released with ${count === 1 ? 'an error' : `${count} errors`}; mend ${count === 1 ? 'it' : 'them'}, or make it a draft again`,
  },
  check: {
    outcome({ standing }, ctx) {
      const status = ctx.procedure?.value.status;
      const errors = standing.filter(({ severity }) => severity === 'error');
      if (status?.value !== 'released' || errors.length === 0) return;
      ctx.report(status.node, 'errors', [errors.length], {
        fixes: () => [{ title: 'Make it a draft', edits: [{ range: status.node, text: 'draft' }] }],
      });
    },
  },
});
