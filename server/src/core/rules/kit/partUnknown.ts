import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { meant, unknownId } from '../support/unknownIds';

export const partUnknown = defineRule({
  id: 'part-unknown',
  group: 'kit',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is named that the family does not declare.',
    why: 'The sheet cannot say which part it is, and nothing about it can be checked: thread, torque, kit, order of work.',
    wrong: inStep('- install: cover-seals'),
    right: inStep('- install: cover-seal'),
  },
  messages: {
    unknown: (id: string, near: string) => `The family has no part ${id}; ${near}`,
  },
  check: {
    ref({ ref }, ctx) {
      const unknown = ref.kind === 'part' ? unknownId(ctx.around, ref) : undefined;
      if (unknown === undefined) return;
      ctx.report(ref.range, 'unknown', [ref.id, meant(unknown.near, 'declare it in the family')], {
        about: [ref.id],
        fixes: () => unknown.near.map(({ id }) => ({ title: `Write ${id}`, edits: [{ range: ref.range, text: id }] })),
      });
    },
  },
});
