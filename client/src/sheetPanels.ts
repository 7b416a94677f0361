import * as vscode from 'vscode';
import type { ChosenBuilds } from './chosenBuilds';
import type { LanguageServer } from './languageServer';
import { isView, type View } from './panelMessages';
import { SheetPanel } from './sheetPanel';

const VIEW_TYPE = 'witnessmark.sheet';

/** All sheets that are shown, one for each procedure at most, kept in step with the texts, the carets and the builds. */
export class SheetPanels implements vscode.Disposable, vscode.WebviewPanelSerializer {
  readonly #server: LanguageServer;
  readonly #builds: ChosenBuilds;
  readonly #panels = new Map<string, SheetPanel>();
  readonly #listening: vscode.Disposable[];

  constructor(server: LanguageServer, builds: ChosenBuilds) {
    this.#server = server;
    this.#builds = builds;
    this.#listening = [
      server.onSheetChanged((uri) => this.#refresh(uri)),
      builds.onChanged((uri) => this.#refresh(uri)),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#followCaret(textEditor)),
      vscode.window.registerWebviewPanelSerializer(VIEW_TYPE, this),
    ];
  }

  /** The procedure whose sheet has the focus. */
  get inFront(): vscode.Uri | undefined {
    return [...this.#panels.values()].find((one) => one.panel.active)?.uri;
  }

  show(uri: vscode.Uri, view: View): void {
    const known = this.#panels.get(uri.toString());
    if (known !== undefined) {
      void known.showView(view);
      known.panel.reveal(undefined, true);
      return;
    }
    const name = uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.procedure\.ya?ml$/i, '');
    const beside = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    const panel = vscode.window.createWebviewPanel(VIEW_TYPE, vscode.l10n.t('Sheet {0}', name), beside, {
      enableFindWidget: true,
    });
    this.#keep(uri, panel, view);
  }

  /** Brings back a sheet that was open when the window was closed. */
  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const uri = typeof state === 'object' && state !== null && 'uri' in state ? state.uri : undefined;
    const view = typeof state === 'object' && state !== null && 'view' in state ? state.view : undefined;
    if (typeof uri === 'string') this.#keep(vscode.Uri.parse(uri), panel, isView(view) ? view : 'sheet');
    else panel.dispose();
  }

  refreshAll(): void {
    for (const one of this.#panels.values()) void one.refresh();
  }

  dispose(): void {
    for (const one of this.#listening) one.dispose();
    for (const one of [...this.#panels.values()]) one.panel.dispose();
  }

  #keep(uri: vscode.Uri, panel: vscode.WebviewPanel, view: View): void {
    this.#panels.set(uri.toString(), new SheetPanel(uri, panel, this.#server, this.#builds, view));
    panel.onDidDispose(() => this.#panels.delete(uri.toString()));
  }

  #refresh(uri: vscode.Uri): void {
    void this.#panels.get(uri.toString())?.refresh();
  }

  #followCaret({ document, selection }: vscode.TextEditor): void {
    this.#panels.get(document.uri.toString())?.showCaret(document.offsetAt(selection.active));
  }
}
