import { convert, formatQuantity, type Quantity, type QuantityProblem } from '../../quantity';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { listed } from '../support/phrases';
import { quantitiesIn } from '../support/proseQuantities';
import { quantityRange } from '../support/quantityRange';

/** Gives the source range of a stretch of the text in which the quantity stands. */
type Locate = (span: Span) => ItemRange;

const messages = {
  disagree: (second: string, first: string, converted: string) =>
    `The ${second} in brackets is not ${first}, which is ${converted}; correct whichever is wrong`,
  otherUnit: (second: string, first: string, converted: string, units: string) =>
    `The ${second} in brackets is not ${first}, which is ${converted}; the number would be right in ${units}`,
};

export const dualValuesDisagree = defineRule({
  id: 'dual-values-disagree',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A value and the same in another unit, in brackets behind it, that are not the same once rounded.',
    why: 'Who owns a wrench in the one unit tightens to another torque than who owns one in the other.',
    wrong: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m (51 ± 3 lbf·in)'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m (41 ± 3 lbf·in)'),
  },
  messages,
  check: {
    quantity({ value }, ctx) {
      const { quantity, problems } = value.reading;
      reportAll(value.text, quantity, problems, (span) => quantityRange(value, span), ctx);
    },
    prose({ prose }, ctx) {
      const locate: Locate = ({ start, end }) => sourceRange(prose.scalar, start, end);
      for (const { quantity, problems } of quantitiesIn(prose)) {
        reportAll(prose.text, quantity, problems, locate, ctx);
      }
    },
  },
});

function reportAll(
  text: string,
  quantity: Quantity | undefined,
  problems: readonly QuantityProblem[],
  locate: Locate,
  ctx: RuleContext<typeof messages>,
): void {
  for (const problem of problems) {
    if (problem.kind !== 'duals-disagree' || quantity === undefined) continue;
    const second = text.slice(problem.span.start, problem.span.end);
    const first = formatQuantity(quantity);
    const units = listed(
      problem.rightIn.map((unit) => unit.symbol),
      'or',
    );
    const details = { fixes: () => fixes(quantity, problem, locate) };
    const range = locate(problem.span);
    if (units === '') ctx.report(range, 'disagree', [second, first, problem.converted], details);
    else ctx.report(range, 'otherUnit', [second, first, problem.converted, units], details);
  }
}

/** The bracket follows the first value as a rule; still, either may be the slip. */
function fixes(
  quantity: Quantity,
  problem: QuantityProblem & { readonly kind: 'duals-disagree' },
  locate: Locate,
): FixDraft[] {
  const { dual } = quantity;
  if (dual === null) return [];
  const inBrackets = {
    title: `Write ${problem.converted} in brackets`,
    edits: [{ range: locate(problem.span), text: problem.converted }],
  };
  const units = problem.rightIn.map((unit) => ({
    title: `Write ${unit.symbol} in brackets`,
    edits: [{ range: locate(dual.unitSpan), text: unit.symbol }],
  }));
  const back = convert(dual, quantity.unit);
  if (back === null || quantity.form === 'torque-angle') return [inBrackets, ...units];
  const text = formatQuantity(back);
  return [
    inBrackets,
    ...units,
    { title: `Write ${text} before the brackets`, edits: [{ range: locate(quantity.span), text }] },
  ];
}
