import { readQuantity } from '../../model/readQuantity';
import type { Quantity, Statement } from '../../quantity';
import { plainCharacters } from '../../quantity/characters';
import type { ScalarNode } from '../../syntax/node';
import { applyEdits, type TextEdit } from '../../text/span';

/** Signs in the spellings of typewriters, and the spaces around signs. Numbers are never touched. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/ *(?:\+ ?\/ ?-|\+-|±) */g, ' ± '],
  [/<= */g, '≤ '],
  [/>= */g, '≥ '],
  [/([≤≥]) */g, '$1 '],
  [/ *\.\. */g, '..'],
  [/ *\( */g, ' ('],
  [/ +\)/g, ')'],
  [/ {2,}/g, ' '],
];

/**
 * The text of a quantity with standard unit symbols and signs. It stays as it is where anything is wrong with it but how
 * it is spelt, where its spelling may mean something else, and where the new text would not read as the same quantity.
 */
export function quantityText(node: ScalarNode, dimension: string): string {
  const { text } = node;
  const { reading, word } = readQuantity(node, dimension, text, 0);
  if (word !== undefined || reading.quantity === undefined) return text;
  const edits: TextEdit[] = [];
  for (const problem of reading.problems) {
    if (problem.kind !== 'unit-spelling' || problem.doubtful || problem.replacement === undefined) return text;
    edits.push({ span: problem.span, text: problem.replacement });
  }
  const spelt = applyEdits(text, [...edits, ...lookAlikes(text, reading.quantity)]);
  const written = SIGNS.reduce((result, [pattern, sign]) => result.replace(pattern, sign), spelt).trim();
  const after = readQuantity(node, dimension, written, 0).reading;
  const isSame = after.problems.length === 0 && after.quantity !== undefined;
  return isSame && meaningOf(after.quantity) === meaningOf(reading.quantity) ? written : text;
}

/** Characters of unit symbols that only look like the standard ones, as the bullet in `N•m`. */
function lookAlikes(text: string, quantity: Quantity): TextEdit[] {
  return statementsIn(quantity).flatMap(({ unitSpan: span }) => {
    const written = text.slice(span.start, span.end);
    const plain = plainCharacters(written);
    return plain === written ? [] : [{ span, text: plain }];
  });
}

function statementsIn(quantity: Quantity): Statement[] {
  const first = quantity.form === 'torque-angle' ? [quantity, quantity.angle] : [quantity];
  return quantity.dual === null ? first : [...first, quantity.dual];
}

/** Everything that a quantity says, without where and how it is written. */
function meaningOf(quantity: Quantity): string {
  return JSON.stringify(quantity, (key, value) => {
    if (key === 'unit') return value.symbol;
    return key === 'span' || key === 'unitSpan' || key === 'text' ? undefined : value;
  });
}
