import { basename, resolve } from 'node:path';
import { ProcedureView } from '../../core/analysis/procedureView';
import { type Language, type Settings, settingsFor } from '../../core/analysis/settings';
import { Workspace } from '../../core/analysis/workspace';
import { type PickedBuild, pickBuild } from '../../core/builds';
import { checkDocument } from '../../core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../core/sheet/buildSheet';
import { sheetToHtml } from '../../core/sheet/html';
import type { Sheet } from '../../core/sheet/sheet';
import { documentKindOf } from '../../core/syntax/documentKind';
import { NodeFiles, reasonOf, uriOfPath, writeWhole } from '../../node/nodeFiles';
import { closePdfEngines, pdfProblemMessage, renderPdf } from '../../node/pdf/pdfEngine';
import { findDocuments } from '../findDocuments';
import { dayOption, oneOf, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { plural, shown } from '../report/text';
import type { Terminal } from '../terminal';
import { writeChart } from './sheetChart';

export const SHEET_HELP = `witnessmark sheet FILE [options]

Prints the step sheet of a procedure for one build.

  --build BUILD            variant and options of the finished unit, for example v4-28r,cover-44;
                           arrives=OPTION says how the unit comes in. Without it, the builds are listed
  --paper a4|letter        paper (as the settings say, else a4)
  --sides single|double    one side of the paper, or both with mirrored margins (as the settings say, else single)
  --language en            language of the sheet (as the settings say, else en)
  -o, --out FILE.pdf|.html where to write it (the procedure's name and build, as PDF, in this folder)
  --torque-bands           show in the torque table what each thread and class usually takes, worked out;
                           the maker's value stays the one to tighten to
  --chart                  draw the walk instead: every part against every step, findings included
  --format html|svg        how the chart is written (as the name of the file says, else html)
  --on DATE                judge dates as of this day when the errors are counted (today)

A procedure with errors prints with the band "not released". Exit code: 0 written, 2 could not.
`;

/** Runs \`witnessmark sheet\`. */
export async function sheet(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('sheet', args, {
    build: { type: 'string' },
    paper: { type: 'string' },
    sides: { type: 'string' },
    language: { type: 'string' },
    out: { type: 'string', short: 'o' },
    'torque-bands': { type: 'boolean' },
    chart: { type: 'boolean' },
    format: { type: 'string' },
    on: { type: 'string' },
  });
  const [file, extra] = positionals;
  if (file === undefined || extra !== undefined)
    throw new CommandProblem('Name one procedure; see witnessmark sheet --help');
  if (values.chart !== true && values.format !== undefined)
    throw new CommandProblem('--format is for --chart; a sheet is written as the name after --out says');
  if (values.chart === true && values['torque-bands'] === true)
    throw new CommandProblem('--torque-bands is for the sheet; the chart has no torque table');
  const today = dayOption(values.on);
  const { procedure, workspace } = await openProcedure(file);
  const picked = chosenBuild(procedure, values.build);
  const { findings } = checkDocument(workspace.snapshot, procedure.document, { today });
  if (values.chart === true) {
    writeChart(terminal, procedure, picked, findings, { file, format: values.format, out: values.out });
    return 0;
  }
  const settings = settingsFor(workspace.snapshot, procedure.document.uri);
  const paper = oneOf('paper', values.paper, ['a4', 'letter'], settings.paper);
  const sides = oneOf('sides', values.sides, ['single', 'double'], settings.sides);
  const language = sheetLanguage(values.language, settings);
  const out = outputPath(file, values.out, picked.build.id);
  const torqueBands = values['torque-bands'] === true ? 'computed' : 'left-out';
  const built = buildSheet(procedure, picked, { findings, settings, language, paper, sides, torqueBands });
  await write(out, built);
  const errors = built.notReleased?.errors ?? 0;
  terminal.out(
    `Wrote ${shown(out)} for ${picked.build.label}${errors === 0 ? '' : `; not released: ${plural(errors, 'error')}`}\n`,
  );
  return 0;
}

async function openProcedure(file: string): Promise<{ procedure: ProcedureView; workspace: Workspace }> {
  const found = findDocuments([file]);
  const uri = uriOfPath(file);
  if (found.paths.length !== 1 || documentKindOf(uri) !== 'procedure') {
    throw new CommandProblem(`${file} is no procedure; a sheet is printed from a *.procedure.yaml`);
  }
  const workspace = new Workspace(found.roots);
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  if (document === undefined) throw new CommandProblem(`Cannot read ${file}`);
  const procedure = ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new CommandProblem(`${file} holds no procedure yet`);
  return { procedure, workspace };
}

function chosenBuild(procedure: ProcedureView, text: string | boolean | undefined): PickedBuild & { kind: 'picked' } {
  const builds = listSheetBuilds(procedure);
  const only = builds.length === 1 ? builds[0]?.id : undefined;
  const wanted = typeof text === 'string' ? text : only;
  if (wanted === undefined)
    throw new CommandProblem(`Say which build with --build; there are ${builds.map((build) => build.id).join(' | ')}`);
  const picked = pickBuild(procedure.space, wanted);
  if (picked.kind === 'picked') return picked;
  throw new CommandProblem(`--build ${wanted}: ${picked.problems.map((problem) => problem.text).join('; ')}`);
}

function sheetLanguage(value: string | boolean | undefined, settings: Settings): 'en' {
  const language: Language = oneOf('language', value, ['en', 'de', 'es'], settings.language);
  if (language !== 'en')
    throw new CommandProblem(`Sheets are written in English only so far, not in ${language}; give --language en`);
  return language;
}

function outputPath(file: string, out: string | boolean | undefined, build: string): string {
  if (typeof out !== 'string')
    return resolve(`${basename(file).replace(/\.procedure\.ya?ml$/, '')}-${build.replaceAll(',', '-')}.pdf`);
  if (!/\.(?:pdf|html?)$/i.test(out))
    throw new CommandProblem(`--out takes a file that ends in .pdf or .html, not "${out}"`);
  return resolve(out);
}

async function write(out: string, built: Sheet): Promise<void> {
  const content = /\.html?$/i.test(out) ? sheetToHtml(built, { mode: 'file' }) : await pdfOf(built);
  try {
    writeWhole(out, content);
  } catch (error) {
    throw new CommandProblem(`Cannot write ${shown(out)}: ${reasonOf(error)}`);
  }
}

async function pdfOf(built: Sheet): Promise<Uint8Array> {
  try {
    const printed = await renderPdf(built, new Map());
    if ('problem' in printed)
      throw new CommandProblem(`The sheet cannot be printed: ${pdfProblemMessage(printed.problem)}`);
    return printed;
  } finally {
    await closePdfEngines();
  }
}
