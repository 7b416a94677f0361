import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { useFixes } from '../support/onlyNamedFixes';
import { listed } from '../support/phrases';
import { onlyNamed } from '../support/storesUses';

export const toolNamedInProse = defineRule({
  id: 'tool-named-in-prose',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A sentence of an instruction names a tool of the stores in plain words, but the instruction does not have it under "with".',
    why: 'The sheet does not list it for the step, and its size, range and calibration go unchecked.',
    wrong: inStep('- say: Set the dial gauge on the end of the shaft.'),
    right: inStep('- say: Set the dial gauge on the end of the shaft.\n  with: dial-gauge'),
  },
  messages: {
    onlyNamed: (words: string, ids: string) => `"${words}" stands in this sentence but not under "with"; add ${ids}`,
  },
  check: {
    instruction({ instruction }, ctx) {
      const { procedure, step } = ctx;
      if (procedure === undefined) return;
      for (const { ids, from, to, sentence } of onlyNamed(procedure, step, instruction, 'tool')) {
        const { scalar, text } = sentence.prose;
        ctx.report(sourceRange(scalar, from, to), 'onlyNamed', [text.slice(from, to), listed(ids, 'or')], {
          about: ids,
          fixes: () => useFixes(procedure, instruction, 'tool', ids),
        });
      }
    },
  },
});
