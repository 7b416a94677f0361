import type { Node } from '../syntax/node';
import { itemShape, keyShape } from './plainValue';
import type { Shape } from './shape';

export interface Pointed {
  readonly node: Node | undefined;
  readonly shape: Shape | undefined;
  /** The nearest key on the way; empty at the root. */
  readonly key: string;
}

/** Follows a JSON pointer through a node and its shape. */
export function nodeAt(root: Node, rootShape: Shape, pointer: string): Pointed {
  let node: Node | undefined = root;
  let shape: Shape | undefined = rootShape;
  let key = '';
  for (const raw of pointer.split('/').slice(1)) {
    const segment = raw.replaceAll('~1', '/').replaceAll('~0', '~');
    if (node?.kind === 'list') {
      node = node.items[Number(segment)];
      shape = itemShape(shape);
    } else if (node?.kind === 'map') {
      node = node.pairs.find((pair) => pair.key.text === segment)?.value;
      shape = keyShape(shape, segment);
      key = segment;
    }
  }
  return { node, shape, key };
}
