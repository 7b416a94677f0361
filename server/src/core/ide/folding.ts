import type { Node, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { LineIndex } from '../text/lineIndex';
import { nodeSpan } from './nodeSpan';

/** Lines that can be folded away behind the first of them; both counted from 0. */
export interface Fold {
  readonly kind: 'block' | 'comment';
  readonly first: number;
  readonly last: number;
}

/** What can be folded: every key and every entry of a list that goes on below its line, and comments of several lines. */
export function foldsOf(document: SyntaxDocument): Fold[] {
  const lines = new LineIndex(document.text);
  const blocks = new Map<number, number>();
  const add = (start: number, end: number): void => {
    const first = lines.position(start).line;
    const last = lines.position(end).line;
    // Where several begin on a line, as a phase and its first key, the largest is meant.
    if (last > first) blocks.set(first, Math.max(last, blocks.get(first) ?? last));
  };
  if (document.root !== undefined) addBlocks(document, document.root, add);
  const folds = [...blocks].map(([first, last]): Fold => ({ kind: 'block', first, last }));
  return [...folds, ...commentRuns(document, lines)].sort((a, b) => a.first - b.first);
}

function addBlocks(document: SyntaxDocument, node: Node, add: (start: number, end: number) => void): void {
  if (node.kind === 'scalar') return;
  if (node.kind === 'list') {
    for (const item of node.items) {
      const { start, end } = nodeSpan(document, item);
      add(start, end);
      addBlocks(document, item, add);
    }
    return;
  }
  for (const { key, value } of node.pairs) {
    if (value === undefined) continue;
    add(document.spanOf(key).start, nodeSpan(document, value).end);
    addBlocks(document, value, add);
  }
}

/** Lines that follow each other and hold nothing but a comment. What looks like one in a text of several lines is text. */
function commentRuns(document: SyntaxDocument, lines: LineIndex): Fold[] {
  const inText = linesOfTexts(document, lines);
  const runs: Fold[] = [];
  let first: number | undefined;
  for (let line = 0; line <= lines.lineCount; line++) {
    const isComment = line < lines.lineCount && /^\s*#/.test(lines.lineText(line)) && !inText.has(line);
    if (isComment) first ??= line;
    else {
      if (first !== undefined && line - 1 > first) runs.push({ kind: 'comment', first, last: line - 1 });
      first = undefined;
    }
  }
  return runs;
}

function linesOfTexts(document: SyntaxDocument, lines: LineIndex): Set<number> {
  const found = new Set<number>();
  for (const scalar of document.root === undefined ? [] : scalarsBelow(document.root)) {
    const { start, end } = document.spanOf(scalar);
    const last = lines.position(end).line;
    for (let line = lines.position(start).line + 1; line <= last; line++) {
      if (lines.lineStart(line) < end) found.add(line);
    }
  }
  return found;
}

function* scalarsBelow(node: Node): Generator<ScalarNode> {
  if (node.kind === 'scalar') yield node;
  else if (node.kind === 'list') for (const item of node.items) yield* scalarsBelow(item);
  else for (const { value } of node.pairs) if (value !== undefined) yield* scalarsBelow(value);
}
