import { findBareTorques } from '../../quantity';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { quantityRange } from '../support/quantityRange';

export const torqueUnitMissing = defineRule({
  id: 'torque-unit-missing',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A torque that has no unit, as a value or in a sentence.',
    why: 'The fitter guesses. 45 read as N·m on a nut that wants 45 lbf·in is nine times too much and breaks the shaft.',
    wrong: inStep('- tighten: cap-nut\n  torque: 45'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages: {
    value: (text: string) => `The torque ${text} has no unit; write the one that the maker states`,
    prose: (text: string) => `The torque "${text}" has no unit; write the one that the maker states`,
  },
  check: {
    quantity({ value }, ctx) {
      if (value.dimension !== 'torque') return;
      for (const problem of value.reading.problems) {
        if (problem.kind !== 'unit-missing') continue;
        const at = quantityRange(value, { start: problem.insertAt, end: problem.insertAt });
        ctx.report(quantityRange(value, problem.span), 'value', [value.text.trim()], {
          fixes: () =>
            problem.candidates.map((unit) => ({
              title: `Write ${unit.symbol}`,
              edits: [{ range: at, text: ` ${unit.symbol}` }],
            })),
        });
      }
    },
    prose({ prose }, ctx) {
      for (const bare of findBareTorques(prose.text)) {
        if (bare.unit.kind !== 'missing') continue;
        const range = sourceRange(prose.scalar, bare.span.start, bare.span.end);
        ctx.report(range, 'prose', [prose.text.slice(bare.span.start, bare.span.end)]);
      }
    },
  },
});
