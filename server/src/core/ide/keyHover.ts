import type { Unit } from '../model/facts';
import { UNIT_SHAPES } from '../model/generated/shapes';
import { itemShape, keyShape } from '../model/plainValue';
import { unitOf } from '../model/readUnit';
import type { Shape } from '../model/shape';
import type { SyntaxDocument } from '../syntax/readDocument';
import { escaped } from '../workings/workingMarkdown';
import { type NodePath, scalarAt } from './nodePath';
import type { HoverText } from './ruleHover';

/** What a key means, in the words of its definition; a verb also says what is done. */
export function keyHover(document: SyntaxDocument, offset: number): HoverText | undefined {
  const path = scalarAt(document, offset);
  const told = path?.isKey === true ? meaningOf(path) : undefined;
  if (path === undefined || told === undefined) return undefined;
  const key = path.scalar.text;
  return {
    span: document.spanOf(path.scalar),
    markdown: `**${escaped(key)}**\n\n${told.map(escaped).join(' ')}`,
    plain: `${key}\n\n${told.join(' ')}`,
  };
}

function meaningOf({ nodes, pairs, scalar }: NodePath): string[] | undefined {
  const unit = nodes.flatMap((node) => unitOf(node) ?? []).at(-1);
  const definition = unit === undefined ? undefined : UNIT_SHAPES[unit.def];
  if (unit === undefined || definition === undefined) return undefined;
  let shape: Shape | undefined = definition.shape;
  for (const { key } of pairs.slice(pairsAbove(unit, nodes))) {
    while (shape?.as === 'list') shape = itemShape(shape);
    const known = shape?.as === 'object' ? shape.keys[key.text] : undefined;
    if (key === scalar) {
      if (known === undefined) return undefined;
      const isVerb = definition.verb === key.text;
      return isVerb ? [definition.description, known.description] : [known.description];
    }
    shape = known?.shape ?? keyShape(shape, key.text);
  }
  return undefined;
}

/** How many keys stand above a unit: each map on the way has one. */
function pairsAbove(unit: Unit, nodes: NodePath['nodes']): number {
  return nodes.slice(0, nodes.indexOf(unit.node)).filter(({ kind }) => kind === 'map').length;
}
