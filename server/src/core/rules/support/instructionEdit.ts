import type { Instruction } from '../../model/generated/types';
import type { ItemRange, MapNode, Node, ScalarNode } from '../../syntax/node';
import type { FixEdit } from '../ruleContext';
import { appendTo } from './listEdit';
import { newlineOf } from './newline';

/** Keys of an instruction behind which its tools and consumables stand. */
const BEFORE_TOOLS = new Set([
  'torque',
  'angle',
  'passes',
  'in-order',
  'plus',
  'count',
  'to',
  'by',
  'at',
  'amount',
  'accept',
  'say',
]);

/**
 * The edit that adds an id to `with` or `using` of an instruction, or starts that key; undefined where the instruction
 * is written in a way that only a person should change.
 */
export function addToInstruction(instruction: Instruction, key: 'with' | 'using', id: string): FixEdit | undefined {
  const { node } = instruction;
  if (node.kind === 'scalar') return sentenceToMap(node, key, id);
  if (node.kind !== 'map') return undefined;
  const pair = node.pairs.find((one) => one.key.text === key);
  if (pair === undefined) return startKey(node, instruction.verb, `${key}: ${id}`);
  if (pair.value === undefined) return { range: endOf(pair.key, 1), text: ` ${id}` };
  return addToValue(pair.value, id);
}

function addToValue(value: Node, id: string): FixEdit | undefined {
  if (value.kind === 'list') return appendTo(value, id);
  if (value.kind === 'map' && !value.flow) return undefined;
  const source = value.item.text.slice(value.from, value.to);
  return { range: value, text: `[${source}, ${id}]` };
}

/** A plain sentence becomes one with keys. On several lines it would read otherwise as a value, so it is left alone. */
function sentenceToMap(node: ScalarNode, key: string, id: string): FixEdit | undefined {
  const { item } = node;
  const source = item.text.slice(node.from, node.to);
  const lineStart = item.text.lastIndexOf('\n', node.from - 1) + 1;
  if (source.includes('\n') || !/^\s*-\s+$/.test(item.text.slice(lineStart, node.from))) return undefined;
  const indent = ' '.repeat(node.from - lineStart);
  return { range: node, text: `say: ${source}${newlineOf(item.text)}${indent}${key}: ${id}` };
}

function startKey(node: MapNode, verb: string, text: string): FixEdit | undefined {
  const first = node.pairs[0];
  const last = node.pairs.findLast(({ key }) => key.text === verb || BEFORE_TOOLS.has(key.text)) ?? first;
  if (first === undefined || last === undefined) return undefined;
  const { item } = node;
  const end = last.value ?? endOf(last.key, 1);
  if (node.flow) return { range: endOf(end, 0), text: `, ${text}` };
  const lineStart = item.text.lastIndexOf('\n', first.key.from - 1) + 1;
  const filled = item.text.slice(0, end.to).trimEnd().length;
  const newline = item.text.indexOf('\n', filled);
  const at = newline < 0 ? item.text.trimEnd().length : newline - (item.text.charAt(newline - 1) === '\r' ? 1 : 0);
  const indent = ' '.repeat(first.key.from - lineStart);
  return { range: { item, from: at, to: at }, text: `${newlineOf(item.text)}${indent}${text}` };
}

function endOf(range: ItemRange, further: number): ItemRange {
  const at = range.to + further;
  return { item: range.item, from: at, to: at };
}
