import * as vscode from 'vscode';
import { CHART_HTML, SHEET_PAGES, SHEET_PATCH } from '../../server/src/lsp/protocol';
import type { ChosenBuilds } from './chosenBuilds';
import type { LanguageServer } from './languageServer';
import { type FromPage, fromPage, type ToPage, type View } from './panelMessages';
import { paperFor } from './settings';
import { sheetPage } from './sheetPage';

/** The sheet of one procedure beside its text, its printed pages, or its walk. Only what is shown is asked for. */
export class SheetPanel {
  readonly uri: vscode.Uri;
  readonly panel: vscode.WebviewPanel;
  readonly #server: LanguageServer;
  readonly #builds: ChosenBuilds;
  #view: View;
  #isReady = false;
  #isAsking = false;
  #isStale = false;
  /** The version of the sheet that the page has. */
  #version: number | undefined;

  constructor(uri: vscode.Uri, panel: vscode.WebviewPanel, server: LanguageServer, builds: ChosenBuilds, view: View) {
    this.uri = uri;
    this.panel = panel;
    this.#server = server;
    this.#builds = builds;
    this.#view = view;
    panel.webview.options = { enableScripts: true, localResourceRoots: [] };
    panel.webview.onDidReceiveMessage((message) => this.#hear(fromPage(message)));
    // A page that is not seen is let go of, and begins anew when it is seen again.
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#isReady = false;
    });
    panel.webview.html = sheetPage(newNonce(), uri.toString(), view);
  }

  /** Shows the sheet or the walk from now on. */
  async showView(view: View): Promise<void> {
    if (view === this.#view) return;
    this.#view = view;
    await this.refresh();
  }

  /** Shows the sheet or the walk as it is now. While one answer is on its way, any number of changes wait for one more. */
  async refresh(): Promise<void> {
    this.#isStale = true;
    if (this.#isAsking || !this.#isReady) return;
    this.#isAsking = true;
    try {
      while (this.#isStale) {
        this.#isStale = false;
        await this.#show();
      }
    } finally {
      this.#isAsking = false;
    }
  }

  /** Marks the step at the caret and brings it into view. */
  showCaret(offset: number): void {
    this.#post({ is: 'caret', offset });
  }

  async #show(): Promise<void> {
    const view = this.#view;
    const message = await this.#ask(view);
    // What is shown is what is printed, so the first choice counts as made.
    if (this.#builds.of(this.uri) === undefined && message.build !== undefined) {
      this.#builds.choose(this.uri, message.build.id);
    }
    // Another view was chosen meanwhile, and is asked for next.
    if (view === this.#view) this.#post(message);
  }

  async #ask(view: View): Promise<Exclude<ToPage, { is: 'caret' }>> {
    const build = this.#builds.of(this.uri);
    const params = { uri: this.uri.toString(), ...(build === undefined ? {} : { build }) };
    if (view === 'walk') return { is: 'walk', ...(await this.#server.ask(CHART_HTML, params)) };
    const onPaper = { ...params, paper: paperFor(this.uri) };
    if (view === 'pages') return { is: 'pages', ...(await this.#server.ask(SHEET_PAGES, onPaper)) };
    const since = this.#version === undefined ? {} : { since: this.#version };
    const result = await this.#server.ask(SHEET_PATCH, { ...onPaper, ...since });
    this.#version = result.page.version;
    return { is: 'sheet', ...result };
  }

  #post(message: ToPage): void {
    if (this.#isReady) void this.panel.webview.postMessage(message);
  }

  async #hear(message: FromPage | undefined): Promise<void> {
    if (message?.is === 'view') await this.showView(message.view);
    if (message?.is === 'build') this.#builds.choose(this.uri, message.id);
    if (message?.is === 'print') await vscode.commands.executeCommand('witnessmark.printSheet', this.uri);
    if (message?.is === 'source') await this.#goToSource(message.offset);
    if (message?.is !== 'ready') return;
    this.#isReady = true;
    this.#version = undefined;
    await this.refresh();
    const editor = this.#editor();
    if (editor !== undefined) this.showCaret(editor.document.offsetAt(editor.selection.active));
  }

  async #goToSource(offset: number): Promise<void> {
    const document = await vscode.workspace.openTextDocument(this.uri);
    const position = document.positionAt(offset);
    await vscode.window.showTextDocument(document, {
      viewColumn: this.#editor()?.viewColumn ?? vscode.ViewColumn.One,
      selection: new vscode.Range(position, position),
    });
  }

  #editor(): vscode.TextEditor | undefined {
    return vscode.window.visibleTextEditors.find((one) => one.document.uri.toString() === this.uri.toString());
  }
}

/** A word that nobody can guess, which the page's own scripts and styles are marked with. */
function newNonce(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
