import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { joinedIds, joinedText, splitFix } from '../support/joinedIds';
import { meant, unknownInStores, writeKnownId } from '../support/unknownIds';

export const toolUnknown = defineRule({
  id: 'tool-unknown',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A tool is named that none of the stores of the procedure holds.',
    why: 'Nobody can fetch it, and neither its size nor its range can be checked against the work.',
    wrong: inHead('tools: [torque-wrench-10, socket-9]'),
    right: inHead('tools: [torque-wrench-10, socket-8]'),
  },
  messages: {
    joined: (ids: readonly string[]) => joinedText(ids),
    unknown: (id: string, near: string) => `No stores of this procedure have a tool ${id}; ${near}`,
    consumable: (id: string) => `"${id}" is a consumable in the stores; name it under "using" or "consumables"`,
  },
  check: {
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined) return;
      const unknown = unknownInStores(ctx.around, procedure, ref, 'tool');
      if (unknown === undefined) return;
      if (procedure.consumables.has(ref.id)) {
        ctx.report(ref.range, 'consumable', [ref.id], { about: [ref.id] });
        return;
      }
      const joined = joinedIds(ref.id, (id) => procedure.tools.has(id));
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
