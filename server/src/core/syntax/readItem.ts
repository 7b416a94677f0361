import { Composer, Lexer, Parser, type YAMLError, type Document as YamlDocument } from 'yaml';
import { breakageMessage } from './breakageMessage';
import { convertNode } from './convertNode';
import type { Item, Node, SyntaxProblem } from './node';
import { readUsually } from './usualBlock';

/** The item while it is being read; what is read from it refers to it. */
export interface ItemInMaking {
  text: string;
  root: Node | undefined;
  problems: SyntaxProblem[];
  /** A question mark stands before a space or line end somewhere; only then is each key looked at for one. */
  mayHoldExplicitKey: boolean;
}

/** Scalars stay text: their place in the document says what they are, never their looks. */
const OPTIONS = {
  schema: 'failsafe',
  uniqueKeys: false,
  merge: false,
  prettyErrors: false,
  logLevel: 'silent',
} as const;

/** Reads the text of one item. Broken text gives what can be read of it, and problems; nothing is ever thrown. */
export function readItem(text: string): Item {
  const item: ItemInMaking = { text, root: undefined, problems: [], mayHoldExplicitKey: false };
  item.root = readUsually(item);
  return item.root === undefined ? readByLibrary(text) : item;
}

/** Reads with the YAML library, which says what everything means that is not written in the usual way. */
export function readByLibrary(text: string): Item {
  const item: ItemInMaking = { text, root: undefined, problems: [], mayHoldExplicitKey: /\?\s/.test(text) };
  try {
    const [document, more] = composeAll(text);
    if (more !== undefined) reportNotPlain(item, more.range[0], 'second-document');
    if (document !== undefined) readDocumentNode(item, document);
  } catch {
    // The library is not meant to throw, but an editor must outlive it when it does.
    item.problems.push({
      kind: 'broken',
      range: { item, from: 0, to: text.length },
      message: 'This text cannot be read',
    });
  }
  if (text.includes('#')) findLostText(item);
  // Where text was lost, the closing bracket or quote was lost with it: one cause, one problem.
  // The same holds for a sign that YAML gives a meaning to and for the error behind it.
  if (item.problems.some((problem) => problem.kind === 'text-lost' || problem.kind === 'not-plain')) {
    item.problems = item.problems.filter((problem) => problem.kind !== 'broken');
  }
  return item;
}

function composeAll(text: string): YamlDocument.Parsed[] {
  const composer = new Composer(OPTIONS);
  return [...composer.compose(new Parser().parse(text), true, text.length)] as YamlDocument.Parsed[];
}

function readDocumentNode(item: ItemInMaking, document: YamlDocument.Parsed): void {
  item.root = convertNode(item, document.contents);
  // What follows the first error of an item is mostly its echo, but a missing bracket explains the others.
  const error = document.errors.find((one) => one.code === 'MISSING_CHAR') ?? document.errors[0];
  if (error !== undefined) item.problems.push(brokenAt(item, error));
}

function brokenAt(item: ItemInMaking, error: YAMLError): SyntaxProblem {
  const [start, end] = error.pos;
  const from = Math.max(0, Math.min(start, item.text.length));
  const to = Math.max(from, Math.min(Math.max(end, start + 1), item.text.length));
  const range = from === to && from > 0 ? { item, from: from - 1, to } : { item, from, to };
  return { kind: 'broken', range: trimToLine(range), message: breakageMessage(error, item.text) };
}

/** An error that runs over many lines is shown on its first one. */
function trimToLine<T extends { item: Item; from: number; to: number }>(range: T): T {
  const newline = range.item.text.indexOf('\n', range.from);
  return newline > range.from && newline < range.to ? { ...range, to: newline } : range;
}

function reportNotPlain(item: ItemInMaking, from: number, what: 'second-document'): void {
  const at = Math.min(from, item.text.length);
  item.problems.push({ kind: 'not-plain', range: { item, from: at, to: Math.min(at + 3, item.text.length) }, what });
}

/**
 * A `#` with a space before it starts a comment, and what follows is lost. A remark has a space behind its `#` as well;
 * `#10-32` and `bolt #3` have none, and were meant as text.
 */
function findLostText(item: ItemInMaking): void {
  let offset = 0;
  for (const lexeme of new Lexer().lex(item.text)) {
    if (isMark(lexeme)) continue;
    if (lexeme.startsWith('#') && !lexeme.startsWith('##') && looksLikeText(item.text, offset, lexeme)) {
      item.problems.push({
        kind: 'text-lost',
        range: { item, from: offset, to: offset + lexeme.trimEnd().length },
        lost: lexeme.trimEnd(),
      });
    }
    offset += lexeme.length;
  }
}

/** The lexer's own marks stand for no text of the document. */
function isMark(lexeme: string): boolean {
  return lexeme === '\u0002' || lexeme === '\u0018' || lexeme === '\u001f' || lexeme === '\ufeff';
}

function looksLikeText(text: string, offset: number, lexeme: string): boolean {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  const before = text.slice(lineStart, offset);
  if (before.trim() === '') return false;
  if (/^#\s*$/.test(lexeme)) return !/\s{2,}$/.test(before);
  if (/^# \d/.test(lexeme)) return !/\s{2,}$/.test(before);
  return !/^#\s/.test(lexeme);
}
