import type { FamilyView } from '../analysis/familyView';
import { presentBuilds } from '../analysis/presentBuilds';
import { describeBuilds } from '../builds';
import type { CalculationStep } from '../standards/calculation';
import { greatestFill, greatestStretch, recommendedSqueeze } from '../standards/oRings';
import { lengthRangeText, lengthText, percentText } from './limitText';
import { type SealCase, sealCase } from './sealCase';
import type { Working, WorkingRow } from './working';

const GUIDE = 'published guide to seal design (squeeze, stretch and fill of O-rings)';

/** Squeeze, stretch and fill of an O-ring in its groove; none for a part that states neither section nor groove. */
export function sealWorkingsOf(family: FamilyView, id: string): Working[] {
  const part = family.part(id);
  if (part === undefined || (part.section === undefined && part.groove === undefined)) return [];
  const seal = sealCase(part);
  const { space } = family;
  return [
    {
      title: `Squeeze of the ${family.nameOf(id)}`,
      builds: describeBuilds(presentBuilds(family, space, id), space),
      rows: seal === undefined ? [] : sealRows(seal),
      steps: seal === undefined ? [] : stepsOf(seal),
      missing: missingOf(seal),
      sources: seal === undefined ? [] : sourcesOf(seal),
    },
  ];
}

function sealRows(seal: SealCase): WorkingRow[] {
  const { section, unit, squeeze, stretch, fill, floor, assumedTolerance } = seal;
  const assumed =
    assumedTolerance === undefined ? '' : `, ± ${lengthText(assumedTolerance, unit)} assumed from ISO 3601-1`;
  const rows = [{ label: 'section', text: `${lengthRangeText(section.lowest, section.highest, unit)}${assumed}` }];
  if (squeeze !== undefined) {
    rows.push(
      { label: 'squeeze', text: shares(squeeze.leastPercent, squeeze.greatestPercent) },
      { label: 'squeeze, as a length', text: lengthRangeText(squeeze.least, squeeze.greatest, unit) },
      { label: 'recommended squeeze', text: bandText(seal) },
    );
  }
  if (stretch !== undefined && floor === 'inside') {
    rows.push({
      label: `stretch, at most ${greatestStretch.inPlace} %`,
      text: shares(stretch.least, stretch.greatest),
    });
  }
  if (floor === 'around') rows.push({ label: 'stretch', text: 'none: the groove is around the ring, as in a bore' });
  if (fill !== undefined) {
    rows.push({ label: `fill of the groove, at most ${greatestFill} %`, text: shares(fill.least, fill.greatest) });
  }
  return rows;
}

/** The band that counts, with what is taken for granted. */
export function bandText({ motion, motionAssumed }: SealCase): string {
  const { least, greatest } = recommendedSqueeze[motion];
  const band = least === 0 ? `up to ${greatest} %` : `${least} to ${greatest} %`;
  return `${band}, ${motionAssumed ? 'assumed to be static' : motion}`;
}

/** `18 % to 32 %`, or one share where both are the same as shown. */
export function shares(least: number, greatest: number): string {
  const [from, to] = [percentText(least), percentText(greatest)];
  return from === to ? from : `${from} to ${to}`;
}

/** What a calculation starts from is written down once. */
function stepsOf({ squeeze, stretch, fill, floor }: SealCase): CalculationStep[] {
  const all = [
    ...(squeeze?.steps ?? []),
    ...(floor === 'inside' ? (stretch?.steps ?? []) : []),
    ...(fill?.steps ?? []),
  ];
  return all.filter((one, at) => all.findIndex(({ symbol }) => symbol === one.symbol) === at);
}

function missingOf(seal: SealCase | undefined): string[] {
  if (seal === undefined) return ['the cross-section of the ring'];
  return [
    ...(seal.squeeze === undefined ? ['the depth of the groove'] : []),
    ...(seal.motionAssumed ? ['whether the joint moves'] : []),
    ...(seal.stretch === undefined ? ['the inside diameter of the ring and the diameter of the groove'] : []),
    ...(seal.fill === undefined ? ['the width of the groove'] : []),
  ];
}

function sourcesOf({ assumedTolerance }: SealCase): string[] {
  return [...(assumedTolerance === undefined ? [] : ['ISO 3601-1:2012']), GUIDE];
}
