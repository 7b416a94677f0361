import type { Prose, QuantityValue } from '../../model/values';
import type { BareTorque, QuantityProblem, Unit } from '../../quantity';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { likeliestFirst } from '../support/familyTorques';
import { listed } from '../support/phrases';
import { bareTorquesIn } from '../support/proseQuantities';
import { quantityRange } from '../support/quantityRange';

export const unitAmbiguous = defineRule({
  id: 'unit-ambiguous',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A unit that could be more than one, such as pounds or kilograms for a torque, as a value or in a sentence.',
    why: 'Each reader takes the unit that is usual in that shop. 44 lb read as lbf·ft is twelve times the 44 lbf·in that was meant.',
    wrong: inStep('- tighten: cap-nut\n  torque: 41 ± 3 lb'),
    right: inStep('- tighten: cap-nut\n  torque: 41 ± 3 lbf·in'),
  },
  messages: {
    ambiguous: (written: string, units: string) =>
      units === '' ? `The unit ${written} says too little` : `The unit ${written} says too little; write ${units}`,
  },
  check: {
    quantity({ value }, ctx) {
      for (const problem of value.reading.problems) {
        if (problem.kind !== 'unit-ambiguous') continue;
        const { written, candidates } = problem;
        ctx.report(quantityRange(value, problem.span), 'ambiguous', [written, symbols(candidates)], {
          fixes: () => valueFixes(value, problem, ctx),
        });
      }
    },
    prose({ prose }, ctx) {
      for (const bare of bareTorquesIn(prose)) {
        if (bare.unit.kind !== 'ambiguous') continue;
        const { written, span } = bare.unit;
        const range = sourceRange(prose.scalar, span.start, span.end);
        ctx.report(range, 'ambiguous', [written, symbols(bare.candidates)], {
          fixes: () => proseFixes(prose, bare, range, ctx),
        });
      }
    },
  },
});

function symbols(units: readonly Unit[]): string {
  return listed(
    units.map((unit) => unit.symbol),
    'or',
  );
}

function valueFixes(
  value: QuantityValue,
  problem: QuantityProblem & { readonly kind: 'unit-ambiguous' },
  ctx: RuleContext,
): FixDraft[] {
  const { span, candidates } = problem;
  const { text } = value;
  const gap = (unit: Unit): string => (unit.gap === 'space' && /\d$/.test(text.slice(0, span.start)) ? ' ' : '');
  const write = (unit: Unit): string => text.slice(0, span.start) + gap(unit) + unit.symbol + text.slice(span.end);
  const ordered = value.dimension === 'torque' ? likeliestFirst(candidates, ctx, write) : candidates;
  return ordered.map((unit) => writeUnit(unit, quantityRange(value, span), gap(unit)));
}

function proseFixes(prose: Prose, bare: BareTorque, range: ItemRange, ctx: RuleContext): FixDraft[] {
  if (bare.unit.kind !== 'ambiguous') return [];
  const number = prose.text.slice(bare.span.start, bare.unit.span.start).trim();
  const gap = /\d$/.test(prose.text.slice(0, bare.unit.span.start)) ? ' ' : '';
  return likeliestFirst(bare.candidates, ctx, (unit) => `${number} ${unit.symbol}`).map((unit) =>
    writeUnit(unit, range, gap),
  );
}

function writeUnit(unit: Unit, range: ItemRange, gap: string): FixDraft {
  return { title: `Write ${unit.symbol}`, edits: [{ range, text: gap + unit.symbol }] };
}
