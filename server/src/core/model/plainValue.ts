import type { Node } from '../syntax/node';
import type { Shape } from './shape';

/**
 * The node as a plain value for a validator. Scalars are their source text. What is a unit of its own becomes `true`,
 * since it is validated by itself; so does an empty value, which is reported as empty and nothing else.
 */
export function plainOf(node: Node | undefined, shape: Shape | undefined): unknown {
  if (node === undefined || shape?.as === 'unit' || shape?.as === 'instruction') return true;
  if (node.kind === 'scalar') return node.text;
  if (node.kind === 'list') return node.items.map((item) => plainOf(item, itemShape(shape)));
  const plain: Record<string, unknown> = {};
  for (const { key, value } of node.pairs) {
    // A key without a value is passed over here: it counts as there, and its emptiness is told once.
    if (value === undefined) continue;
    if (key.text !== '__proto__') plain[key.text] = plainOf(value, keyShape(shape, key.text));
  }
  return plain;
}

export function itemShape(shape: Shape | undefined): Shape | undefined {
  if (shape === undefined) return undefined;
  if (shape.as === 'list') return shape.items;
  return shape;
}

export function keyShape(shape: Shape | undefined, key: string): Shape | undefined {
  if (shape?.as === 'object') return shape.keys[key]?.shape;
  if (shape?.as === 'entries') return shape.values;
  if (shape?.as === 'by-build') return { as: 'scalar', scalar: shape.scalar, many: false };
  if (shape?.as === 'counted') return { as: 'scalar', scalar: { is: 'count' }, many: false };
  return shape?.as === 'condition' ? shape : undefined;
}
