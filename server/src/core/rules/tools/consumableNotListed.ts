import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { addToList } from '../support/listEdit';
import { unlistedMentions, unlistedUse } from '../support/unlisted';

export const consumableNotListed = defineRule({
  id: 'consumable-not-listed',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'safe',
  doc: {
    what: 'A consumable is used that the procedure does not list.',
    why: 'The fitter lays out what is listed and stands at the step without it, often with a clean part in hand that does not stay clean.',
    wrong: inHead('consumables: [threadlocker]', '- clean: cap-nut\n  using: degreaser'),
    right: inHead('consumables: [threadlocker, degreaser]', '- clean: cap-nut\n  using: degreaser'),
  },
  messages: {
    notListed: (name: string) => `The ${name} is used here but is not in the list of consumables; add it to the list`,
  },
  check: {
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      const name = procedure === undefined ? undefined : unlistedUse(procedure, ref, 'consumable');
      if (procedure === undefined || name === undefined) return;
      ctx.report(ref.range, 'notListed', [name], {
        about: [ref.id],
        fixes: () => addToList(procedure, 'consumables', ref.id),
      });
    },
    prose(fact, ctx) {
      const { procedure, step } = ctx;
      if (procedure === undefined || step === undefined) return;
      for (const { id, name, range } of unlistedMentions(procedure, fact, 'consumable')) {
        ctx.report(range, 'notListed', [name], { about: [id], fixes: () => addToList(procedure, 'consumables', id) });
      }
    },
  },
});
