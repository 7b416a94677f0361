import { type Settings, settingsFor } from '../../analysis/settings';
import type { QuantityFact } from '../../model/facts';
import { boundsOf, convert, findUnit, formatQuantity, type Quantity, type Unit } from '../../quantity';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { sourceRange } from '../../syntax/scalarSource';
import { quantityWorking } from '../../workings/quantityWorking';
import { otherUnit } from '../../workings/torqueUnits';
import { workingMarkdown } from '../../workings/workingMarkdown';
import { workingText } from '../../workings/workingText';
import { unitsWithin } from '../unitsWithin';
import type { HintFinder, InlayHint } from './hint';

/** What a hover without markup holds in a line. */
const plainWidth = 80;

/** A quantity that is written in one unit, in the second unit of the settings; one with a value in brackets has it. */
export const secondUnitHints: HintFinder = ({ snapshot, document }, within) => {
  const settings = settingsFor(snapshot, document.uri);
  return [...unitsWithin(document, within)].flatMap(({ def, facts }) =>
    facts.quantities.flatMap((fact) => (isName(def, fact) ? [] : (hintOf(document, fact, settings) ?? []))),
  );
};

function hintOf(document: SyntaxDocument, { value }: QuantityFact, settings: Settings): InlayHint | undefined {
  const { quantity } = value.reading;
  if (quantity === undefined || quantity.dual !== null) return undefined;
  const unit = secondUnit(quantity, settings);
  const converted = unit === undefined || unit === quantity.unit ? null : convert(quantity, unit);
  if (converted === null) return undefined;
  const { node, offset } = value;
  const end = sourceRange(node, 0, offset + quantity.span.end);
  return {
    kind: 'second-unit',
    offset: document.spanOf(end).end,
    label: rounded(formatQuantity(converted, { ranges: 'words' })),
    detail: () => {
      const working = quantityWorking(quantity);
      return working && { markdown: workingMarkdown(working), plain: workingText(working, plainWidth) };
    },
  };
}

/** Sizes that name a tool or a hexagon, and steps of a scale: an 8 mm socket is no 0.31 in socket, nor 0.5 °C on a dial 33 °F. */
function isName(def: string, { key }: QuantityFact): boolean {
  return NAMING_KEYS.includes(key) || (def === 'stores/tool' && key === 'size');
}

const NAMING_KEYS = ['across-flats', 'square', 'resolution', 'accuracy', 'size-step'];

function rounded(text: string): string {
  return /^[≤≥]/.test(text) ? text : `≈ ${text}`;
}

/** The unit of the settings in which it is not written; without any, for a torque the usual one of the other system. */
function secondUnit(quantity: Quantity, { units }: Settings): Unit | undefined {
  const { dimension, unit: written } = quantity;
  const [first, second] = (units.get(dimension) ?? []).map((symbol) => findUnit(dimension, symbol));
  if (first !== undefined) return first === written ? second : first;
  return dimension === 'torque' ? otherUnit(boundsOf(quantity).nominal, written) : undefined;
}
