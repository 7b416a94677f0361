import type { Shape } from '../../model/shape';
import type { ListNode, MapNode, Node, Pair } from '../../syntax/node';
import { inKeyOrder } from './keyOrder';
import { set } from './line';
import { scalarText } from './scalarLines';
import { keysOf, shapeBelow, shapeOfItems } from './shapeBelow';

/** A list or map in brackets. One that runs over several lines keeps its lines, each set in by the brackets around it. */
export function flowLines(node: ListNode | MapNode, shape: Shape | undefined): string[] {
  const source = sourceOf(node);
  if (!source.includes('\n')) return [flowText(node, shape)];
  let at = node.from;
  return source.split('\n').map((line, i) => {
    const start = at + line.length - line.trimStart().length;
    at += line.length + 1;
    if (line.trim() === '') return '';
    return `${i === 0 ? '' : '  '.repeat(depthAt(node, start, line.trimStart()))}${line.trim()}`;
  });
}

function sourceOf(node: Node): string {
  return node.item.text.slice(node.from, node.to);
}

/** How many brackets are open where a line starts; one that closes there counts no more. */
function depthAt(node: Node, offset: number, line: string): number {
  if (offset <= node.from || offset >= node.to) return 0;
  const inner =
    node.kind === 'list'
      ? node.items
      : node.kind === 'map'
        ? node.pairs.flatMap(({ key, value }) => (value === undefined ? [key] : [key, value]))
        : [];
  const below = inner.reduce((most, one) => Math.max(most, depthAt(one, offset, line)), 0);
  const opens = node.kind === 'scalar' || /^[[{]/.test(sourceOf(node));
  const closes = offset === node.to - 1 && node.kind !== 'scalar' && /^[\]}]/.test(line);
  return below + (opens && !closes ? 1 : 0);
}

function flowText(node: Node, shape: Shape | undefined): string {
  if (node.kind === 'scalar') return scalarText(node, shape);
  if (node.kind === 'list') return `[${node.items.map((one) => flowText(one, shapeOfItems(shape))).join(', ')}]`;
  const entries = node.pairs.map((pair) => {
    const text = pairText(pair, shapeBelow(shape, pair.key.text, node));
    return { key: pair.key.text, lead: [], body: [set(text)] };
  });
  const keys = keysOf(shape, node);
  const texts = (keys === undefined ? entries : inKeyOrder(entries, keys)).map(({ body }) => body[0]?.text);
  // A pair alone in a list in brackets is a map that has none of its own.
  if (!sourceOf(node).startsWith('{')) return texts.join(', ');
  return texts.length === 0 ? '{}' : `{ ${texts.join(', ')} }`;
}

function pairText({ key, value }: Pair, shape: Shape | undefined): string {
  const name = sourceOf(key);
  if (value !== undefined) return `${name}: ${flowText(value, shape)}`;
  return /^\s*:/.test(key.item.text.slice(key.to)) ? `${name}:` : name;
}
