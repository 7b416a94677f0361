import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { activateWith } from './activate';
import { registerCheckTask } from './checkTask';

/** Starts the extension where extensions run on Node: the server is a process of its own. */
export function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('server/dist/server.js');
  registerCheckTask(context);
  const serverOptions = { module, transport: TransportKind.ipc };
  return activateWith(
    context,
    (_, options) => new LanguageClient('witnessmark', 'Witnessmark', serverOptions, options),
  );
}
