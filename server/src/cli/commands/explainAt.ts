import { resolve } from 'node:path';
import { Workspace } from '../../core/analysis/workspace';
import { pickBuild } from '../../core/builds';
import { buildSpaceOf, workingsAt } from '../../core/ide/workingsAt';
import { checkDocument } from '../../core/rules/checkDocument';
import { documentKindOf } from '../../core/syntax/documentKind';
import { LineIndex } from '../../core/text/lineIndex';
import type { Span } from '../../core/text/span';
import { NodeFiles, uriOfPath } from '../../node/nodeFiles';
import { assertReadable } from '../checkPaths';
import { findDocuments } from '../findDocuments';
import { CommandProblem } from '../problem';
import { plural } from '../report/text';
import { workingOut } from '../report/workingOut';
import type { Terminal } from '../terminal';

/** What `--at` names: lines and columns count from 1. */
interface NamedPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number | undefined;
}

/** Writes the workings at a place of a document; of a whole line where no column is named. */
export async function explainAt(
  terminal: Terminal,
  at: string,
  build: string | undefined,
  today: string,
): Promise<number> {
  const place = namedPlace(at);
  const { snapshot, document } = await opened(place.file);
  const lines = new LineIndex(document.text);
  const span = spanOf(place, lines);
  if (build !== undefined) assertBuild(buildSpaceOf(snapshot, document), build);
  const result = checkDocument(snapshot, document, { today });
  const findings = [...result.findings, ...result.conceded.map(({ finding }) => finding)];
  const narrowed = build === undefined ? {} : { build };
  const there = workingsAt({ snapshot, document, span, findings, ...narrowed });
  if (there === undefined) throw new CommandProblem(nothingThere(place));
  terminal.out(`${there.workings.map((working) => workingOut(terminal, working)).join('\n\n')}\n`);
  return 0;
}

function namedPlace(at: string): NamedPlace {
  const [, file, line, column] = /^(.+?):(\d+)(?::(\d+))?$/.exec(at) ?? [];
  if (file === undefined || line === undefined)
    throw new CommandProblem(`--at takes FILE:LINE or FILE:LINE:COLUMN, as check writes it, not "${at}"`);
  return { file, line: Number(line), column: column === undefined ? undefined : Number(column) };
}

async function opened(file: string) {
  if (documentKindOf(resolve(file).replaceAll('\\', '/')) !== undefined) assertReadable(file);
  const { paths, roots } = findDocuments([file]);
  const path = paths[0];
  if (path === undefined || paths.length > 1) throw new CommandProblem(`${file} is a folder; --at takes a document`);
  const workspace = new Workspace(roots);
  const uri = uriOfPath(path);
  await workspace.loadLinked(uri, new NodeFiles());
  const { snapshot } = workspace;
  const document = snapshot.document(uri);
  if (document === undefined) throw new CommandProblem(`Cannot read ${file}: it is larger than 8 MB`);
  return { snapshot, document };
}

function spanOf({ file, line, column }: NamedPlace, lines: LineIndex): Span {
  if (line < 1 || line > lines.lineCount)
    throw new CommandProblem(`${file} has no line ${line}; it has ${plural(lines.lineCount, 'line')}`);
  const [start, end] = [lines.lineStart(line - 1), lines.lineEnd(line - 1)];
  if (column === undefined) return { start, end };
  if (column < 1 || column > end - start + 1)
    throw new CommandProblem(
      `Line ${line} of ${file} has no column ${column}; it has ${plural(end - start, 'character')}`,
    );
  return { start: start + column - 1, end: start + column - 1 };
}

function assertBuild(space: ReturnType<typeof buildSpaceOf>, build: string): void {
  if (space === undefined) throw new CommandProblem('--build is for procedures and families');
  const picked = pickBuild(space, build);
  if (picked.kind === 'refused')
    throw new CommandProblem(`--build ${build}: ${picked.problems.map((problem) => problem.text).join('; ')}`);
}

function nothingThere({ file, line, column }: NamedPlace): string {
  const where = `${file}:${line}${column === undefined ? '' : `:${column}`}`;
  return `Nothing to work out at ${where}; point at a torque, a limit, a fit or another quantity`;
}
