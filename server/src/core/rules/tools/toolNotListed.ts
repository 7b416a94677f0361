import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { addToList } from '../support/listEdit';
import { unlistedMentions, unlistedUse } from '../support/unlisted';

export const toolNotListed = defineRule({
  id: 'tool-not-listed',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'safe',
  doc: {
    what: 'A tool is used that the procedure does not list.',
    why: 'The fitter lays out the listed tools and stands at the step without the one that is needed.',
    wrong: inHead(
      'tools: [torque-wrench-10]',
      '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]',
    ),
    right: inHead(
      'tools: [torque-wrench-10, socket-8]',
      '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]',
    ),
  },
  messages: {
    notListed: (name: string) => `The ${name} is used here but is not in the list of tools; add it to the list`,
  },
  check: {
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      const name = procedure === undefined ? undefined : unlistedUse(procedure, ref, 'tool');
      if (procedure === undefined || name === undefined) return;
      ctx.report(ref.range, 'notListed', [name], {
        about: [ref.id],
        fixes: () => addToList(procedure, 'tools', ref.id),
      });
    },
    prose(fact, ctx) {
      const { procedure, step } = ctx;
      if (procedure === undefined || step === undefined) return;
      for (const { id, name, range } of unlistedMentions(procedure, fact, 'tool')) {
        ctx.report(range, 'notListed', [name], { about: [id], fixes: () => addToList(procedure, 'tools', id) });
      }
    },
  },
});
