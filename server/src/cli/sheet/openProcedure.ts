import { ProcedureView } from '../../core/analysis/procedureView';
import { Workspace } from '../../core/analysis/workspace';
import { type Build, countBuilds, type PickedBuild, pickBuild } from '../../core/builds';
import { checkDocument } from '../../core/rules/checkDocument';
import type { Finding } from '../../core/rules/finding';
import { listSheetBuilds } from '../../core/sheet/buildSheet';
import { documentKindOf } from '../../core/syntax/documentKind';
import { NodeFiles, pathOfUri, uriOfPath } from '../../node/nodeFiles';
import { findDocuments } from '../findDocuments';
import { CommandProblem } from '../problem';

/** A procedure as it stands on disk, with all that it links to, and what the check finds in it. */
export interface OpenProcedure {
  readonly file: string;
  readonly procedure: ProcedureView;
  readonly workspace: Workspace;
  readonly findings: readonly Finding[];
}

/** The procedures among the documents that are named; every document below a folder that is none is passed over. */
export function procedureFiles(paths: readonly string[]): string[] {
  const files = paths.flatMap((path) => {
    const found = findDocuments([path]).paths.map((each) => ({ each, isNamed: uriOfPath(each) === uriOfPath(path) }));
    for (const { each, isNamed } of found)
      if (isNamed && !isProcedure(each)) throw new CommandProblem(noProcedure(path));
    return found.flatMap(({ each, isNamed }) => (isProcedure(each) ? [isNamed ? path : each] : []));
  });
  if (files.length === 0) throw new CommandProblem(`No procedures found in ${paths.join(', ')}`);
  return [...new Set(files)];
}

function isProcedure(path: string): boolean {
  return documentKindOf(uriOfPath(path)) === 'procedure';
}

function noProcedure(path: string): string {
  return `${path} is no procedure; a sheet is printed from a *.procedure.yaml`;
}

/** The files that a procedure was made from, or could be: a missing one may come. */
export interface SourceFiles {
  readonly paths: readonly string[];
}

/**
 * Reads and checks a procedure. `sources` is told which files that took, also where it then turns out that there is no
 * procedure in them.
 */
export async function openProcedure(
  file: string,
  today: string,
  sources: (paths: readonly string[]) => void = () => {},
): Promise<OpenProcedure> {
  const uri = uriOfPath(file);
  const workspace = new Workspace(findDocuments([file]).roots);
  await workspace.loadLinked(uri, new NodeFiles());
  sources([...workspace.snapshot.uris].map(pathOfUri));
  const document = workspace.snapshot.document(uri);
  if (document === undefined) throw new CommandProblem(`Cannot read ${file}`);
  const procedure = ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new CommandProblem(`${file} holds no procedure yet`);
  const { findings } = checkDocument(workspace.snapshot, document, { today });
  return { file, procedure, workspace, findings };
}

export type ChosenBuild = PickedBuild & { readonly kind: 'picked' };

/** The build that is named, the only one there is, or all. */
export function chosenBuilds(open: OpenProcedure, named: string | undefined, all: boolean): ChosenBuild[] {
  const builds = listSheetBuilds(open.procedure);
  if (all) return everyBuild(open, builds);
  const only = builds.length === 1 ? builds[0]?.id : undefined;
  const wanted = named ?? only;
  if (wanted === undefined)
    throw new CommandProblem(`Say which build of ${open.file} with --build, or --all-builds; ${thereAre(builds)}`);
  const picked = pickBuild(open.procedure.space, wanted);
  if (picked.kind === 'picked') return [picked];
  const problems = picked.problems.map((problem) => problem.text).join('; ');
  throw new CommandProblem(`--build ${wanted}: ${problems}; ${thereAre(builds)}`);
}

function everyBuild(
  { file, procedure: { space } }: OpenProcedure,
  builds: readonly Pick<Build, 'id'>[],
): ChosenBuild[] {
  const count = countBuilds(space.everything, space);
  if (count > builds.length)
    throw new CommandProblem(
      `${file} has ${count} builds, more than --all-builds prints at once; name one with --build`,
    );
  return builds.flatMap(({ id }) => {
    const picked = pickBuild(space, id);
    return picked.kind === 'picked' ? [picked] : [];
  });
}

function thereAre(builds: readonly Pick<Build, 'id'>[]): string {
  return `there are ${builds.map((build) => build.id).join(' | ')}`;
}
