import { documentValue } from '../core/analysis/documentUnit';
import { ProcedureView } from '../core/analysis/procedureView';
import { type Paper, settingsFor } from '../core/analysis/settings';
import type { Snapshot } from '../core/analysis/snapshot';
import { settingsCandidates, type Uri } from '../core/analysis/uri';
import { type BuildSpace, countBuilds, pickBuild } from '../core/builds';
import { buildChart } from '../core/chart/buildChart';
import { chartToHtml } from '../core/chart/chartHtml';
import { buildSheet, listSheetBuilds } from '../core/sheet/buildSheet';
import { type SheetPage, sheetToHtml, sheetToPage } from '../core/sheet/html';
import type { Sheet } from '../core/sheet/sheet';
import type { CheckedDocument } from './checkedDocuments';
import type { Comparisons } from './comparisons';
import { messagePage, messagePieces } from './messagePage';
import type { BuildChoice, BuildsResult, ChartHtmlResult, SheetHtmlResult, SheetPatchResult } from './protocol';

/** The sheet that was asked for, or why there is none. */
export type AskedSheet =
  | { readonly is: 'sheet'; readonly sheet: Sheet; readonly build: BuildChoice }
  | { readonly is: 'none'; readonly why: string };

export function buildsOfProcedure(checked: CheckedDocument | undefined): BuildsResult {
  const procedure = procedureOf(checked);
  return procedure === undefined ? { builds: [], count: 0 } : choicesOf(procedure);
}

/** The sheet for a build by its id, or for the plainest build where none is named. */
export function askForSheet(
  checked: CheckedDocument | undefined,
  build?: string,
  paper?: Paper,
  comparisons?: Comparisons,
): AskedSheet {
  const procedure = procedureOf(checked);
  if (checked === undefined || procedure === undefined) return { is: 'none', why: 'This document is no procedure.' };
  const picked = pickBuild(procedure.space, build ?? choicesOf(procedure).builds[0]?.id ?? '');
  if (picked.kind === 'refused') return { is: 'none', why: `${picked.problems.map((one) => one.text).join('. ')}.` };
  const { snapshot, document, result } = checked;
  const settings = settingsFor(snapshot, document.uri);
  const changed = comparisons?.changedSince(document.uri, snapshot, picked.build.id);
  const sheet = buildSheet(procedure, picked, {
    ...(changed === undefined ? {} : { changed }),
    findings: result.findings,
    settings,
    language: settings.language,
    paper: settingsPaper(snapshot, document.uri) ?? paper ?? settings.paper,
  });
  return { is: 'sheet', sheet, build: { id: picked.build.id, label: picked.build.label } };
}

/** What a preview shows of a procedure beside its page. */
export interface ShownSheet extends BuildsResult {
  readonly asked: AskedSheet;
  readonly build: BuildChoice | undefined;
  readonly errors: number;
}

/** The sheet for a preview; a build that no longer exists gives way to the plainest one. */
export function sheetShown(
  checked: CheckedDocument | undefined,
  build?: string,
  paper?: Paper,
  comparisons?: Comparisons,
): ShownSheet {
  const wanted = askForSheet(checked, build, paper, comparisons);
  const isGone = wanted.is === 'none' && build !== undefined;
  const asked = isGone ? askForSheet(checked, undefined, paper, comparisons) : wanted;
  const shown = asked.is === 'none' ? undefined : asked.build;
  return { ...buildsOfProcedure(checked), asked, build: shown, errors: errorsIn(checked) };
}

/** The whole page for a preview. */
export function sheetPage(
  checked: CheckedDocument | undefined,
  build?: string,
  paper?: Paper,
  comparisons?: Comparisons,
): SheetHtmlResult {
  const { asked, ...shown } = sheetShown(checked, build, paper, comparisons);
  const html =
    asked.is === 'none' ? messagePage('No step sheet', asked.why) : sheetToHtml(asked.sheet, { mode: 'preview' });
  return { ...shown, html };
}

/** The same in pieces. */
export function sheetPieces(
  checked: CheckedDocument | undefined,
  build?: string,
  paper?: Paper,
  comparisons?: Comparisons,
): Omit<SheetPatchResult, 'page'> & { readonly page: SheetPage } {
  const { asked, ...shown } = sheetShown(checked, build, paper, comparisons);
  return { ...shown, page: asked.is === 'none' ? messagePieces('No step sheet', asked.why) : sheetToPage(asked.sheet) };
}

/** The chart for a preview; a build that no longer exists gives way to the plainest one. */
export function chartPage(checked: CheckedDocument | undefined, build?: string): ChartHtmlResult {
  const choices = buildsOfProcedure(checked);
  const errors = errorsIn(checked);
  const none = (why: string) => ({ ...choices, html: messagePage('No walk', why), build: undefined, errors });
  const procedure = procedureOf(checked);
  if (checked === undefined || procedure === undefined) return none('This document is no procedure.');
  const wanted = pickBuild(procedure.space, build ?? '');
  const picked = wanted.kind === 'picked' ? wanted : pickBuild(procedure.space, choices.builds[0]?.id ?? '');
  const chart = picked.kind === 'picked' ? buildChart(procedure, picked, checked.result.findings) : undefined;
  if (picked.kind === 'refused' || chart === undefined) return none('The family of this procedure cannot be read.');
  const { id, label } = picked.build;
  return { ...choices, html: chartToHtml(chart, { mode: 'preview' }), build: { id, label }, errors };
}

export function errorsIn(checked: CheckedDocument | undefined): number {
  return (checked?.result.findings ?? []).filter((finding) => finding.severity === 'error').length;
}

function procedureOf(checked: CheckedDocument | undefined): ProcedureView | undefined {
  return checked === undefined ? undefined : ProcedureView.of(checked.snapshot, checked.document);
}

const choices = new WeakMap<BuildSpace, BuildsResult>();

/** The same procedure has the same builds from one keystroke to the next. */
function choicesOf(procedure: ProcedureView): BuildsResult {
  const { space } = procedure;
  const known = choices.get(space);
  if (known !== undefined) return known;
  const result = { builds: listSheetBuilds(procedure), count: countBuilds(space.everything, space) };
  choices.set(space, result);
  return result;
}

/** The paper that the nearest settings document names; a default would hide what the editor says. */
function settingsPaper(snapshot: Snapshot, uri: Uri): Paper | undefined {
  for (const candidate of settingsCandidates(uri, snapshot.roots)) {
    const document = snapshot.document(candidate);
    if (document !== undefined) return documentValue(document, 'settings')?.paper?.value;
  }
  return undefined;
}
