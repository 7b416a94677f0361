import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { removeUnused, unusedInList } from '../support/unused';

export const toolUnused = defineRule({
  id: 'tool-unused',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A tool is listed that no instruction uses.',
    why: 'The fitter fetches it for nothing, or an instruction that needs it forgot to say so.',
    wrong: inHead('tools: [torque-wrench-10, dial-gauge]', '- measure: end-play\n  with: dial-gauge'),
    right: inHead('tools: [dial-gauge]', '- measure: end-play\n  with: dial-gauge'),
  },
  messages: {
    unused: (name: string) =>
      `The ${name} is listed but no instruction uses it; take it off the list or name it where it is used`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const { ref, name } of unusedInList(procedure, 'tool')) {
        ctx.report(ref.range, 'unused', [name], {
          about: [ref.id],
          fixes: () => removeUnused(procedure, 'tool', ref),
        });
      }
    },
  },
});
