import { whereUnless } from '../../analysis/heldValues';
import { gaugesFor, resolutionOf, type UnfitGauge, unfitGauges, widthOf } from '../../workings/gaugeFit';
import { gaugeWorking } from '../../workings/gaugeWorking';
import { significant } from '../../workings/toolSizeText';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { advice, takeInstead } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const STORES =
  'tools:\n  coarse-gauge: { name: dial gauge 0.01 mm, kind: indicator, resolution: 0.01 mm, range: 0..10 mm }';

export const gaugeTooCoarse = defineRule({
  id: 'gauge-too-coarse',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'What is measured has a tolerance that is too narrow for the resolution of the gauge, or lies outside of its range. The resolution should be a tenth of the tolerance; up to a sixth is let pass. Dial gauges may be set on a reference, so that only what they show has to lie within their range.',
    why: 'The play looks right and is not: with a fifth of the tolerance to each step of the gauge, the last step decides.',
    wrong: withStores(inStep('- measure: end-play\n  with: coarse-gauge'), STORES),
    right: withStores(inStep('- measure: end-play\n  with: dial-gauge'), STORES),
  },
  messages: {
    'too-coarse': (gauge: string, resolution: string, share: string, name: string, accept: string, advised: string) =>
      `The ${gauge} reads to ${resolution}, which is 1/${share} of what the ${name} may vary (${accept}); it should be 1/10, at most 1/6; ${advised}`,
    'out-of-range': (gauge: string, range: string, name: string, accept: string, advised: string) =>
      `The ${gauge} measures ${range}, which does not cover the ${name} (${accept}); ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined) return;
      const unfit = unfitGauges(procedure, view);
      if (unfit.length === 0 || isHalfTyped(view.instruction)) return;
      for (const one of unfit) {
        const { gauge, measurand, verdict } = one;
        const ids = gaugesFor(procedure, measurand, gauge.tool).filter((id) => id !== gauge.id);
        const advised = advice('take', ids, 'the stores have none like it that suits');
        const accept = measurand.value.text.trim();
        const details = {
          about: [...(measurand.id === undefined ? [] : [measurand.id]), gauge.id],
          ...whereUnless(measurand.where, view.where, procedure.space),
          fixes: () => takeInstead(procedure, gauge.ref, ids),
          working: () => [gaugeWorking(gauge, measurand, procedure.space, view.where)],
        };
        if (verdict === 'out-of-range') {
          const range = gauge.tool.range?.text.trim() ?? '';
          ctx.report(gauge.ref.range, verdict, [gauge.name, range, measurand.name, accept, advised], details);
        } else {
          const resolution = gauge.tool.resolution?.text.trim() ?? '';
          const args = [gauge.name, resolution, shareOf(one), measurand.name, accept, advised] as const;
          ctx.report(gauge.ref.range, verdict, [...args], details);
        }
      }
    },
  },
});

/** How many steps of the gauge the tolerance has: `5`, `3.5`. */
function shareOf({ gauge, measurand }: UnfitGauge): string {
  return significant((widthOf(measurand) ?? 0) / (resolutionOf(gauge.tool, measurand) ?? 1), 2);
}
