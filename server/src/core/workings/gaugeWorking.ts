import { type BuildSet, type BuildSpace, describeBuilds } from '../builds';
import { dimensionFacts } from '../quantity';
import { type CalculationStep, step } from '../standards/calculation';
import { gaugeShares } from '../standards/gaugeResolution';
import { type Measurand, resolutionOf, widthOf } from './gaugeFit';
import type { NamedTool } from './toolNamed';
import type { Working } from './working';

/** How a gauge was held against what it measures: its range, its resolution and the tolerance. */
export function gaugeWorking(
  { tool, name }: NamedTool,
  measurand: Measurand,
  space: BuildSpace,
  within: BuildSet,
): Working {
  const resolution = resolutionOf(tool, measurand);
  const { value, where } = measurand;
  return {
    title: `${name} for the ${measurand.name}`,
    builds: where.equals(within) ? '' : describeBuilds(where, space),
    rows: [
      { label: 'Range of the gauge', text: tool.range?.text.trim() ?? 'not stated' },
      { label: 'Acceptable', text: value.text.trim() },
    ],
    steps: resolution === undefined ? [] : shareSteps(resolution, measurand),
    missing: resolution === undefined ? [`the resolution of the ${name}`] : [],
    sources: ['GB/T 3177', 'rule of ten (common practice)'],
  };
}

function shareSteps(resolution: number, measurand: Measurand): CalculationStep[] {
  const width = widthOf(measurand);
  const unit = dimensionFacts[measurand.quantity.dimension].base;
  const given = [step('d', 'resolution of the gauge', 'given', resolution, unit)];
  if (width === undefined) return given;
  return [
    ...given,
    step('T', 'width of the tolerance', 'highest − lowest', width, unit),
    step('d/T', 'share of the tolerance', 'd/T', resolution / width, ''),
    step('d₁₀', 'resolution to have', 'T/10', width * gaugeShares.good, unit),
    step('d₆', 'coarsest resolution to let pass', 'T/6', width * gaugeShares.fair, unit),
  ];
}
