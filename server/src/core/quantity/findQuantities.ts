import type { Span } from '../text/span';
import { plainCharacters } from './characters';
import { type Dimension, dimensions } from './dimension';
import { resolveQuantity } from './parseQuantity';
import { proseUnit, speaksOfTorque } from './proseUnits';
import type { Quantity, QuantityProblem } from './quantity';
import { Scanner, type WrittenUnit } from './scanner';
import { scanQuantity } from './scanStatement';
import { isStandardSpelling, type Spelling } from './spellings';

/** A quantity found in running text; its spans are offsets into that text. */
export interface FoundQuantity {
  readonly dimension: Dimension;
  readonly quantity: Quantity;
  readonly problems: readonly QuantityProblem[];
  readonly span: Span;
}

/** Where a number may start: not inside a word, a part number, a thread or another number. */
const numberStart =
  /(?<![\w.,/·#°⌀-])(?:(?:≤|<=|≥|>=|<|>|\bmax(?:imum)?\.?|\bmin(?:imum)?\.?|\bat (?:most|least)|\b(?:not|no) (?:more|less) than) *)?[+-]?(?:\.?\d|[½¼¾⅛⅜⅝⅞])/gi;

/** Words that number a thing: what follows is its name and no amount. */
const namingWord =
  /\b(?:ISO|DIN|EN|ASME|ANSI|SAE|ASTM|steps?|parts?|items?|fig(?:ure)?|page|table|section|phase|no|number|class|grade|line|stage|revision|rev|drawing|serial|model|type|form)\.? *$/i;

/** Most sentences have no number at all, and need no second look. */
const NUMERAL = /[\d½¼¾⅛⅜⅝⅞]/;

/** All numbers with a unit in running text, of any dimension, in order. */
export function findQuantities(prose: string): readonly FoundQuantity[] {
  if (!NUMERAL.test(prose)) return [];
  const text = plainCharacters(prose);
  const found: FoundQuantity[] = [];
  let from = 0;
  for (const match of text.matchAll(numberStart)) {
    if (match.index < from || namingWord.test(text.slice(Math.max(0, match.index - 16), match.index))) continue;
    const quantity = quantityAt(text, match.index);
    if (quantity === null) continue;
    found.push(quantity);
    from = quantity.span.end;
  }
  return found;
}

function quantityAt(text: string, start: number): FoundQuantity | null {
  const scanned = scanQuantity(new Scanner(text, start, 'prose'));
  const unit = scanned === null ? null : proseUnit(text, scanned.statement);
  if (scanned === null || unit === null) return null;
  const dimension = likelyDimension(unit, speaksOfTorque(text, start));
  if (dimension === null) return null;
  const { quantity, problems } = resolveQuantity(scanned, dimension);
  return quantity === undefined ? null : { dimension, quantity, problems, span: { start, end: scanned.end } };
}

/** Ounce inches are a torque where something is tightened, else an unbalance, which is what their symbol says. */
function likelyDimension(unit: WrittenUnit, torque: boolean): Dimension | null {
  const { meanings } = unit;
  const asTorque = meanings.find((meaning) => meaning.dimension === 'torque');
  if (torque && asTorque !== undefined) return asTorque.status === 'ambiguous' ? null : 'torque';
  const clear = meanings.filter((meaning) => meaning.status !== 'ambiguous');
  const symbol = clear.find((meaning) => isStandardSpelling(unit.text, meaning.unit));
  return (symbol ?? mostLikely(clear))?.dimension ?? null;
}

function mostLikely(meanings: readonly Spelling[]): Spelling | undefined {
  const rank = (meaning: Spelling) =>
    (meaning.status === 'doubtful' ? dimensions.length : 0) + dimensions.indexOf(meaning.dimension);
  return meanings.toSorted((a, b) => rank(a) - rank(b))[0];
}
