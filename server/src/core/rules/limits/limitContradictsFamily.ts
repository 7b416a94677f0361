import type { FamilyView } from '../../analysis/familyView';
import { heldValues, meetings, whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { ByBuild, QuantityValue, Ref } from '../../model/values';
import { compareQuantities, liesWithin } from '../../quantity';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { writeScalar } from '../support/mapKey';

const messages = {
  wider: (name: string, accepted: string, family: string) =>
    `The step accepts ${accepted} for the ${name}, and the family ${family}; accept no more than that`,
};

export const limitContradictsFamily = defineRule({
  id: 'limit-contradicts-family',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A step that measures, works out or checks something, and accepts what the family does not accept. A step may be stricter than the family.',
    why: 'The fitter passes a part that is worn out by the maker’s limit.',
    wrong: inStep('- measure: end-play\n  accept: 0.04..0.12 mm'),
    right: inStep('- measure: end-play\n  accept: 0.05..0.09 mm'),
  },
  messages,
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure?.family !== undefined) compare(procedure, procedure.family, view, ctx);
    },
  },
});

/** What is accepted by build, with what is named. */
interface Accepting {
  readonly ref: Ref | undefined;
  readonly accept: ByBuild<QuantityValue> | undefined;
}

function accepting({ instruction }: InstructionView): Accepting | undefined {
  switch (instruction.verb) {
    case 'measure':
      return { ref: instruction.measure, accept: instruction.accept };
    case 'calculate':
      return { ref: instruction.calculate, accept: instruction.accept };
    case 'check':
      return { ref: instruction.check?.is === 'ref' ? instruction.check.ref : undefined, accept: instruction.accept };
    default:
      return undefined;
  }
}

/** The family's own entry; a reading that the procedure declares itself hides none of the family's limits. */
function stated({ value }: FamilyView, id: string) {
  for (const entries of [value.limits, value.readings]) {
    const found = entries?.find((one) => one.id.id === id)?.value;
    if (found !== undefined) return { accept: found.accept, name: found.name?.text ?? id };
  }
  const check = value.checks?.find((one) => one.id.id === id)?.value;
  return check && { accept: check.accept, name: `check ${id}` };
}

function compare(
  { space }: ProcedureView,
  family: FamilyView,
  view: InstructionView,
  ctx: RuleContext<typeof messages>,
): void {
  const { ref, accept } = accepting(view) ?? {};
  const other = ref === undefined || accept === undefined ? undefined : stated(family, ref.id);
  if (ref === undefined || other?.accept === undefined) return;
  const own = heldValues(accept, space, view.where).held;
  for (const { first, second, where } of meetings(own, heldValues(other.accept, space, view.where).held)) {
    if (isWithin(first, second)) continue;
    const text = second.text.trim();
    ctx.report(first.node, 'wider', [other.name, first.text.trim(), text], {
      about: [ref.id],
      ...whereUnless(where, view.where, space),
      related: [{ range: second.node, document: family.document, message: `The family accepts ${text}` }],
      fixes: (): FixDraft[] => [
        { title: `Write ${text}, as the family states`, edits: [writeScalar(first.node, text)] },
      ],
    });
  }
}

/** What cannot be read is told by other rules, and so is a single value without a tolerance. */
function isWithin(inner: QuantityValue, outer: QuantityValue): boolean {
  const [own, family] = [inner.reading.quantity, outer.reading.quantity];
  if (own === undefined || family === undefined) return true;
  return liesWithin(own, family) || compareQuantities(own, family) === 'same';
}
