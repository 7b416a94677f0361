import { type Settings, settingsFor } from '../../core/analysis/settings';
import type { Paper, SheetLanguage, Sides } from '../../core/sheet/sheet';
import { dayOption, oneOf, type Parsed, readOptions } from '../options';
import { CommandProblem } from '../problem';
import type { OpenProcedure } from './openProcedure';

/** What `witnessmark sheet` was asked for, as far as it can be said before a document is read. */
export interface SheetRequest {
  readonly files: readonly string[];
  /** As typed; undefined where none is named. */
  readonly build: string | undefined;
  readonly allBuilds: boolean;
  readonly out: string | undefined;
  readonly fillable: boolean;
  readonly archive: boolean;
  readonly torqueBands: boolean;
  /** A revision of git that the sheet is compared with. */
  readonly changedSince: string | undefined;
  readonly watch: boolean;
  readonly chart: boolean;
  /** Of a chart. */
  readonly format: string | undefined;
  readonly today: string;
  /** Options whose absence the settings of each procedure fill. */
  readonly laid: Parsed['values'];
}

/** Reads the arguments; options that do not go together are told in a line. */
export function readSheetRequest(args: readonly string[]): SheetRequest {
  const { values, positionals } = readOptions('sheet', args, {
    build: { type: 'string' },
    'all-builds': { type: 'boolean' },
    paper: { type: 'string' },
    sides: { type: 'string' },
    language: { type: 'string' },
    out: { type: 'string', short: 'o' },
    fillable: { type: 'boolean' },
    archive: { type: 'boolean' },
    'torque-bands': { type: 'boolean' },
    'changed-since': { type: 'string' },
    watch: { type: 'boolean' },
    chart: { type: 'boolean' },
    format: { type: 'string' },
    on: { type: 'string' },
  });
  const request: SheetRequest = {
    files: positionals,
    build: text(values.build),
    allBuilds: values['all-builds'] === true,
    out: text(values.out),
    fillable: values.fillable === true,
    archive: values.archive === true,
    torqueBands: values['torque-bands'] === true,
    changedSince: text(values['changed-since']),
    watch: values.watch === true,
    chart: values.chart === true,
    format: text(values.format),
    today: dayOption(values.on),
    laid: values,
  };
  const refused = contradictionIn(request);
  if (refused !== undefined) throw new CommandProblem(refused);
  return request;
}

function text(value: string | boolean | undefined): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

function contradictionIn(request: SheetRequest): string | undefined {
  if (request.files.length === 0) return 'Name a procedure; see witnessmark sheet --help';
  if (request.allBuilds && request.build !== undefined) return 'Give --build or --all-builds, not both';
  return request.chart ? contradictionInChart(request) : contradictionInSheet(request);
}

function contradictionInSheet({ format, fillable, archive, out }: SheetRequest): string | undefined {
  if (format !== undefined) return '--format is for --chart; a sheet is written as the name after --out says';
  if (fillable && archive) return '--archive is for a sheet that no longer changes; a form is still to be filled in';
  if (out === undefined || !/\.html?$/i.test(out)) return undefined;
  if (archive) return '--archive is for a PDF';
  if (fillable) return '--fillable is for a PDF; a page has no form';
  return undefined;
}

function contradictionInChart(request: SheetRequest): string | undefined {
  if (request.torqueBands) return '--torque-bands is for the sheet; the chart has no torque table';
  if (request.archive) return '--archive is for the sheet';
  if (request.fillable) return '--fillable is for the sheet; nothing is filled in on the chart';
  if (request.files.length > 1 || request.allBuilds) return 'A chart is drawn for one procedure and one build';
  return request.watch ? '--watch is for the sheet; the editor shows the chart as you write' : undefined;
}

/** How a sheet is laid out: what was asked for, else what the settings of its procedure say. */
export interface SheetLayout {
  readonly settings: Settings;
  readonly paper: Paper;
  readonly sides: Sides;
  readonly language: SheetLanguage;
}

export function layoutFor({ laid }: SheetRequest, { procedure, workspace }: OpenProcedure): SheetLayout {
  const settings = settingsFor(workspace.snapshot, procedure.document.uri);
  return {
    settings,
    paper: oneOf('paper', laid.paper, ['a4', 'letter'], settings.paper),
    sides: oneOf('sides', laid.sides, ['single', 'double'], settings.sides),
    language: oneOf('language', laid.language, ['en', 'de', 'es'], settings.language),
  };
}
