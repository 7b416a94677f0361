import * as vscode from 'vscode';
import { LanguageClient, State, TransportKind } from 'vscode-languageclient/node';
import { type RequestName, SHEET_CHANGED, type SheetChangedParams } from '../../server/src/lsp/protocol';

/** The language server as the extension uses it: started once, asked by typed requests, started anew on demand. */
export class LanguageServer implements vscode.Disposable {
  readonly #client: LanguageClient;
  readonly #sheetChanged = new vscode.EventEmitter<vscode.Uri>();
  /** A sheet may look different now. */
  readonly onSheetChanged = this.#sheetChanged.event;

  readonly #started = new vscode.EventEmitter<void>();
  /** It runs, for the first time or again; a new one knows nothing of what the last one was asked. */
  readonly onStarted = this.#started.event;

  constructor(context: vscode.ExtensionContext) {
    const module = context.asAbsolutePath('server/dist/server.js');
    const serverOptions = { module, transport: TransportKind.ipc };
    this.#client = new LanguageClient('witnessmark', 'Witnessmark', serverOptions, {
      documentSelector: [{ language: 'witnessmark' }],
    });
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

  restart(): Promise<void> {
    return this.#client.restart();
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
