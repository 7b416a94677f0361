import { UNIT_SHAPES } from '../../model/generated/shapes';
import { instructionDef } from '../../model/instructionDef';
import type { Keys, Shape } from '../../model/shape';
import type { DocumentKind } from '../../syntax/documentKind';
import type { Node } from '../../syntax/node';

/** The shape of a whole document. */
export function documentShape(kind: DocumentKind): Shape | undefined {
  return UNIT_SHAPES[kind]?.shape;
}

/** The keys that a node's definition gives it, in the order of the definition; undefined where the keys are the writer's own. */
export function keysOf(shape: Shape | undefined, node?: Node): Keys | undefined {
  const settled = settledShape(shape, node);
  return settled?.as === 'object' ? settled.keys : undefined;
}

/** The shape of the value behind a key; an instruction is known by its node alone. */
export function shapeBelow(shape: Shape | undefined, key: string, node?: Node): Shape | undefined {
  const settled = settledShape(shape, node);
  switch (settled?.as) {
    case 'object':
      return settled.keys[key]?.shape;
    case 'entries':
      return settled.values;
    case 'by-build':
      return { as: 'scalar', scalar: settled.scalar, many: false };
    default:
      return undefined;
  }
}

/** The shape of the entries of a list. */
export function shapeOfItems(shape: Shape | undefined): Shape | undefined {
  if (shape?.as === 'list') return shape.items;
  return shape !== undefined && 'many' in shape && shape.many ? shape : undefined;
}

/** The dimension of a scalar where its place asks for a quantity. */
export function dimensionOf(shape: Shape | undefined): string | undefined {
  if (shape?.as !== 'scalar' && shape?.as !== 'by-build') return undefined;
  return shape.scalar.is === 'quantity' ? shape.scalar.dimension : undefined;
}

/** A definition that is named is looked up, and that of an instruction is found by its verb. */
function settledShape(shape: Shape | undefined, node: Node | undefined): Shape | undefined {
  if (shape?.as === 'unit') return UNIT_SHAPES[shape.def]?.shape;
  if (shape?.as === 'instruction') return node === undefined ? undefined : UNIT_SHAPES[instructionDef(node)]?.shape;
  return shape;
}
