import { UNIT_SHAPES } from '../model/generated/shapes';
import { instructionDef } from '../model/instructionDef';
import { keyShape } from '../model/plainValue';
import type { Shape } from '../model/shape';
import type { MapNode, Node } from '../syntax/node';

/** What an id of the older version is called in the newer one; the same where it was not renamed. */
export type Renamed = (id: string) => string;

/**
 * What a value means, as one string: equal where two writings say the same. Quoting, layout, the order of keys, and the
 * order of a list that has none make no difference. Undefined nodes mean nothing.
 */
export function meaningOf(node: Node | undefined, shape: Shape | undefined, renamed: Renamed = (id) => id): string {
  if (node === undefined) return '';
  if (node.kind === 'scalar') return scalarMeaning(node.text, renamed);
  if (node.kind === 'list') return listMeaning(node.items, shape, renamed);
  return mapMeaning(node, shape, renamed);
}

/** Ids stand alone, behind a sign, in a condition, or in `<>` within a text. */
function scalarMeaning(text: string, renamed: Renamed): string {
  const words = wordsOf(text);
  if (/^[+\-−]?[a-z][a-z0-9-]*(?:=[a-z0-9-]+)?$/u.test(words)) return words.replace(/[a-z][a-z0-9-]*/gu, renamed);
  return words.replace(/(?<=<(?:[a-z-]+\/)?)[a-z][a-z0-9-]+(?=>)/gu, renamed);
}

/** Words with single spaces between: where a line is broken says nothing. */
export function wordsOf(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

function listMeaning(items: readonly Node[], shape: Shape | undefined, renamed: Renamed): string {
  const inner = shape?.as === 'list' ? shape.items : shape;
  const meanings = items.map((item) => meaningOf(item, inner, renamed));
  // A list with one entry is the entry alone.
  if (meanings.length === 1) return meanings[0] ?? '';
  return `[${(hasOrder(shape) ? meanings : meanings.toSorted()).join(', ')}]`;
}

/** Ids that are named together are a set; texts, instructions and passes come one after the other. */
function hasOrder(shape: Shape | undefined): boolean {
  if (shape?.as === 'condition' || shape?.as === 'counted') return false;
  return !(shape?.as === 'scalar' && (shape.scalar.is === 'ref' || shape.scalar.is === 'signed'));
}

function mapMeaning(map: MapNode, shape: Shape | undefined, renamed: Renamed): string {
  const own = objectShape(map, shape);
  const lines = map.pairs.map(
    ({ key, value }) => `${keyMeaning(key.text, own, renamed)}: ${meaningOf(value, keyShape(own, key.text), renamed)}`,
  );
  return `{${lines.toSorted().join(', ')}}`;
}

/** Keys of the writer's own are ids. */
function keyMeaning(key: string, shape: Shape | undefined, renamed: Renamed): string {
  return shape?.as === 'object' ? key : renamed(key);
}

/** The shape with the keys: a unit's own, or that of the verb. */
export function objectShape(node: Node, shape: Shape | undefined): Shape | undefined {
  if (shape?.as === 'unit') return UNIT_SHAPES[shape.def]?.shape;
  if (shape?.as === 'instruction') return UNIT_SHAPES[instructionDef(node)]?.shape;
  return shape;
}
