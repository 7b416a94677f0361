import { lastPass } from '../../analysis/statedTorques';
import type { Instruction } from '../../model/generated/types';
import { type ByBuild, type QuantityValue, valuesOf } from '../../model/values';
import { compareQuantities, hasTolerance } from '../../quantity';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { writeScalar } from '../support/mapKey';
import { quantityRange } from '../support/quantityRange';

type Accepting = Instruction & { readonly accept?: ByBuild<QuantityValue> };

const messages = {
  torque: (text: string) => `The torque ${text} has no tolerance; write the one that the maker states`,
  angle: (text: string) => `The angle ${text} has no tolerance; write the one that the maker states`,
  limit: (text: string) => `The limit ${text} is a single value; write a range, a tolerance, or ≤ or ≥ before it`,
  dimension: (text: string) => `The dimension ${text} has no tolerance; write a range or a tolerance`,
};

type Key = keyof typeof messages;

export const toleranceMissing = defineRule({
  id: 'tolerance-missing',
  group: 'quantities',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A torque, an angle, a limit or a dimension that is one single value, with no tolerance, range or limit.',
    why: 'Nobody can say whether the tool is good enough, or whether what was measured may stay.',
    wrong: inStep('- tighten: cap-nut\n  torque: 4.6 N·m'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages,
  check: {
    part({ id, value }, ctx) {
      report(valuesOf(value.torque), 'torque', [id.id], ctx);
      report(valuesOf(value.angle), 'angle', [id.id], ctx);
    },
    family({ value }, ctx) {
      for (const { id, value: dimension } of value.dimensions ?? [])
        report(valuesOf(dimension), 'dimension', [id.id], ctx);
      for (const { id, value: one } of [...(value.limits ?? []), ...(value.readings ?? []), ...(value.checks ?? [])]) {
        report(valuesOf(one.accept), 'limit', [id.id], ctx);
      }
    },
    procedure({ value }, ctx) {
      for (const { id, value: reading } of value.readings ?? [])
        report(valuesOf(reading.accept), 'limit', [id.id], ctx);
    },
    instruction({ instruction }, ctx) {
      report(valuesOf((instruction as Accepting).accept), 'limit', [], ctx);
      if (instruction.verb !== 'tighten') return;
      const ids = (instruction.tighten ?? []).map((ref) => ref.id);
      const last = lastPass(instruction);
      report([...(last === undefined ? [] : [last]), ...valuesOf(instruction.torque)], 'torque', ids, ctx);
      report(valuesOf(instruction.angle), 'angle', ids, ctx);
    },
  },
});

function report(
  values: readonly (QuantityValue | undefined)[],
  key: Key,
  about: readonly string[],
  ctx: RuleContext<typeof messages>,
): void {
  for (const value of values) {
    const { quantity } = value?.reading ?? {};
    if (value === undefined || quantity === undefined || hasTolerance(quantity)) continue;
    const fixes = (): FixDraft[] => fromFamily(value, about, ctx);
    if (quantity.form === 'torque-angle' && quantity.tolerance.kind !== 'none') {
      const { span } = quantity.angle;
      ctx.report(quantityRange(value, span), 'angle', [value.text.slice(span.start, span.end)], { about, fixes });
    } else ctx.report(value.node, key, [value.text.trim()], { about, fixes });
  }
}

/** The same value where the family gives it with its tolerance. */
function fromFamily(value: QuantityValue, ids: readonly string[], ctx: RuleContext<never>): FixDraft[] {
  const { quantity } = value.reading;
  const parts = ctx.procedure === undefined ? [] : ids.map((id) => ctx.family?.part(id));
  const stated = parts.flatMap((part) => [...valuesOf(part?.torque), ...valuesOf(part?.angle)]);
  const texts = stated.flatMap(({ text, reading }) => {
    const other = reading.quantity;
    if (quantity === undefined || other === undefined || other.dimension !== quantity.dimension) return [];
    return compareQuantities(quantity, other) === 'second-says-more' ? [text.trim()] : [];
  });
  return [...new Set(texts)].map((text) => ({
    title: `Write ${text}, as the family states`,
    edits: [writeScalar(value.node, text)],
  }));
}
