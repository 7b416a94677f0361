import { type Facts, type Unit, unitsIn } from '../../model/facts';
import type { Identify } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { findQuantities, type Quantity, type Statement } from '../../quantity';
import type { ItemRange, ScalarNode } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';
import { type IdUse, usesInUnit } from '../idUses';
import type { TokenType } from './tokenTypes';

/** A token as far as its own unit tells: what an id stands for is looked up later, since other documents may say. */
export type UnitToken =
  | { readonly is: 'plain'; readonly range: ItemRange; readonly type: TokenType }
  | { readonly is: 'id'; readonly range: ItemRange; readonly use: IdUse; readonly listed: boolean };

/**
 * Tells the tokens of a unit and of all units inside it. They are remembered with a unit that stands for one thing, such as
 * a step or a part, which stays the same as long as its text does: a key pressed in one step costs nothing in the others.
 */
export function forEachToken(unit: Unit, tell: (token: UnitToken) => void): void {
  const isHolder = HOLDERS.includes(unit.def);
  for (const token of isHolder ? ownTokens(unit) : remembered(unit)) tell(token);
  for (const child of isHolder ? unit.children : []) forEachToken(child, tell);
}

/** Units that hold all others: they are new at every key, and what they hold is remembered by itself. */
const HOLDERS = ['family', 'kit', 'stores', 'procedure', 'procedure/phase'];

function remembered(unit: Unit): readonly UnitToken[] {
  const known = memory.get(unit);
  if (known !== undefined) return known;
  const tokens: UnitToken[] = [];
  for (const one of unitsIn(unit)) for (const token of ownTokens(one)) tokens.push(token);
  memory.set(unit, tokens);
  return tokens;
}

const memory = new WeakMap<Unit, readonly UnitToken[]>();

function* ownTokens(unit: Unit): Generator<UnitToken> {
  const verb = verbKeyOf(unit);
  // A sentence is said and has no verb of its own.
  if (verb !== undefined && unit.def !== 'procedure/sentence') yield { is: 'plain', range: verb, type: 'keyword' };
  for (const use of usesInUnit(unit)) {
    if (use.is === 'path') continue;
    const listed = unit.def === 'procedure' && use.is === 'named' && isOfStores(use);
    yield { is: 'id', range: use.range, use, listed };
  }
  for (const node of valuesIn(unit)) {
    yield { is: 'plain', range: sourceRange(node, 0, node.text.length), type: 'enumMember' };
  }
  yield* quantityTokens(unit.facts);
}

function isOfStores({ kinds }: IdUse & { is: 'named' }): boolean {
  return kinds.includes('tool') || kinds.includes('consumable');
}

function verbKeyOf({ value }: Unit): ScalarNode | undefined {
  return (value as { verbKey?: ScalarNode }).verbKey;
}

/** What the bench may find, where it is listed. */
function valuesIn({ def, value }: Unit): ScalarNode[] {
  return def === 'family/identify' ? ((value as Identify).values ?? []).map(({ node }) => node) : [];
}

function* quantityTokens({ quantities, prose }: Facts): Generator<UnitToken> {
  for (const { value } of quantities) yield* ofValue(value);
  for (const { prose: text } of prose) {
    for (const scalar of [text.scalar, ...Object.values(text.translations)]) {
      for (const { quantity } of findQuantities(scalar.text)) yield* ofQuantity(scalar, quantity, 0);
    }
  }
}

function ofValue({ node, offset, reading }: QuantityValue): Iterable<UnitToken> {
  return reading.quantity === undefined ? [] : ofQuantity(node, reading.quantity, offset);
}

/** Numbers and units one by one: what stands between them, as ± and dots, is left to the grammar. */
function* ofQuantity(scalar: ScalarNode, { dual, ...first }: Quantity, offset: number): Generator<UnitToken> {
  for (const statement of [first as Statement, ...(dual === null ? [] : [dual])]) {
    for (const { span, type } of partsOf(statement)) {
      const range = sourceRange(scalar, offset + span.start, offset + span.end);
      yield { is: 'plain', range, type };
    }
  }
}

interface QuantityPart {
  readonly span: Span;
  readonly type: 'number' | 'unit';
}

function partsOf(statement: Statement): QuantityPart[] {
  const unit: QuantityPart = { span: statement.unitSpan, type: 'unit' };
  const number = ({ span }: { readonly span: Span }): QuantityPart => ({ span, type: 'number' });
  switch (statement.form) {
    case 'range':
      return [number(statement.low), number(statement.high), unit];
    case 'single':
      return [number(statement.number), ...toleranceOf(statement), unit];
    case 'torque-angle':
      return [number(statement.number), ...toleranceOf(statement), unit, ...partsOf(statement.angle)];
    default:
      return [number(statement.number), unit];
  }
}

function toleranceOf({ tolerance }: Extract<Statement, { form: 'single' | 'torque-angle' }>): QuantityPart[] {
  switch (tolerance.kind) {
    case 'none':
      return [];
    case 'symmetric':
      return [{ span: tolerance.amount.span, type: 'number' }];
    case 'percent':
      return [{ span: tolerance.percent.span, type: 'number' }];
    case 'asymmetric':
      return [tolerance.upper, tolerance.lower].map(({ span }) => ({ span, type: 'number' }));
  }
}
