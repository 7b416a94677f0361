import { readFileSync } from 'node:fs';
import { formatDocument } from '../../core/ide/format/formatDocument';
import { documentKindOf } from '../../core/syntax/documentKind';
import { readDocument, type SyntaxDocument } from '../../core/syntax/readDocument';
import { ReadingMemo } from '../../core/syntax/readingMemo';
import { applyEdits } from '../../core/text/span';
import { reasonOf, uriOfPath, writeWhole } from '../../node/nodeFiles';
import { findDocuments } from '../findDocuments';
import { readOptions } from '../options';
import { CommandProblem } from '../problem';
import { plural, shown } from '../report/text';
import type { Terminal } from '../terminal';

export const FORMAT_HELP = `witnessmark format PATH… [options]

Formats documents in place; folders are walked. Indentation, spacing, the order of keys and unit symbols change, and
never what a document says. What cannot be read stays as it is.

  --check                          change nothing; list the documents that would change
  --stdin --path NAME              format what comes on the standard input, named NAME, to the standard output

Exit code: 0 formatted, or nothing to do; 1 with --check, where something would change; 2 could not run.
`;

/** Runs \`witnessmark format\`. */
export function format(terminal: Terminal, args: readonly string[]): number {
  const { values, positionals } = readOptions('format', args, {
    check: { type: 'boolean' },
    stdin: { type: 'boolean' },
    path: { type: 'string' },
  });
  const isCheck = values.check === true;
  if (values.stdin === true) return formatInput(terminal, values.path, positionals, isCheck);
  if (values.path !== undefined) throw new CommandProblem('--path names what comes with --stdin; it needs --stdin');
  if (positionals.length === 0) throw new CommandProblem('Name a file or folder to format; . stands for this folder');
  return formatFiles(terminal, findDocuments(positionals).paths, isCheck);
}

function formatFiles(terminal: Terminal, paths: readonly string[], isCheck: boolean): number {
  let changed = 0;
  for (const path of paths) {
    const { before, after, document } = formatted(path, textOf(path));
    sayWhatStays(terminal, document, shown(path));
    if (before === after) continue;
    changed++;
    if (!isCheck) write(path, after);
    terminal.out(`${isCheck ? 'Would format' : 'Formatted'} ${shown(path)}\n`);
  }
  const done = isCheck ? 'to be formatted' : 'formatted';
  terminal.out(`${plural(changed, 'document')} ${done}, ${paths.length - changed} as they should be\n`);
  return isCheck && changed > 0 ? 1 : 0;
}

function formatInput(
  terminal: Terminal,
  path: string | boolean | undefined,
  more: readonly string[],
  isCheck: boolean,
): number {
  if (typeof path !== 'string') throw new CommandProblem('--stdin needs --path NAME, since the name tells the kind');
  if (more.length > 0) throw new CommandProblem('--stdin formats the standard input alone; name no other path');
  if (documentKindOf(path.replaceAll('\\', '/')) === undefined)
    throw new CommandProblem(`${path} is no document of ours by its name`);
  const { before, after, document } = formatted(path, textOf(0));
  sayWhatStays(terminal, document, path);
  if (!isCheck) terminal.out(after);
  else if (before !== after) terminal.out(`Would format ${path}\n`);
  return isCheck && before !== after ? 1 : 0;
}

interface Formatted {
  readonly before: string;
  readonly after: string;
  readonly document: SyntaxDocument;
}

function formatted(path: string, before: string): Formatted {
  const kind = documentKindOf(path.replaceAll('\\', '/'));
  if (kind === undefined) throw new CommandProblem(`${path} is no document of ours by its name`);
  const document = readDocument(uriOfPath(path), kind, before, new ReadingMemo());
  return { before, after: applyEdits(before, formatDocument(document)), document };
}

/** The text of a file, or of the standard input. What is no UTF-8 would not come back as it was, so it is refused. */
function textOf(from: string | 0): string {
  const name = from === 0 ? 'the standard input' : from;
  let bytes: Buffer;
  try {
    bytes = readFileSync(from);
  } catch (error) {
    throw new CommandProblem(`Cannot read ${name}: ${reasonOf(error)}`);
  }
  const text = bytes.toString('utf8');
  if (!Buffer.from(text, 'utf8').equals(bytes))
    throw new CommandProblem(`Cannot format ${name}: it is not written in UTF-8`);
  return text;
}

function write(path: string, text: string): void {
  try {
    writeWhole(path, text);
  } catch (error) {
    throw new CommandProblem(`Cannot write ${path}: ${reasonOf(error)}`);
  }
}

/** Said on the error stream, so that what is formatted on the other one stays what it is. */
function sayWhatStays(terminal: Terminal, { problems }: SyntaxDocument, name: string): void {
  const isWhole = problems.some((problem) => {
    if (problem.kind === 'conflict-marker') return true;
    return problem.kind === 'not-plain' && (problem.what === 'directive' || problem.what === 'second-document');
  });
  const what = isWhole ? 'Nothing in' : problems.length > 0 ? 'Not everything in' : undefined;
  if (what !== undefined) terminal.err(`${what} ${name} can be formatted; witnessmark check says why\n`);
}
