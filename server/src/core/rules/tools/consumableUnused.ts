import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { removeUnused, unusedInList } from '../support/unused';

export const consumableUnused = defineRule({
  id: 'consumable-unused',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A consumable is listed that no instruction uses.',
    why: 'The fitter fetches it for nothing, or an instruction that needs it forgot to say so.',
    wrong: inHead('consumables: [threadlocker, degreaser]', '- clean: cap-nut\n  using: degreaser'),
    right: inHead('consumables: [degreaser]', '- clean: cap-nut\n  using: degreaser'),
  },
  messages: {
    unused: (name: string) =>
      `The ${name} is listed but no instruction uses it; take it off the list or name it where it is used`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const { ref, name } of unusedInList(procedure, 'consumable')) {
        ctx.report(ref.range, 'unused', [name], {
          about: [ref.id],
          fixes: () => removeUnused(procedure, 'consumable', ref),
        });
      }
    },
  },
});
