import type { Dimension } from '../quantity/dimension';
import { parseQuantity } from '../quantity/parseQuantity';
import type { QuantityReading } from '../quantity/quantity';
import type { ScalarNode } from '../syntax/node';
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
  const reading = dimension === 'any' ? readAny(text) : parseQuantity(text, dimension as Dimension);
  return { node, text, dimension, reading, word, offset };
}

/** Takes the first dimension in which the unit is one; where none fits, the first reading says what is wrong. */
function readAny(text: string): QuantityReading {
  let first: QuantityReading | undefined;
  for (const dimension of ANY) {
    const reading = parseQuantity(text, dimension);
    first ??= reading;
    if (!reading.problems.some((problem) => problem.kind === 'wrong-dimension' || problem.kind === 'unit-unknown'))
      return reading;
  }
  return first ?? { problems: [] };
}
