import type { Node, ScalarNode } from '../syntax/node';
import { nearest } from '../text/near';
import type { ScalarShape, Shape } from './shape';
import type { ShapeProblem } from './shapeProblem';

/** What is wrong with a value that its validator refused, told by what stands there and what was wanted. */
export function valueProblem(node: Node, shape: Shape | undefined, key: string): ShapeProblem {
  if (node.kind === 'map' && isProse(shape) && node.pairs.length === 1)
    return { kind: 'prose-became-map', range: node, node };
  const scalar = scalarShape(shape);
  if (node.kind === 'scalar' && scalar !== undefined) return scalarProblem(node, scalar, key);
  const found = node.kind === 'scalar' ? 'text' : node.kind;
  return { kind: 'wrong-kind', range: node, key, found, wanted: wantedOf(shape) };
}

function scalarProblem(node: ScalarNode, shape: ScalarShape, key: string): ShapeProblem {
  const { text } = node;
  switch (shape.is) {
    case 'choice':
      return { kind: 'wrong-choice', range: node, text, choices: shape.choices, near: nearest(text, shape.choices) };
    case 'flag':
      return { kind: 'wrong-flag', range: node, text, meant: meantFlag(text) };
    case 'count':
      return key === 'witnessmark'
        ? { kind: 'wrong-version', range: node, text }
        : { kind: 'wrong-count', range: node, text, key };
    case 'date':
      return { kind: 'wrong-date', range: node, text };
    default:
      return { kind: 'wrong-text', range: node, text, key };
  }
}

function meantFlag(text: string): 'true' | 'false' | undefined {
  if (/^(?:yes|y|on|true)$/i.test(text)) return 'true';
  return /^(?:no|n|off|false)$/i.test(text) ? 'false' : undefined;
}

function isProse(shape: Shape | undefined): boolean {
  return shape?.as === 'prose' || (shape?.as === 'scalar' && shape.scalar.is === 'text');
}

function scalarShape(shape: Shape | undefined): ScalarShape | undefined {
  return shape?.as === 'scalar' || shape?.as === 'by-build' ? shape.scalar : undefined;
}

function wantedOf(shape: Shape | undefined): string {
  switch (shape?.as) {
    case 'prose':
      return shape.many ? 'a text or a list of texts' : 'a text';
    case 'scalar':
      return shape.many ? 'one value or a list of values' : 'one value';
    case 'by-build':
      return 'one value, or a map from builds to values';
    case 'counted':
      return 'an id, a list of ids, or a map from id to a number';
    case 'condition':
      return 'a condition: an id, a list, or a map of all, any, none';
    case 'list':
      return 'a list, each entry behind a dash';
    case 'entries':
      return 'a map with an id for each entry';
    default:
      return 'a map of keys and values';
  }
}
