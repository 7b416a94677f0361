import type { ChangedSince } from '../../core/sheet/build/buildContext';
import { buildSheet } from '../../core/sheet/buildSheet';
import { sheetToHtml } from '../../core/sheet/html';
import type { Sheet } from '../../core/sheet/sheet';
import { reasonOf, writeWhole } from '../../node/nodeFiles';
import { pdfProblemMessage, renderPdf } from '../../node/pdf/pdfEngine';
import { type ComparedWith, comparedWith } from '../history/comparedWith';
import { CommandProblem } from '../problem';
import { plural, shown } from '../report/text';
import type { Terminal } from '../terminal';
import { missingFigures, refusedFigures } from './missingFigures';
import { type ChosenBuild, chosenBuilds, type OpenProcedure, openProcedure } from './openProcedure';
import { Progress } from './progress';
import { layoutFor, type SheetRequest } from './sheetRequest';
import { targetFor } from './sheetTargets';

/** What became of the sheets that were asked for. */
export interface Printed {
  readonly written: number;
  readonly notReleased: number;
  readonly failed: number;
}

const LANGUAGES: { readonly [Language in Sheet['language']]: string } = { en: 'English', de: 'German', es: 'Spanish' };

interface Job {
  readonly open: OpenProcedure;
  readonly compared: ComparedWith | undefined;
  readonly picked: ChosenBuild;
}

/**
 * Prints every sheet that was asked for. Of several, one that cannot be printed is told and does not hold up the others;
 * a single one throws its problem. `sources` is told the files that each procedure was read from.
 */
export async function printSheets(
  terminal: Terminal,
  request: SheetRequest,
  files: readonly string[],
  isFolder: boolean,
  sources: (paths: readonly string[]) => void = () => {},
): Promise<Printed> {
  const failures: string[] = [];
  const failed = (error: unknown): void => {
    if (!(error instanceof CommandProblem) || !isFolder) throw error;
    failures.push(error.message);
  };
  const jobs: Job[] = [];
  for (const file of files) await jobsOf(request, file, sources).then((more) => jobs.push(...more), failed);
  const progress = new Progress(terminal, jobs.length);
  let [written, notReleased] = [0, 0];
  for (const job of jobs) {
    progress.at(`${shown(job.open.file)}, ${job.picked.build.id}`);
    await printOne(terminal, request, job, isFolder, progress).then((errors) => {
      written += 1;
      notReleased += errors > 0 ? 1 : 0;
    }, failed);
  }
  progress.end();
  for (const message of failures) terminal.err(`witnessmark: ${message}\n`);
  return { written, notReleased, failed: failures.length };
}

async function jobsOf(
  request: SheetRequest,
  file: string,
  sources: (paths: readonly string[]) => void,
): Promise<Job[]> {
  const open = await openProcedure(file, request.today, sources);
  const { changedSince } = request;
  const compared = changedSince === undefined ? undefined : await comparedWith(file, changedSince);
  return chosenBuilds(open, request.build, request.allBuilds).map((picked) => ({ open, picked, compared }));
}

/** Gives how many errors stand against what was written. */
async function printOne(
  terminal: Terminal,
  request: SheetRequest,
  { open, picked, compared }: Job,
  isFolder: boolean,
  progress: Progress,
): Promise<number> {
  const target = targetFor(request, open.file, picked.build.id, isFolder);
  const built = sheetOf(request, open, picked, compared?.(picked.build.id));
  await write(target, built, request);
  const errors = built.notReleased?.errors ?? 0;
  progress.clear();
  for (const figure of missingFigures(built))
    terminal.err(
      `witnessmark: the figure ${figure} has no drawing that can be printed; its words stand in its place\n`,
    );
  const missing = built.untranslated?.length ?? 0;
  if (missing > 0)
    terminal.err(
      `witnessmark: ${plural(missing, 'text')} without a translation into ${LANGUAGES[built.language]}; the sheet lists them\n`,
    );
  terminal.out(
    `Wrote ${shown(target)} for ${picked.build.label}${errors === 0 ? '' : `; not released: ${plural(errors, 'error')}`}\n`,
  );
  return errors;
}

function sheetOf(request: SheetRequest, open: OpenProcedure, picked: ChosenBuild, changed?: ChangedSince): Sheet {
  const torqueBands = request.torqueBands ? 'computed' : 'left-out';
  return buildSheet(open.procedure, picked, {
    findings: open.findings,
    ...layoutFor(request, open),
    torqueBands,
    ...(changed && { changed }),
  });
}

async function write(target: string, built: Sheet, request: SheetRequest): Promise<void> {
  const content = /\.html?$/i.test(target) ? sheetToHtml(built, { mode: 'file' }) : await pdfOf(built, request);
  try {
    writeWhole(target, content);
  } catch (error) {
    throw new CommandProblem(`Cannot write ${shown(target)}: ${reasonOf(error)}`);
  }
}

async function pdfOf(built: Sheet, { fillable, archive }: SheetRequest): Promise<Uint8Array> {
  const printed = await renderPdf(built, new Map(), {
    variant: fillable ? 'fillable' : 'print',
    standard: archive ? 'archive' : 'ua',
  });
  if (!('problem' in printed)) return printed;
  const figures = printed.problem.kind === 'refused' ? await refusedFigures(built) : [];
  const cause = figures.length === 0 ? '' : `the figure ${figures.join(', ')}: `;
  throw new CommandProblem(`The sheet cannot be printed: ${cause}${pdfProblemMessage(printed.problem)}`);
}
