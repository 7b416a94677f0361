import * as vscode from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { PRODUCT_FILE, type ProductFileParams, type ProductFileResult } from '../../server/src/lsp/protocol';
import { activateWith } from './activate';

/** What of a browser's worker is used here; the extension is compiled without a browser's names. */
declare class Worker {
  constructor(url: string);
  terminate(): void;
}

/** Starts the extension where extensions run in a browser: the server is a worker of the page. */
export function activate(context: vscode.ExtensionContext): Promise<void> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'server/dist/worker.js').toString(true);
  let worker: Worker | undefined;
  const startWorker = async () => {
    // One that has been told to stop would else live as long as the page.
    worker?.terminate();
    worker = new Worker(script);
    // Not the worker itself: the editor's own kind of worker is not recognised as one.
    const port = worker as never;
    return { reader: new BrowserMessageReader(port), writer: new BrowserMessageWriter(port) };
  };
  context.subscriptions.push({ dispose: () => worker?.terminate() });
  return activateWith(context, (_, options) => {
    const client = new LanguageClient('witnessmark', 'Witnessmark', startWorker, options);
    client.onRequest(PRODUCT_FILE.method, ({ path }: ProductFileParams) => readProductFile(context, path));
    return client;
  });
}

/** The fonts and the engine of the printed sheet, which a worker cannot everywhere get by itself. */
async function readProductFile(context: vscode.ExtensionContext, path: string): Promise<ProductFileResult> {
  return { bytes: await vscode.workspace.fs.readFile(vscode.Uri.joinPath(context.extensionUri, path)) };
}
