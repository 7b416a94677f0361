import type { FamilyView } from '../../analysis/familyView';
import { toolIds } from '../../analysis/instructions';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { type FitCase, fitCases } from '../../workings/fitSizes';
import { temperedAt } from '../../workings/fitTrace';
import { fitWorking } from '../../workings/fitWorking';
import { lengthText } from '../../workings/limitText';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { walkedWhere } from '../support/walkedWhere';

const FAMILY = `parts:
  hub: { name: hub, kind: wheel, sits-on: core, fit: { with: core, bore: hub-bore, shaft: core-nose } }
dimensions:
  hub-bore: 20.000..20.010 mm
  core-nose: 20.020..20.030 mm`;

const messages = {
  cold: (name: string, tight: string) =>
    `The ${name} is fitted cold, and has at least ${tight} of interference; heat it, cool what it goes onto, or press it`,
};

export const tightFitCold = defineRule({
  id: 'tight-fit-cold',
  group: 'limits',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A part that is larger than its bore in every case is fitted with an install instruction, and neither part is hot or cold at that moment. A fit that may have clearance is left alone, and so is one that is driven on with a press, a puller or a hammer, or a part that the family asks to be heated, which a rule of its own tells.',
    why: 'Somebody finds a hammer.',
    wrong: withFamily(inStep('- remove: hub\n- install: hub'), FAMILY),
    right: withFamily(inStep('- remove: hub\n- press: hub'), FAMILY),
  },
  messages,
  check: {
    procedure(procedure, ctx) {
      const { family } = procedure;
      if (family === undefined) return;
      for (const { step, view } of fittedTight(procedure).flat()) lookAt(procedure, family, view, ctx.at(step, view));
    },
  },
});

/** Where a part that has a fit goes in and the family does not ask to heat or cool it; how it is done is asked of the walk. */
const fittedTight = gatherer((steps, { family }) =>
  steps.flatMap((step) =>
    step.instructions.flatMap((view) => (tightRefs(view, family).length === 0 ? [] : [{ step, view }])),
  ),
);

function tightRefs({ instruction }: InstructionView, family: FamilyView | undefined): readonly Ref[] {
  if (instruction.verb !== 'install' || instruction.trial?.value === true) return [];
  return (instruction.install ?? []).filter(({ id }) => {
    const part = family?.part(id);
    const asked = part?.beforeFitting?.some(({ value }) => value === 'heat' || value === 'cool') === true;
    return part?.fit !== undefined && !asked;
  });
}

function lookAt(
  procedure: ProcedureView,
  family: FamilyView,
  view: InstructionView,
  ctx: RuleContext<typeof messages>,
): void {
  for (const ref of tightRefs(view, family)) {
    if (isForced(procedure, view)) continue;
    for (const fit of fitCases(family, ref.id, procedure.space)) report(procedure, family, view, fit, ref, ctx);
  }
}

const FORCE: ReadonlySet<string | undefined> = new Set(['press', 'arbor', 'puller', 'soft-hammer']);

/** Whether it is done with a tool that drives parts onto each other. */
function isForced({ tools }: ProcedureView, { instruction }: InstructionView): boolean {
  return toolIds(instruction).some((id) => FORCE.has(tools.get(id)?.entry.value.kind?.value));
}

function report(
  procedure: ProcedureView,
  family: FamilyView,
  view: InstructionView,
  fit: FitCase,
  ref: { readonly range: Parameters<RuleContext<typeof messages>['report']>[0] },
  ctx: RuleContext<typeof messages>,
): void {
  const cold = fit.where.and(view.where).minus(tempered(procedure, view, fit));
  if (fit.fit.greatestClearance >= 0 || cold.isEmpty) return;
  ctx.report(ref.range, 'cold', [family.nameOf(fit.part), lengthText(-fit.fit.greatestClearance, fit.unit)], {
    about: fit.other === undefined ? [fit.part] : [fit.part, fit.other],
    ...walkedWhere(procedure, cold, view.where),
    working: () => [fitWorking(family, fit, undefined)],
  });
}

/** Where one of the two parts is hot or cold when it is fitted. */
function tempered(procedure: ProcedureView, { instruction }: InstructionView, { part, other }: FitCase): BuildSet {
  const both = temperedAt(procedure, instruction).filter((one) => one.part === part || one.part === other);
  return procedure.space.union(both.map(({ where }) => where));
}
