import { type ConditionExpr, parseConditionText } from '../builds/condition';
import type { ItemRange, MapNode, Node, ScalarNode } from '../syntax/node';
import { readQuantity } from './readQuantity';
import type { RefKind, ScalarShape } from './shape';
import type {
  Condition,
  ConditionName,
  Count,
  DateText,
  Mention,
  Prose,
  QuantityValue,
  Ref,
  SignedTerm,
} from './values';

const MENTION = /<(?:([a-z][a-z-]*)\/)?([a-z][a-z0-9-]{2,})>/g;
const NO_MENTIONS: readonly never[] = [];

export function mentionsIn(text: string): readonly Mention[] {
  if (!text.includes('<')) return NO_MENTIONS;
  const mentions: Mention[] = [];
  MENTION.lastIndex = 0;
  for (let match = MENTION.exec(text); match !== null; match = MENTION.exec(text)) {
    const from = match.index;
    mentions.push({ kind: match[1], id: match[2] ?? '', from, to: from + match[0].length });
  }
  return mentions;
}

/** Reads a text for people: a scalar, or a map with the text and its translations. */
export function readProse(node: Node): Prose | undefined {
  if (node.kind === 'scalar') return proseOf(node, node, {});
  if (node.kind !== 'map') return undefined;
  let text: ScalarNode | undefined;
  const translations: { en?: ScalarNode; de?: ScalarNode; es?: ScalarNode } = {};
  for (const { key, value } of node.pairs) {
    if (value?.kind !== 'scalar') continue;
    if (key.text === 'text') text = value;
    else if (isLanguage(key.text)) translations[key.text] = value;
  }
  return text === undefined ? undefined : proseOf(node, text, translations);
}

function isLanguage(key: string): key is 'en' | 'de' | 'es' {
  return key === 'en' || key === 'de' || key === 'es';
}

function proseOf(node: Node, scalar: ScalarNode, translations: Prose['translations']): Prose {
  return { node, scalar, text: scalar.text, mentions: mentionsIn(scalar.text), translations, remembered: undefined };
}

export function readRef(node: ScalarNode, kind: RefKind, listing = false): Ref {
  return { node, kind, id: node.text, range: node, listing };
}

export function readSigned(node: ScalarNode, kind: RefKind): SignedTerm {
  const [, sign = '', rest = ''] = /^\s*([+\-−]?)\s*([\s\S]*)$/.exec(node.text) ?? [];
  const negative = sign === '-' || sign === '−';
  const named = /^[a-z][a-z0-9-]*$/.test(rest);
  const from = node.text.length - rest.length + (node.style === 'plain' ? 0 : 1);
  const range: ItemRange = { item: node.item, from: Math.min(node.from + from, node.to), to: node.to };
  const term = named
    ? { node, kind, id: rest, range, listing: false }
    : readQuantity(node, 'any', rest, node.text.length - rest.length);
  return { node, sign: negative ? -1 : 1, term };
}

export function readCount(node: ScalarNode): Count {
  return { node, value: /^\d+$/.test(node.text) ? Number(node.text) : undefined };
}

export function readDate(node: ScalarNode): DateText {
  return { node, day: isDay(node.text) ? node.text : undefined };
}

/** Whether a text is a day that exists, as ISO 8601 writes it. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}

export function readQuantityScalar(node: ScalarNode, shape: ScalarShape & { is: 'quantity' }): QuantityValue {
  return readQuantity(node, shape.dimension, node.text, 0);
}

/** Reads a condition; a name that has no shape of one counts as never true and is kept among the names. */
export function readCondition(node: Node): Condition {
  const names: ConditionName[] = [];
  return { node, expr: conditionExpr(node, names), names };
}

function conditionExpr(node: Node | undefined, names: ConditionName[]): ConditionExpr {
  if (node === undefined) return { kind: 'always' };
  if (node.kind === 'scalar') {
    const expr = parseConditionText(node.text);
    names.push({ node, text: node.text, expr });
    return expr ?? { kind: 'any', of: [] };
  }
  if (node.kind === 'list') return { kind: 'any', of: node.items.map((item) => conditionExpr(item, names)) };
  return { kind: 'all', of: combinations(node, names) };
}

function combinations(node: MapNode, names: ConditionName[]): ConditionExpr[] {
  return node.pairs.flatMap(({ key, value }): ConditionExpr[] => {
    if (key.text !== 'all' && key.text !== 'any' && key.text !== 'none') return [];
    const parts = value?.kind === 'list' ? value.items : value === undefined ? [] : [value];
    return [{ kind: key.text, of: parts.map((part) => conditionExpr(part, names)) }];
  });
}
