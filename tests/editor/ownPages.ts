// The pages that the extension and the command line make, for a browser to be looked at without an editor around them.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { sheetPage } from '../../client/src/sheetPage';
import { chooseTrees } from '../../server/src/cli/history/chooseTrees';
import { reviewTrees } from '../../server/src/cli/reviewed';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../server/src/core/analysis/settings';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { buildChart } from '../../server/src/core/chart/buildChart';
import { chartToHtml } from '../../server/src/core/chart/chartHtml';
import { reviewHtml } from '../../server/src/core/reviewPage/reviewHtml';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import { sheetToHtml, sheetToPage } from '../../server/src/core/sheet/html';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import type { SheetPagesResult, SheetPatchResult } from '../../server/src/lsp/protocol';
import { SentPages } from '../../server/src/lsp/sentPages';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { drawPages } from '../../server/src/node/pdf/pdfEngine';

export { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';

/** The page of the extension, and the nonce under which its scripts and styles run. */
export function previewPage(view: 'sheet' | 'pages' | 'walk'): string {
  return sheetPage('0123456789abcdef', 'file:///a.procedure.yaml', view);
}

/** The review of two revisions of a repository, as a page. */
export async function reviewPage(repository: string, before: string, after: string): Promise<string> {
  return reviewHtml(await reviewTrees(chooseTrees([before, after], repository), '2026-11-02'));
}

/** A procedure of the samples, whose text can be changed as by typing. */
export class OpenProcedure {
  readonly #uri: string;
  readonly #workspace: Workspace;
  readonly #sent = new SentPages();
  #version: number | undefined;
  text: string;

  private constructor(uri: string, workspace: Workspace, text: string) {
    this.#uri = uri;
    this.#workspace = workspace;
    this.text = text;
  }

  static async open(path: string): Promise<OpenProcedure> {
    const uri = uriOfPath(resolve(path));
    const workspace = new Workspace([uriOfPath(resolve('sample-procedures'))]);
    await workspace.loadLinked(uri, new NodeFiles());
    return new OpenProcedure(uri, workspace, readFileSync(path, 'utf8'));
  }

  change(text: string): void {
    this.text = text;
    this.#workspace.set(this.#uri, { is: 'text', text });
  }

  sheet(): Sheet {
    return this.#checked().sheet;
  }

  /** The sheet as a file. */
  file(): string {
    return sheetToHtml(this.#checked().sheet, { mode: 'file' });
  }

  /** The whole sheet as a preview shows it. */
  preview(): string {
    return sheetToHtml(this.#checked().sheet, { mode: 'preview' });
  }

  /** What the page of the extension is sent: the whole sheet at first, and then what has changed. */
  patch(): SheetPatchResult & { readonly is: 'sheet' } {
    const { sheet, shown } = this.#checked();
    const page = this.#sent.patch(this.#uri, sheetToPage(sheet), this.#version);
    this.#version = page.version;
    return { is: 'sheet', ...shown, page };
  }

  async pages(): Promise<SheetPagesResult & { readonly is: 'pages' }> {
    const { sheet, shown } = this.#checked();
    const drawn = await drawPages(sheet, new Map());
    if ('problem' in drawn) throw new Error(JSON.stringify(drawn.problem));
    const steps = new Map(sheet.phases.flatMap((phase) => phase.steps.map((step) => [step.number, step])));
    const marks = drawn.steps.map((place) => {
      const step = steps.get(place.number);
      return { ...place, title: step?.title ?? '', offset: sheet.source?.offsets[place.number - 1] ?? 0 };
    });
    return { is: 'pages', ...shown, pages: drawn.pages, marks };
  }

  walk(mode: 'preview' | 'file') {
    const { procedure, picked, findings, shown } = this.#checked();
    const chart = buildChart(procedure, picked, findings);
    if (chart === undefined) throw new Error(`no walk of ${this.#uri}`);
    return { is: 'walk', ...shown, html: chartToHtml(chart, { mode }) };
  }

  #checked() {
    const { snapshot } = this.#workspace;
    const document = snapshot.document(this.#uri);
    const procedure = document === undefined ? undefined : ProcedureView.of(snapshot, document);
    if (document === undefined || procedure === undefined) throw new Error(`no procedure ${this.#uri}`);
    const { findings } = checkDocument(snapshot, document, { today: '2026-11-01' });
    const builds = listSheetBuilds(procedure);
    const picked = pickBuild(procedure.space, builds[0]?.id ?? '');
    if (picked.kind === 'refused') throw new Error(`no build of ${this.#uri}`);
    const settings = settingsFor(snapshot, this.#uri);
    const sheet = buildSheet(procedure, picked, { findings, settings, language: 'en', paper: 'a4' });
    const errors = findings.filter((finding) => finding.severity === 'error').length;
    const { id, label } = picked.build;
    return {
      procedure,
      picked,
      findings,
      sheet,
      shown: { builds, count: builds.length, build: { id, label }, errors },
    };
  }
}
