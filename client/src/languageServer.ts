import * as vscode from 'vscode';
import { type BaseLanguageClient, type LanguageClientOptions, State } from 'vscode-languageclient';
import { type RequestName, SHEET_CHANGED, type SheetChangedParams } from '../../server/src/lsp/protocol';
import { answerForFiles } from './clientFiles';

/** The language server as the extension uses it: started once, asked by typed requests, started anew on demand. */
export class LanguageServer implements vscode.Disposable {
  readonly #client: BaseLanguageClient;
  readonly #sheetChanged = new vscode.EventEmitter<vscode.Uri>();
  /** A sheet may look different now. */
  readonly onSheetChanged = this.#sheetChanged.event;

  readonly #started = new vscode.EventEmitter<void>();
  /** It runs, for the first time or again; a new one knows nothing of what the last one was asked. */
  readonly onStarted = this.#started.event;

  constructor(makeClient: (options: LanguageClientOptions) => BaseLanguageClient) {
    this.#client = makeClient({
      documentSelector: [{ language: 'witnessmark' }],
      // A lens that counts uses can show them here, by the command that this extension has for it. Findings are sent as
      // soon as they are known: this editor would ask for those of other documents only now and then.
      initializationOptions: { showUses: true, diagnostics: 'push' },
    });
    answerForFiles(this.#client);
    this.#client.onNotification(SHEET_CHANGED.method, ({ uri }: SheetChangedParams) =>
      this.#sheetChanged.fire(vscode.Uri.parse(uri)),
    );
    this.#client.onDidChangeState(({ newState }) => {
      if (newState === State.Running) this.#started.fire();
    });
  }

  start(): Promise<void> {
    return this.#client.start();
  }

  async restart(): Promise<void> {
    await this.#client.stop();
    await this.#client.start();
  }

  async ask<Params, Result>(request: RequestName<Params, Result>, params: Params): Promise<Result> {
    // Starting again is harmless, and a command may come before the first start has ended.
    await this.#client.start();
    return this.#client.sendRequest<Result>(request.method, params);
  }

  async dispose(): Promise<void> {
    this.#sheetChanged.dispose();
    this.#started.dispose();
    await this.#client.dispose();
  }
}
