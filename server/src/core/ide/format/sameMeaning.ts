import { Lexer } from 'yaml';
import type { Shape } from '../../model/shape';
import type { MapNode, Node, Pair } from '../../syntax/node';
import { quantityText } from './quantityText';
import { dimensionOf, keysOf, shapeBelow, shapeOfItems } from './shapeBelow';

/** Whether two trees say the same: keys of a definition in any order, quantities as they are to be spelt, all else alike. */
export function isSameTree(before: Node | undefined, after: Node | undefined, shape: Shape | undefined): boolean {
  if (before === after) return true;
  if (before === undefined || after === undefined || before.kind !== after.kind) return false;
  if (before.kind === 'map' && after.kind === 'map') return isSameMap(before, after, shape);
  if (before.kind === 'list' && after.kind === 'list') {
    const items = shapeOfItems(shape);
    return (
      before.items.length === after.items.length &&
      before.items.every((one, i) => isSameTree(one, after.items[i], items))
    );
  }
  if (before.kind !== 'scalar' || after.kind !== 'scalar') return false;
  if (before.text === after.text) return true;
  const dimension = dimensionOf(shape);
  return dimension !== undefined && quantityText(before, dimension) === after.text;
}

function isSameMap(before: MapNode, after: MapNode, shape: Shape | undefined): boolean {
  if (before.pairs.length !== after.pairs.length) return false;
  const ordered = keysOf(shape, before) === undefined;
  const left: (Pair | undefined)[] = [...after.pairs];
  return before.pairs.every(({ key, value }, i) => {
    const at = ordered ? i : left.findIndex((pair) => pair?.key.text === key.text);
    const pair = left[at];
    left[at] = undefined;
    return pair?.key.text === key.text && isSameTree(value, pair.value, shapeBelow(shape, key.text, before));
  });
}

/** The comments of a text, in alphabetical order, to see whether two texts have the same. */
export function commentsOf(text: string): string[] {
  if (!text.includes('#')) return [];
  return [...new Lexer().lex(text)].flatMap((one) => (one.startsWith('#') ? one.trimEnd() : [])).sort();
}
