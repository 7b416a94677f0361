import { isAlias, isCollection, isMap, isScalar, isSeq, type Scalar, type YAMLMap, type Pair as YamlPair } from 'yaml';
import type { ItemRange, Node, NotPlain, Pair, ScalarNode, ScalarStyle } from './node';
import type { ItemInMaking } from './readItem';

const STYLES: Readonly<Record<string, ScalarStyle>> = {
  PLAIN: 'plain',
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_LITERAL: 'literal',
  BLOCK_FOLDED: 'folded',
};

/**
 * Turns a node of the YAML library into ours; an empty value becomes undefined. This runs for every node of every
 * document, so objects are written out in full: spreading ranges into them took a third of the reading.
 */
export function convertNode(item: ItemInMaking, node: unknown): Node | undefined {
  if (isScalar(node)) return convertScalar(item, node);
  if (isAlias(node)) {
    notPlain(item, rangeOf(item, node.range), 'alias');
    return undefined;
  }
  if (!isCollection(node)) return undefined;
  const range = withoutTrailingSpace(rangeOf(item, node.range));
  const { from, to } = range;
  reportProperties(item, node, range);
  if (isSeq(node)) {
    const items = node.items.map((entry) => convertNode(item, entry) ?? emptyScalar(range));
    return { kind: 'list', item, from, to, remembered: undefined, flow: node.flow === true, items };
  }
  if (isMap(node))
    return {
      kind: 'map',
      item,
      from,
      to,
      flow: node.flow === true,
      pairs: convertPairs(item, node),
      remembered: undefined,
    };
  return undefined;
}

function convertScalar(item: ItemInMaking, node: Scalar): ScalarNode | undefined {
  const { from, to } = rangeOf(item, node.range);
  const style = STYLES[node.type ?? 'PLAIN'] ?? 'plain';
  const text = typeof node.value === 'string' ? node.value : (node.source ?? '');
  const scalar: ScalarNode = { kind: 'scalar', item, from, to, remembered: undefined, style, text };
  if (node.anchor !== undefined || node.tag !== undefined) reportProperties(item, node, scalar);
  return style === 'plain' && text === '' ? undefined : scalar;
}

function convertPairs(item: ItemInMaking, map: YAMLMap): Pair[] {
  return map.items.flatMap((pair) => convertPair(item, pair as YamlPair<unknown, unknown>) ?? []);
}

function convertPair(item: ItemInMaking, pair: YamlPair<unknown, unknown>): Pair | undefined {
  const value = convertNode(item, pair.value);
  if (isScalar(pair.key)) {
    const key = convertScalar(item, pair.key) ?? emptyScalar(rangeOf(item, pair.key.range));
    if (key.text === '<<' && key.style === 'plain') notPlain(item, key, 'merge-key');
    if (item.mayHoldExplicitKey && isExplicit(item.text, key.from)) notPlain(item, key, 'explicit-key');
    return { key, value };
  }
  const range = isCollection(pair.key) ? rangeOf(item, pair.key.range) : (value ?? rangeOf(item, undefined));
  notPlain(item, range, isAlias(pair.key) ? 'alias' : 'key-not-text');
  return undefined;
}

/** A key behind a `?`: what stands before it on its line is an indicator, not text. */
function isExplicit(text: string, keyFrom: number): boolean {
  const lineStart = text.lastIndexOf('\n', keyFrom - 1) + 1;
  return /(?:^|[\s{[,-])\?\s+$/.test(text.slice(lineStart, keyFrom));
}

function reportProperties(
  item: ItemInMaking,
  node: { anchor?: string | undefined; tag?: string | undefined },
  range: ItemRange,
): void {
  if (node.anchor !== undefined) notPlain(item, propertyRange(range, '&'), 'anchor');
  if (node.tag !== undefined && hasTag(range)) notPlain(item, propertyRange(range, '!'), 'tag');
}

/** Where a tag or anchor stands: before the node, on the same line. */
function propertyRange(range: ItemRange, indicator: string): ItemRange {
  const lineStart = range.item.text.lastIndexOf('\n', Math.max(0, range.from - 1)) + 1;
  const last = range.item.text.lastIndexOf(indicator, range.from);
  const before = last < lineStart ? '' : range.item.text.slice(lineStart, last);
  // A tag may hold several of its indicators (`!!str`), so it starts behind the space or bracket before it.
  const at = last - (/[^\s[{,]*$/.exec(before)?.[0].length ?? 0);
  return at >= lineStart ? { item: range.item, from: at, to: Math.max(range.to, at + 1) } : range;
}

function hasTag(range: ItemRange): boolean {
  return range.item.text.lastIndexOf('!', range.from) >= 0;
}

function notPlain(item: ItemInMaking, range: ItemRange, what: NotPlain): void {
  item.problems.push({ kind: 'not-plain', range, what });
}

function emptyScalar(range: ItemRange): ScalarNode {
  return {
    kind: 'scalar',
    item: range.item,
    from: range.from,
    to: range.from,
    remembered: undefined,
    style: 'plain',
    text: '',
  };
}

function rangeOf(item: ItemInMaking, range: readonly number[] | null | undefined): ItemRange {
  const length = item.text.length;
  const from = Math.min(Math.max(0, range?.[0] ?? 0), length);
  const to = Math.min(Math.max(from, range?.[1] ?? from), length);
  return { item, from, to };
}

/** A block map or list ends with its last visible character; the line end behind it belongs to nobody. */
function withoutTrailingSpace(range: ItemRange): ItemRange {
  let to = range.to;
  while (to > range.from && /\s/.test(range.item.text.charAt(to - 1))) to--;
  return { ...range, to };
}
