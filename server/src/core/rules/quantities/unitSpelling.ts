import type { QuantityProblem } from '../../quantity';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { quantitiesIn } from '../support/proseQuantities';
import { quantityRange } from '../support/quantityRange';

type SpellingProblem = QuantityProblem & { readonly kind: 'unit-spelling' };

const messages = {
  symbol: (written: string, symbol: string) => `The standard symbol for ${written} is ${symbol}; write that`,
  doubtful: (written: string, symbol: string) =>
    `The unit ${written} is read as ${symbol}, though it could mean something else; write ${symbol} if that is what is meant`,
  gapBefore: (symbol: string) =>
    `The number runs into ${symbol}, or stands too far from it; write one space between them`,
  noGapBefore: (symbol: string) => `A space stands between the number and ${symbol}; write them without one`,
};

export const unitSpelling = defineRule({
  id: 'unit-spelling',
  group: 'quantities',
  since: '0.1.0',
  severity: 'info',
  fix: 'safe',
  doc: {
    what: 'A unit that is understood but not written with its standard symbol, or without one space before it.',
    why: 'One unit in several spellings is read as several units, and a number that runs into its unit is misread.',
    wrong: inStep('- tighten: cap-nut\n  torque: 41 ± 3 in-lb'),
    right: inStep('- tighten: cap-nut\n  torque: 41 ± 3 lbf·in'),
  },
  messages,
  check: {
    quantity({ value }, ctx) {
      for (const problem of value.reading.problems) {
        if (problem.kind === 'unit-spelling') report(problem, quantityRange(value, problem.span), ctx);
      }
    },
    prose({ prose }, ctx) {
      // In a sentence "five minutes" is good English; a torque in words is what the bench gets wrong.
      for (const { dimension, problems } of quantitiesIn(prose)) {
        if (dimension !== 'torque') continue;
        for (const problem of problems) {
          const { start, end } = problem.span;
          if (problem.kind === 'unit-spelling') report(problem, sourceRange(prose.scalar, start, end), ctx);
        }
      }
    },
  },
});

function report(problem: SpellingProblem, range: ItemRange, ctx: RuleContext<typeof messages>): void {
  const { written, unit, reason, doubtful } = problem;
  const details = { fixes: () => fixes(problem, range) };
  if (doubtful) ctx.report(range, 'doubtful', [written, unit.symbol], details);
  else if (reason === 'symbol') ctx.report(range, 'symbol', [written, unit.symbol], details);
  else ctx.report(range, unit.gap === 'space' ? 'gapBefore' : 'noGapBefore', [unit.symbol], details);
}

function fixes({ unit, doubtful, replacement, reason }: SpellingProblem, range: ItemRange): FixDraft[] {
  if (replacement === undefined) return [];
  const title = reason === 'symbol' ? `Write ${unit.symbol}` : 'Mend the space';
  return [{ title, safety: doubtful ? 'suggestion' : 'safe', edits: [{ range, text: replacement }] }];
}
