import type { ItemRange, MapNode, Node } from '../syntax/node';
import { nearest } from '../text/near';
import { VALIDATORS } from './generated/validatorTable';
import { verbPairOf } from './instructionDef';
import { plainOf } from './plainValue';
import { nodeAt } from './pointer';
import type { Shape, UnitShape } from './shape';
import type { ShapeProblem } from './shapeProblem';
import { isSoundUnit } from './sound';
import { structureProblems } from './structureProblems';
import type { ValidationError } from './validator';
import { valueProblem } from './valueProblem';

const NONE: readonly never[] = [];

/** What is wrong with the shape of one unit, without the units inside it: one problem for one mistake. */
export function validateUnit(node: Node, unit: UnitShape): readonly ShapeProblem[] {
  return isSoundUnit(node, unit.def) ? NONE : problemsOf(node, unit);
}

/** The same for a unit of which nobody knows whether it is sound. */
export function problemsOf(node: Node, unit: UnitShape): readonly ShapeProblem[] {
  if (node.kind === 'scalar' && unit.shape.shorthand !== undefined) return [];
  const structure = structureProblems(node, unit);
  if (structure.some((problem) => problem.kind === 'verb-missing')) return structure;
  const validator = VALIDATORS[unit.def];
  if (validator === undefined || validator(plainOf(node, unit.shape))) return structure;
  const found = (validator.errors ?? []).flatMap((error) => problemOf(error, node, unit) ?? []);
  return oncePerMistake([...structure, ...found]);
}

function problemOf(error: ValidationError, root: Node, unit: UnitShape): ShapeProblem | undefined {
  const { node, shape, key } = nodeAt(root, unit.shape, error.instancePath);
  if (node === undefined) return undefined;
  switch (error.keyword) {
    case 'additionalProperties':
    case 'unevaluatedProperties':
      return node.kind === 'map'
        ? unknownKey(node, shape, String(Object.values(error.params)[0]), ownerOf(unit))
        : undefined;
    case 'required':
      if (node.kind === 'map' && node.pairs.some((pair) => pair.key.text === error.params.missingProperty))
        return undefined;
      return missingKey(node, String(error.params.missingProperty), key, unit);
    case 'minItems':
    case 'minProperties':
      return { kind: 'empty', range: node, key };
    default:
      return valueProblem(node, shape, key);
  }
}

function unknownKey(map: MapNode, shape: Shape | undefined, key: string, owner: string): ShapeProblem | undefined {
  const pair = map.pairs.find((one) => one.key.text === key);
  if (pair === undefined) return undefined;
  const verb = verbPairOf(map);
  if (verb !== undefined && verb !== pair && verbPairOf({ ...map, pairs: [pair] }) !== undefined) {
    return { kind: 'second-verb', range: pair.key, key, verb: verb.key.text };
  }
  const keys =
    shape?.as === 'object' ? Object.keys(shape.keys) : shape?.as === 'prose' ? ['text', 'en', 'de', 'es'] : [];
  const absent = keys.filter((one) => !map.pairs.some((other) => other.key.text === one));
  return { kind: 'key-unknown', range: pair.key, key, near: nearest(key, absent), owner };
}

function missingKey(node: Node, key: string, under: string, unit: UnitShape): ShapeProblem {
  const range = node.kind === 'map' ? (node.pairs[0]?.key ?? node) : node;
  return { kind: 'key-missing', range, key, owner: under === '' ? ownerOf(unit) : under, node };
}

/** What messages call the unit: `step`, `part`, `tighten`. */
export function ownerOf(unit: UnitShape): string {
  return unit.verb ?? unit.def.split('/').at(-1) ?? unit.def;
}

/** A key that is there but misspelt is not also missing, and one place gets one problem. */
function oncePerMistake(problems: readonly ShapeProblem[]): ShapeProblem[] {
  const misspelt = new Set(problems.flatMap((problem) => (problem.kind === 'key-unknown' ? problem.near : [])));
  const sentences = problems.filter((problem) => problem.kind === 'prose-became-map');
  const seen = new Set<string>();
  return problems.filter((problem) => {
    if (problem.kind === 'key-missing' && misspelt.has(problem.key)) return false;
    if (sentences.some((one) => one !== problem && isWithin(problem.range, one.range))) return false;
    const place = `${problem.range.from}:${problem.range.to}:${problem.kind === 'key-missing' ? problem.key : ''}`;
    if (seen.has(place)) return false;
    seen.add(place);
    return true;
  });
}

function isWithin(inner: ItemRange, outer: ItemRange): boolean {
  return inner.item === outer.item && inner.from >= outer.from && inner.to <= outer.to;
}
