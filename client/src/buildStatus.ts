import * as vscode from 'vscode';
import { BUILDS } from '../../server/src/lsp/protocol';
import type { ChosenBuilds } from './chosenBuilds';
import type { LanguageServer } from './languageServer';
import { isProcedure } from './procedureUri';

/** Shows in the status bar which build the sheet of the procedure in front is for. */
export class BuildStatus implements vscode.Disposable {
  readonly #item = vscode.window.createStatusBarItem('witnessmark.build', vscode.StatusBarAlignment.Right, 90);
  readonly #server: LanguageServer;
  readonly #builds: ChosenBuilds;

  constructor(server: LanguageServer, builds: ChosenBuilds) {
    this.#server = server;
    this.#builds = builds;
    this.#item.name = vscode.l10n.t('Witnessmark build of the sheet');
    this.#item.command = 'witnessmark.chooseBuild';
    this.#item.tooltip = vscode.l10n.t('Choose the build that the step sheet is for');
  }

  async update(): Promise<void> {
    const uri = vscode.window.activeTextEditor?.document.uri;
    // Until a sheet was looked at there is no build that anything here is for.
    if (uri === undefined || !isProcedure(uri) || this.#builds.of(uri) === undefined) {
      this.#item.hide();
      return;
    }
    const { builds } = await this.#server.ask(BUILDS, { uri: uri.toString() });
    if (vscode.window.activeTextEditor?.document.uri.toString() !== uri.toString()) return;
    const chosen = this.#builds.of(uri);
    const build = builds.find((one) => one.id === chosen) ?? builds[0];
    this.#item.text = `$(list-selection) ${build?.label ?? vscode.l10n.t('no build')}`;
    this.#item.show();
  }

  dispose(): void {
    this.#item.dispose();
  }
}
