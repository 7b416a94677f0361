import * as vscode from 'vscode';
import { BUILDS, type BuildChoice } from '../../server/src/lsp/protocol';
import type { LanguageServer } from './languageServer';

const KEY = 'witnessmark.builds';

/** The build that is shown and printed for each procedure. It is remembered with the workspace. */
export class ChosenBuilds {
  readonly #changed = new vscode.EventEmitter<vscode.Uri>();
  readonly onChanged = this.#changed.event;
  readonly #state: vscode.Memento;
  readonly #server: LanguageServer;

  constructor(state: vscode.Memento, server: LanguageServer) {
    this.#state = state;
    this.#server = server;
  }

  of(uri: vscode.Uri): string | undefined {
    return this.#all()[uri.toString()];
  }

  choose(uri: vscode.Uri, build: string): void {
    void this.#state.update(KEY, { ...this.#all(), [uri.toString()]: build });
    this.#changed.fire(uri);
  }

  /** Lets a person choose; undefined where there is nothing to choose from, or nothing was chosen. */
  async pick(uri: vscode.Uri): Promise<BuildChoice | undefined> {
    const { builds, count } = await this.#server.ask(BUILDS, { uri: uri.toString() });
    if (builds.length === 0) {
      void vscode.window.showWarningMessage(
        vscode.l10n.t('There is no build to choose: the family of this procedure cannot be read.'),
      );
      return undefined;
    }
    const chosen = this.of(uri);
    const items = builds.map((build) => ({
      label: build.label,
      // A list of which one is chosen shows no tick of its own.
      description: build.id === chosen ? vscode.l10n.t('{0} (shown now)', build.id) : build.id,
      build,
    }));
    const placeHolder =
      count > builds.length
        ? vscode.l10n.t('Build to show and print (the plainest {0} of {1})', builds.length, count)
        : vscode.l10n.t('Build to show and print');
    const item = await vscode.window.showQuickPick(items, { placeHolder, matchOnDescription: true });
    if (item !== undefined) this.choose(uri, item.build.id);
    return item?.build;
  }

  #all(): Readonly<Record<string, string>> {
    return this.#state.get<Record<string, string>>(KEY, {});
  }
}
