import * as vscode from 'vscode';
import { BUILDS_PASSING, type BuildsPassingResult, FAILING_BUILDS } from '../../server/src/lsp/protocol';
import type { LanguageServer } from './languageServer';
import { isProcedure } from './procedureUri';

/** Shows in the status bar how many builds of the procedure in front have no error. */
export class PassingStatus implements vscode.Disposable {
  readonly #item = vscode.window.createStatusBarItem('witnessmark.passing', vscode.StatusBarAlignment.Right, 91);
  readonly #server: LanguageServer;
  #isAsking = false;
  #isStale = false;

  constructor(server: LanguageServer) {
    this.#server = server;
    this.#item.name = vscode.l10n.t('Witnessmark builds that pass');
    this.#item.command = 'witnessmark.showFailingBuilds';
    this.#item.tooltip = vscode.l10n.t('A build passes when no error holds for it. Show those that do not');
  }

  /** While one answer is on its way, any number of changes wait for one more. */
  async update(): Promise<void> {
    this.#isStale = true;
    if (this.#isAsking) return;
    this.#isAsking = true;
    try {
      while (this.#isStale) {
        this.#isStale = false;
        await this.#show(procedureInFront());
      }
    } finally {
      this.#isAsking = false;
    }
  }

  dispose(): void {
    this.#item.dispose();
  }

  async #show(uri: vscode.Uri | undefined): Promise<void> {
    if (uri === undefined) return this.#item.hide();
    const result = await this.#server.ask(BUILDS_PASSING, { uri: uri.toString() });
    // Another document may have come to the front meanwhile, and is asked about next.
    if (procedureInFront()?.toString() !== uri.toString()) return;
    const text = passingText(result);
    if (text === undefined) return this.#item.hide();
    this.#item.text = text;
    this.#item.show();
  }
}

/** The words of the status bar; undefined where nobody knows which builds there are. */
function passingText({ count, passing }: BuildsPassingResult): string | undefined {
  if (count === undefined || passing === undefined) return undefined;
  if (passing < count) return `$(error) ${vscode.l10n.t('{0} of {1} builds pass', passing, count)}`;
  return `$(pass) ${count === 1 ? vscode.l10n.t('The one build passes') : vscode.l10n.t('All {0} builds pass', count)}`;
}

function procedureInFront(): vscode.Uri | undefined {
  const uri = vscode.window.activeTextEditor?.document.uri;
  return uri !== undefined && isProcedure(uri) ? uri : undefined;
}

/** Lists the builds that do not pass with their first error, and goes to the one that is chosen. */
export async function showFailingBuilds(server: LanguageServer, uri: vscode.Uri): Promise<void> {
  const { builds, count } = await server.ask(FAILING_BUILDS, { uri: uri.toString() });
  if (builds.length === 0) {
    void vscode.window.showInformationMessage(vscode.l10n.t('No build has an error.'));
    return;
  }
  const items = builds.map(({ id, label, error }) => ({ label, description: id, detail: error.message, error }));
  const placeHolder =
    count > builds.length
      ? vscode.l10n.t('Builds that do not pass (the plainest {0} of {1}), with their first error', builds.length, count)
      : vscode.l10n.t('Builds that do not pass, with their first error');
  const item = await vscode.window.showQuickPick(items, { placeHolder, matchOnDescription: true, matchOnDetail: true });
  if (item === undefined) return;
  const document = await vscode.workspace.openTextDocument(uri);
  const { start, end } = item.error;
  const selection = new vscode.Range(document.positionAt(start), document.positionAt(end));
  await vscode.window.showTextDocument(document, { selection });
}
