import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { joinedIds, joinedText, splitFix } from '../support/joinedIds';
import { meant, unknownInStores, writeKnownId } from '../support/unknownIds';

export const consumableUnknown = defineRule({
  id: 'consumable-unknown',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A consumable is named that none of the stores of the procedure holds.',
    why: 'Nobody can fetch it, and nothing is known of its hazards or of how long it takes to set.',
    wrong: inHead('consumables: [threadlocker, degraser]'),
    right: inHead('consumables: [threadlocker, degreaser]'),
  },
  messages: {
    joined: (ids: readonly string[]) => joinedText(ids),
    unknown: (id: string, near: string) => `No stores of this procedure have a consumable ${id}; ${near}`,
    tool: (id: string) => `"${id}" is a tool in the stores; name it under "with" or "tools"`,
  },
  check: {
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined) return;
      const unknown = unknownInStores(ctx.around, procedure, ref, 'consumable');
      if (unknown === undefined) return;
      if (procedure.tools.has(ref.id)) {
        ctx.report(ref.range, 'tool', [ref.id], { about: [ref.id] });
        return;
      }
      const joined = joinedIds(ref.id, (id) => procedure.consumables.has(id));
      if (joined !== undefined) {
        ctx.report(ref.range, 'joined', [joined], { about: joined, fixes: () => [splitFix(ref, joined)] });
        return;
      }
      ctx.report(ref.range, 'unknown', [ref.id, meant(unknown.near, 'add it to the stores')], {
        about: [ref.id],
        fixes: () => writeKnownId(procedure, ref, unknown.near),
      });
    },
  },
});
