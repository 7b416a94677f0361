import type { ProseFact } from '../../model/facts';
import type { QuantityValue } from '../../model/values';
import type { BareTorque, QuantityProblem, Unit } from '../../quantity';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { isCutShort } from '../support/cutShort';
import { likeliestFirst } from '../support/familyTorques';
import { bareTorquesIn } from '../support/proseQuantities';
import { quantityRange, writtenAt } from '../support/quantityRange';

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
        if (problem.kind !== 'unit-missing' || isCutShort(value)) continue;
        ctx.report(quantityRange(value, problem.span), 'value', [writtenAt(value, problem.span)], {
          fixes: () => valueFixes(value, problem, ctx),
        });
      }
    },
    prose(fact, ctx) {
      for (const bare of bareTorquesIn(fact.prose)) {
        if (bare.unit.kind !== 'missing') continue;
        const { start, end } = bare.span;
        ctx.report(sourceRange(fact.prose.scalar, start, end), 'prose', [fact.prose.text.slice(start, end)], {
          fixes: () => proseFixes(fact, bare, ctx),
        });
      }
    },
  },
});

function valueFixes(
  value: QuantityValue,
  problem: QuantityProblem & { readonly kind: 'unit-missing' },
  ctx: RuleContext,
): FixDraft[] {
  const at = problem.insertAt;
  const write = (unit: Unit): string => `${value.text.slice(0, at)} ${unit.symbol}${value.text.slice(at)}`;
  const range = quantityRange(value, { start: at, end: at });
  return likeliestFirst(problem.candidates, ctx, write).map((unit) => writeUnit(unit, range));
}

function proseFixes({ prose }: ProseFact, bare: BareTorque, ctx: RuleContext): FixDraft[] {
  const { start, end } = bare.span;
  const written = prose.text.slice(start, end);
  const range = sourceRange(prose.scalar, end, end);
  return likeliestFirst(bare.candidates, ctx, (unit) => `${written} ${unit.symbol}`).map((unit) =>
    writeUnit(unit, range),
  );
}

function writeUnit(unit: Unit, range: ItemRange): FixDraft {
  return { title: `Write ${unit.symbol}`, edits: [{ range, text: ` ${unit.symbol}` }] };
}
