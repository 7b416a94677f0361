import { declarationsIn } from '../../core/analysis/declarations';
import { Workspace } from '../../core/analysis/workspace';
import { thingsNamed, type UsedThing, type User, whereUsed } from '../../core/ide/whereUsed';
import { LineIndex } from '../../core/text/lineIndex';
import { nearest } from '../../core/text/near';
import { NodeFiles, pathOfUri, uriOfPath } from '../../node/nodeFiles';
import { findDocuments } from '../findDocuments';
import { oneOf, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { plural, shown } from '../report/text';
import { type Terminal, toned } from '../terminal';

export const WHERE_HELP = `witnessmark where NAME [PATH…] [options]

Says what depends on a thing: every procedure with its steps and builds, every family, kit and stores. NAME is an id
(torque-wrench-10), kind/id (part/rod-clip), a number of a part, kit or procedure, or a document's file name.

  --format text|json   how the answer is written (text)

Exit code: 0 it is used, 1 nothing depends on it, 2 there is no such thing, or could not run.
`;

/** Runs \`witnessmark where\`. */
export async function where(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('where', args, { format: { type: 'string' } });
  const [name, ...paths] = positionals;
  if (name === undefined) throw new CommandProblem('Say what to look for: an id, a number or a file name');
  const format = oneOf('format', values.format, ['text', 'json'], 'text');
  const { snapshot } = await opened(paths.length === 0 ? ['.'] : paths);
  const things = thingsNamed(snapshot, name);
  if (things.length === 0) throw new CommandProblem(`Nothing is called ${name}${meant(snapshot, name)}`);
  const used = things.map((target) => whereUsed(snapshot, target));
  const lines = (uri: string) => new LineIndex(snapshot.document(uri)?.text ?? '');
  terminal.out(format === 'json' ? usedJson(used, lines) : usedText(terminal, used, lines));
  return used.some(({ users }) => users.length > 0) ? 0 : 1;
}

async function opened(paths: readonly string[]): Promise<Workspace> {
  const found = findDocuments(paths);
  const workspace = new Workspace(found.roots);
  const files = new NodeFiles();
  for (const path of found.paths) await workspace.loadLinked(uriOfPath(path), files);
  return workspace;
}

function meant(snapshot: Workspace['snapshot'], name: string): string {
  const ids = [...snapshot.uris].flatMap((uri) => {
    const document = snapshot.document(uri);
    return document === undefined ? [] : [...declarationsIn(document).ids()];
  });
  const near = nearest(name, ids);
  return near.length === 0 ? '' : `; did you mean ${near.join(' or ')}`;
}

type LinesOf = (uri: string) => LineIndex;

function usedText(terminal: Terminal, used: readonly UsedThing[], linesOf: LinesOf): string {
  return used
    .map(({ name, at, users }) => {
      const line = linesOf(at.uri).position(at.span.start).line + 1;
      const head = `${toned(terminal, 'strong', name)} ${toned(terminal, 'quiet', `${shown(pathOfUri(at.uri))}:${line}`)}`;
      const body = users.map((user) => userText(terminal, user, linesOf(user.uri)));
      return `${[head, ...body, sumOf(users)].join('\n')}\n`;
    })
    .join('\n');
}

/** Steps are named once each, whatever stands in them. */
function userText(terminal: Terminal, user: User, lines: LineIndex): string {
  const head = `  ${user.kind} ${user.document} ${toned(terminal, 'quiet', shown(pathOfUri(user.uri)))}`;
  const seen = new Set<string>();
  const places = user.places.flatMap(({ span, step, builds }) => {
    const line = lines.position(span.start).line + 1;
    if (step !== undefined && seen.has(step)) return [];
    seen.add(step ?? '');
    const on = builds === '' ? '' : ` (${builds})`;
    return [`    line ${line}${step === undefined ? '' : `: step ${step}${on}`}`];
  });
  return [head, ...places].join('\n');
}

function sumOf(users: readonly User[]): string {
  if (users.length === 0) return '  nothing depends on it';
  const steps = users.flatMap(({ uri, places }) =>
    places.flatMap(({ step }) => (step === undefined ? [] : [`${uri} ${step}`])),
  );
  return `  ${plural(users.length, 'document')}, ${plural(new Set(steps).size, 'step')}`;
}

function usedJson(used: readonly UsedThing[], linesOf: LinesOf): string {
  const place = (uri: string, start: number) => {
    const { line, character } = linesOf(uri).position(start);
    return { path: shown(pathOfUri(uri)), line: line + 1, column: character + 1 };
  };
  const report = used.map(({ name, at, users }) => ({
    name,
    declared: place(at.uri, at.span.start),
    users: users.map(({ uri, document, kind, places }) => ({
      document,
      kind,
      places: places.map(({ span, step, builds }) => ({
        ...place(uri, span.start),
        step,
        builds: builds || undefined,
      })),
    })),
  }));
  return `${JSON.stringify(report, null, 2)}\n`;
}
