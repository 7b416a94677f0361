import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { useFixes } from '../support/onlyNamedFixes';
import { listed } from '../support/phrases';
import { onlyNamed } from '../support/storesUses';

export const consumableNamedInProse = defineRule({
  id: 'consumable-named-in-prose',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A sentence of an instruction names a consumable of the stores in plain words, but the instruction does not have it under "using".',
    why: 'The sheet does not list it for the step, and its hazards are not warned of.',
    wrong: inStep('- say: Wipe the face with degreaser.'),
    right: inStep('- say: Wipe the face with degreaser.\n  using: degreaser'),
  },
  messages: {
    onlyNamed: (words: string, ids: string) => `"${words}" stands in this sentence but not under "using"; add ${ids}`,
  },
  check: {
    instruction({ instruction }, ctx) {
      const { procedure, step } = ctx;
      if (procedure === undefined) return;
      for (const { ids, from, to, sentence } of onlyNamed(procedure, step, instruction, 'consumable')) {
        const { scalar, text } = sentence.prose;
        ctx.report(sourceRange(scalar, from, to), 'onlyNamed', [text.slice(from, to), listed(ids, 'or')], {
          about: ids,
          fixes: () => useFixes(procedure, instruction, 'consumable', ids),
        });
      }
    },
  },
});
