import { whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { isTooCoarse, resolutionOf, widthOf } from '../../workings/gaugeFit';
import { coarseReadingPlaces, coarseReadings } from '../../workings/gaugeOfReading';
import { gaugeWorking } from '../../workings/gaugeWorking';
import { toolsOfStores } from '../../workings/toolNamed';
import { significant } from '../../workings/toolSizeText';
import { defineRule } from '../defineRule';
import { EXAMPLE_HEAD } from '../exampleDocuments';
import { inProcedure, withStores } from '../examples';
import type { RuleContext } from '../ruleContext';
import { advice, takeInstead } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const STORES =
  'tools:\n  coarse-gauge: { name: dial gauge 0.01 mm, kind: indicator, resolution: 0.01 mm, range: 0..10 mm }';

function readWith(gauge: string) {
  const steps = `phases:
  - phase: Measure
    steps:
      - step: measure
        title: Measure
        do:
          - measure: seat-read
            with: ${gauge}
          - calculate: end-play
            from: [+seat-read, -2.10 mm]
`;
  const head = `${EXAMPLE_HEAD}readings:\n  seat-read: { name: depth of the seat, quantity: length }\n`;
  const shown = steps
    .split('\n')
    .slice(5, -1)
    .map((line) => line.slice(10));
  return withStores(inProcedure(shown.join('\n'), head + steps), STORES);
}

const messages = {
  coarse: (gauge: string, resolution: string, share: string, result: string, accept: string, advised: string) =>
    `The ${gauge} reads to ${resolution}, which is 1/${share} of what the ${result} may vary (${accept}) that is worked out from it; it should be 1/10, at most 1/6; ${advised}`,
};

export const readingTooCoarse = defineRule({
  id: 'reading-too-coarse',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A reading is taken with a gauge that is fine enough for the reading, but not for what a later instruction works out from it. The resolution should be a tenth of the tolerance of the result; up to a sixth is let pass.',
    why: 'A clearance is the small difference of two big sizes. A gauge that does for the sizes leaves nothing of the difference.',
    wrong: readWith('coarse-gauge'),
    right: readWith('dial-gauge'),
  },
  messages,
  check: {
    procedure(procedure, ctx) {
      for (const { step, view } of coarseReadingPlaces(procedure)) lookAt(procedure, view, ctx.at(step, view));
    },
  },
});

function lookAt(procedure: ProcedureView, view: InstructionView, ctx: RuleContext<typeof messages>): void {
  const coarse = coarseReadings(procedure, view);
  if (coarse.length === 0 || isHalfTyped(view.instruction)) return;
  for (const { gauge, result } of coarse) {
    const kind = gauge.tool.kind?.value;
    const finer = toolsOfStores(procedure, (tool) => tool.kind?.value === kind && isTooCoarse(tool, result) === false);
    const share = significant((widthOf(result) ?? 0) / (resolutionOf(gauge.tool, result) ?? 1), 2);
    const resolution = gauge.tool.resolution?.text.trim() ?? '';
    const advised = advice('take', finer, 'the stores have no finer one of its kind');
    const args = [gauge.name, resolution, share, result.name, result.value.text.trim(), advised] as const;
    ctx.report(gauge.ref.range, 'coarse', [...args], {
      about: [...(result.id === undefined ? [] : [result.id]), gauge.id],
      ...whereUnless(result.where, view.where, procedure.space),
      fixes: () => takeInstead(procedure, gauge.ref, finer),
      working: () => [gaugeWorking(gauge, result, procedure.space, view.where)],
    });
  }
}
