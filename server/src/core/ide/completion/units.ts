import { settingsFor } from '../../analysis/settings';
import { type Dimension, differenceOf, dimensions, type Unit, unitsOf, usualUnits } from '../../quantity';
import type { Span } from '../../text/span';
import type { Candidate } from './candidate';
import { type CompletionScene, typedIn } from './scene';
import { measuredThere, statedValues } from './statedValues';

/** Where a unit goes: behind a number, over what is typed of the unit. */
export interface UnitPlace {
  readonly span: Span;
  /** No blank stands between the number and the unit yet. */
  readonly isTight: boolean;
  /** What stands before the number: that of a tolerance, or of the angle behind a torque. */
  readonly behind: 'value' | 'tolerance' | 'plus';
}

/** What is measured at the bench, the most usual first. */
const LIKELY: readonly Dimension[] = [...new Set<Dimension>(['length', 'torque', 'pressure', 'angle', ...dimensions])];

const BEHIND_NUMBER = /([±+]?)\s*(?:\d[\d.]*|[½¼¾⅛⅜⅝⅞])(\s*)((?:[A-Za-zµΩ°%′″‰#][^\d()[\]{},;±+]*)?)$/;
const REST = /^[A-Za-zµΩ°%′″‰#·/⁻¹²³-]*/;

export function unitPlace(scene: CompletionScene): UnitPlace | undefined {
  const { text, offset, token } = scene.context;
  const [found, sign = '', gap = '', unit = ''] = BEHIND_NUMBER.exec(typedIn(scene.context)) ?? [];
  if (found === undefined) return undefined;
  const rest = REST.exec(text.slice(offset, Math.max(offset, token.end)))?.[0].length ?? 0;
  return {
    span: { start: offset - unit.length, end: offset + rest },
    isTight: gap === '',
    behind: sign === '±' ? 'tolerance' : sign === '+' ? 'plus' : 'value',
  };
}

/** The units that a number can have at a place, those of the settings first. */
export function unitCandidates(scene: CompletionScene, dimension: string, place: UnitPlace): Candidate[] {
  const wanted = dimensionsAt(scene, dimension, place.behind);
  const known = statedValues(scene).flatMap(({ reading }) => reading.quantity?.unit ?? []);
  // Where nothing tells what is measured, the usual units of all that may be come before the rare ones of each.
  const usual = wanted.length > 3 ? wanted.flatMap(usualUnits) : [];
  const units = [...new Set([...usual, ...wanted.flatMap((one) => unitsFor(scene, one, known))])];
  return units.map((unit) => unitCandidate(unit, place));
}

function dimensionsAt(scene: CompletionScene, dimension: string, behind: UnitPlace['behind']): readonly Dimension[] {
  const measured = dimension === 'any' ? measuredThere(scene) : [dimension as Dimension];
  const all = measured.length === 0 ? LIKELY : [...new Set(measured)];
  if (behind === 'tolerance') return [...new Set([...all.map(differenceOf), 'ratio' as const])];
  return behind === 'plus' && all.includes('torque') ? ['angle'] : all;
}

/** The units of the settings, then those that the family writes, then what workshops write, then the rest. */
function unitsFor(
  { snapshot, document }: CompletionScene,
  dimension: Dimension,
  known: readonly Unit[],
): readonly Unit[] {
  const settings = settingsFor(snapshot, document.uri).units.get(dimension) ?? [];
  const all = unitsOf(dimension);
  const first = settings.flatMap((symbol) => all.find((unit) => unit.symbol === symbol) ?? []);
  return [
    ...new Set([...first, ...known.filter((unit) => unit.dimension === dimension), ...usualUnits(dimension), ...all]),
  ];
}

function unitCandidate(unit: Unit, { isTight }: Pick<UnitPlace, 'isTight'>): Candidate {
  const { symbol, name, gap, accepted, doubtful } = unit;
  const spellings = [...accepted, ...doubtful].join(' ').replace(/[(|)]+/g, ' ');
  return {
    kind: 'unit',
    label: symbol,
    detail: name,
    text: isTight && gap === 'space' ? ` ${symbol}` : symbol,
    filter: `${symbol} ${spellings} ${name}`,
  };
}

/** The symbols that settings can name for a dimension. */
export function symbolCandidates(dimension: string, taken: readonly string[]): Candidate[] {
  const known = dimensions.find((one) => one === dimension);
  const units = known === undefined ? [] : [...new Set([...usualUnits(known), ...unitsOf(known)])];
  return units.filter(({ symbol }) => !taken.includes(symbol)).map((unit) => unitCandidate(unit, { isTight: false }));
}
