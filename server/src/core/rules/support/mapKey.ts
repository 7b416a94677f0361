import type { MapNode, Pair, ScalarNode } from '../../syntax/node';
import type { ItemEdit } from '../../syntax/quoteValue';
import { quoted } from '../../syntax/quoteValue';
import { newlineOf } from './newline';

/** The edit that adds a key behind another one of a map; undefined where the map has no pair to stand behind. */
export function addKey(map: MapNode, behind: Pair | undefined, key: string, value: string): ItemEdit | undefined {
  return addKeys(map, behind, [[key, value]]);
}

/** The same for several keys. */
export function addKeys(
  map: MapNode,
  behind: Pair | undefined,
  keys: readonly (readonly [key: string, value: string])[],
): ItemEdit | undefined {
  const first = map.pairs[0];
  const pair = behind ?? map.pairs.at(-1);
  if (first === undefined || pair === undefined) return undefined;
  const { item } = map;
  const end = pair.value?.to ?? pair.key.to + 1;
  if (map.flow) return { range: { item, from: end, to: end }, text: written(keys, ', ') };
  const filled = item.text.slice(0, end).trimEnd().length;
  const newline = item.text.indexOf('\n', filled);
  const broken = newline < 0 ? item.text.trimEnd().length : newline;
  const at = item.text.charAt(broken - 1) === '\r' ? broken - 1 : broken;
  const lineStart = item.text.lastIndexOf('\n', first.key.from - 1) + 1;
  const indent = ' '.repeat(first.key.from - lineStart);
  return { range: { item, from: at, to: at }, text: written(keys, newlineOf(item.text) + indent) };
}

function written(keys: readonly (readonly [key: string, value: string])[], before: string): string {
  return keys.map(([key, value]) => `${before}${key}: ${value}`).join('');
}

/** The edit that writes another text in place of a whole scalar, in quotes where it needs them. */
export function writeScalar(node: ScalarNode, text: string): ItemEdit {
  return { range: { item: node.item, from: node.from, to: node.to }, text: scalarText(text) };
}

/** A text as a scalar that reads the same in a block or between brackets. */
export function scalarText(text: string): string {
  const plain = /^[\p{L}\p{N}≤≥±−.+]/u.test(text) && !/: |:$| #|[,[\]{}]/.test(text);
  return plain ? text : quoted(text);
}
