import type { Dimension } from '../quantity/dimension';
import { parseQuantity } from '../quantity/parseQuantity';
import type { QuantityReading } from '../quantity/quantity';
import type { ScalarNode } from '../syntax/node';
import { rememberedByText } from '../text/byText';
import type { QuantityValue } from './values';

/** Words that may stand in place of a value. */
const WORDS = new Set(['record-only', 'cure']);

/** What a place for any quantity may hold, the most usual first. */
const ANY: readonly Dimension[] = [
  'length',
  'torque',
  'pressure',
  'angle',
  'temperature',
  'force',
  'unbalance',
  'mass',
  'time',
  'rotational-speed',
  'ratio',
  'volume',
  'flow',
  'voltage',
  'current',
  'resistance',
  'speed',
];

/**
 * Reads a quantity of the dimension that its place asks for. Spans of the reading are offsets into `text`, which stands
 * at `offset` within the node's text.
 */
export function readQuantity(node: ScalarNode, dimension: string, text: string, offset: number): QuantityValue {
  const word = WORDS.has(text.trim()) ? text.trim() : undefined;
  if (word !== undefined) return { node, text, dimension, reading: { problems: [] }, word, offset };
  return { node, text, dimension, reading: readerOf(dimension)(text), word, offset };
}

/** A procedure states the same torque over and over, so each is read once. */
const readers = new Map<string, (text: string) => QuantityReading>();

function readerOf(dimension: string): (text: string) => QuantityReading {
  const known = readers.get(dimension);
  if (known !== undefined) return known;
  const read = rememberedByText(
    dimension === 'any' ? readAny : (text) => parseQuantity(text, dimension as Dimension),
    500,
  );
  readers.set(dimension, read);
  return read;
}

/**
 * Takes the first dimension in which nothing is wrong, since 12 kg is a mass though it is half a torque; else the first in
 * which it is only misspelt; else the first in which the unit is one. Where none fits, the first reading says what is wrong.
 */
function readAny(text: string): QuantityReading {
  let best: QuantityReading | undefined;
  for (const dimension of ANY) {
    const reading = parseQuantity(text, dimension);
    if (reading.problems.length === 0) return reading;
    if (best === undefined || strangeness(reading) < strangeness(best)) best = reading;
  }
  return best ?? { problems: [] };
}

function strangeness({ problems }: QuantityReading): number {
  if (problems.some(({ kind }) => kind === 'wrong-dimension' || kind === 'unit-unknown')) return 2;
  return problems.every(({ kind }) => kind === 'unit-spelling') ? 0 : 1;
}
