import type { Shape } from '../../model/shape';
import type { ScalarNode } from '../../syntax/node';
import { quantityText } from './quantityText';
import { dimensionOf } from './shapeBelow';

/** A scalar as it is to be written: its lines, those below the first set in by two, and where it ends in its item. */
export interface ScalarLines {
  readonly lines: readonly string[];
  readonly end: number;
}

/** Prose is never wrapped anew: where the writer broke it, it stays broken. Undefined where it is best left alone. */
export function scalarLines(node: ScalarNode, shape: Shape | undefined): ScalarLines | undefined {
  if (node.style === 'literal' || node.style === 'folded') return blockLines(node);
  const source = sourceOf(node);
  if (!source.includes('\n')) return { lines: [scalarText(node, shape)], end: node.to };
  const [first = '', ...more] = source.split('\n');
  const lines = [first.trimEnd(), ...more.map((line) => (line.trim() === '' ? '' : `  ${line.trim()}`))];
  return { lines, end: node.to };
}

/** The source of a scalar on one line; where its place asks for a quantity, in standard symbols. Quotes stay. */
export function scalarText(node: ScalarNode, shape: Shape | undefined): string {
  const source = sourceOf(node);
  const dimension = dimensionOf(shape);
  const quote = node.style === 'plain' ? '' : source.charAt(0);
  if (dimension === undefined || source !== quote + node.text + quote) return source;
  const text = quantityText(node, dimension);
  return quote !== '' && /["'\\]/.test(text) ? source : quote + text + quote;
}

function sourceOf(node: ScalarNode): string {
  return node.item.text.slice(node.from, node.to);
}

/** A block scalar moves as a whole. One that says how far it is indented or keeps the blank lines behind it stays. */
function blockLines(node: ScalarNode): ScalarLines | undefined {
  const source = sourceOf(node);
  const [header = '', ...more] = source.split('\n');
  if (/^[|>][^#]*[+1-9]/.test(header)) return undefined;
  while (more.length > 0 && more.at(-1)?.trim() === '') more.pop();
  const first = more.find((line) => line.trim() !== '') ?? '';
  const indent = first.length - first.trimStart().length;
  const lines = more.map((line) => shifted(line.replace(/\r$/, ''), indent));
  const length = [header, ...more].join('\n').replace(/\r$/, '').length;
  return { lines: [header.trimEnd(), ...lines], end: node.from + length };
}

function shifted(line: string, indent: number): string {
  const content = line.slice(Math.min(indent, line.length));
  return content === '' ? '' : `  ${content}`;
}
