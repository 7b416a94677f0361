import type { MapNode, Node } from '../syntax/node';
import { nearest } from '../text/near';
import { isVerb } from './instructionDef';
import { itemShape, keyShape } from './plainValue';
import { isDay } from './readValues';
import type { Shape, UnitShape } from './shape';
import type { ShapeProblem } from './shapeProblem';

const ID = /^[a-z][a-z0-9-]{2,}$/;
const RESERVED = new Set(['otherwise', 'all', 'any', 'none']);

/** Problems that a JSON Schema cannot tell: what stands twice, what is empty, text that turned into something else. */
export function structureProblems(node: Node, unit: UnitShape): ShapeProblem[] {
  const problems: ShapeProblem[] = [];
  if (unit.verb === 'say' && node.kind === 'map') {
    const whole = sentenceProblem(node);
    if (whole !== undefined) return [whole];
  }
  visit(node, unit.shape, unit.verb ?? unit.def.split('/').at(-1) ?? '', problems);
  return problems;
}

/** An entry of `do` without a verb: a sentence that a colon cut in two, or an instruction still to be typed. */
function sentenceProblem(map: MapNode): ShapeProblem | undefined {
  if (map.pairs.some((pair) => pair.key.text === 'say')) return undefined;
  const [only, second] = map.pairs;
  if (only !== undefined && second === undefined && looksLikeWords(only.key.text)) {
    return { kind: 'prose-became-map', range: map, node: map };
  }
  return { kind: 'verb-missing', range: only?.key ?? map };
}

function looksLikeWords(key: string): boolean {
  return /[\sA-Z]/.test(key) && !isVerb(key.toLowerCase());
}

function visit(node: Node, shape: Shape | undefined, owner: string, problems: ShapeProblem[]): void {
  if (shape?.as === 'unit' || shape?.as === 'instruction') return;
  if (node.kind === 'map' && shape?.as === 'prose' && !node.pairs.some((pair) => pair.key.text === 'text')) {
    problems.push({ kind: 'prose-became-map', range: node, node });
    return;
  }
  if (node.kind === 'list') for (const item of node.items) visit(item, itemShape(shape), owner, problems);
  if (node.kind === 'map') visitMap(node, shape, owner, problems);
  if (node.kind === 'scalar') visitScalar(node, shape, problems);
}

function visitMap(map: MapNode, shape: Shape | undefined, owner: string, problems: ShapeProblem[]): void {
  const seen = new Set<string>();
  for (const [index, { key, value }] of map.pairs.entries()) {
    const declares = shape?.as === 'entries' && shape.declares !== undefined;
    if (seen.has(key.text)) problems.push({ kind: 'duplicate-key', range: key, key: key.text, declares });
    seen.add(key.text);
    if (declares && !isId(key.text)) problems.push({ kind: 'wrong-id', range: key, text: key.text });
    if (value === undefined && !isFurtherPiece(map, index, shape))
      problems.push(emptyProblem(map, index, shape, owner));
    if (value !== undefined) visit(value, keyShape(shape, key.text), key.text, problems);
  }
}

/** A text that several commas cut is told at its first piece. */
function isFurtherPiece(map: MapNode, index: number, shape: Shape | undefined): boolean {
  const isPiece = (at: number): boolean => {
    const pair = map.pairs[at];
    return pair !== undefined && pair.value === undefined && shape?.as === 'object' && !(pair.key.text in shape.keys);
  };
  return map.flow && index > 1 && isPiece(index) && isPiece(index - 1);
}

function emptyProblem(map: MapNode, index: number, shape: Shape | undefined, owner: string): ShapeProblem {
  const key = map.pairs[index]?.key ?? map;
  const text = map.pairs[index]?.key.text ?? '';
  const known = shape?.as === 'object' ? text in shape.keys : shape !== undefined && shape.as !== 'prose';
  if (map.flow && !known && index > 0 && map.pairs[index - 1]?.value !== undefined)
    return { kind: 'cut-at-comma', range: key, key: text };
  if (shape?.as === 'object' && !known) {
    return { kind: 'key-unknown', range: key, key: text, near: nearest(text, Object.keys(shape.keys)), owner };
  }
  return { kind: 'empty', range: key, key: text };
}

function visitScalar(node: Node & { kind: 'scalar' }, shape: Shape | undefined, problems: ShapeProblem[]): void {
  if (shape?.as !== 'scalar') return;
  if (shape.scalar.is === 'declares' && !isId(node.text))
    problems.push({ kind: 'wrong-id', range: node, text: node.text });
  if (shape.scalar.is === 'date' && /^\d{4}-\d{2}-\d{2}$/.test(node.text) && !isDay(node.text)) {
    problems.push({ kind: 'wrong-date', range: node, text: node.text });
  }
}

/** Whether a text may be the id of something that is declared. */
export function isId(text: string): boolean {
  return ID.test(text) && !RESERVED.has(text);
}
