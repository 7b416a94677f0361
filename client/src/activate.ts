import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { BuildStatus } from './buildStatus';
import { ChosenBuilds } from './chosenBuilds';
import { LanguageServer } from './languageServer';
import { printSheet } from './printSheet';
import { argumentsOf, procedureOf } from './procedureUri';
import { SheetPanels } from './sheetPanels';
import { showChangesSince, stopComparing } from './showChanges';
import { registerWriting } from './writingCommands';

/** Makes the client that starts the server: a process on a desktop, a worker in a browser. */
export type MakeClient = (context: vscode.ExtensionContext, options: LanguageClientOptions) => BaseLanguageClient;

/** Everything that the extension is, but for how its server is started. */
export async function activateWith(context: vscode.ExtensionContext, makeClient: MakeClient): Promise<void> {
  const server = new LanguageServer((options) => makeClient(context, options));
  const builds = new ChosenBuilds(context.workspaceState, server);
  const panels = new SheetPanels(server, builds);
  const status = new BuildStatus(server, builds);
  context.subscriptions.push(server, panels, status);
  registerCommands(context, server, builds, panels);
  registerWriting(context, server);
  const showStatus = () => void status.update().catch(() => {});
  context.subscriptions.push(
    vscode.window.onDidChangeActiveTextEditor(showStatus),
    builds.onChanged(showStatus),
    server.onStarted(() => {
      panels.refreshAll();
      showStatus();
    }),
    vscode.workspace.onDidSaveTextDocument(showStatus),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (['paper', 'sides', 'language'].some((one) => change.affectsConfiguration(`witnessmark.${one}`)))
        panels.refreshAll();
    }),
  );
  await server.start();
}

function registerCommands(
  context: vscode.ExtensionContext,
  server: LanguageServer,
  builds: ChosenBuilds,
  panels: SheetPanels,
): void {
  const register = (id: string, run: (uri: vscode.Uri, given: ReturnType<typeof argumentsOf>) => unknown) => {
    const command = vscode.commands.registerCommand(id, (first?: unknown) => {
      const given = argumentsOf(first);
      const uri = procedureOf(given, panels.inFront);
      return uri === undefined ? undefined : run(uri, given);
    });
    context.subscriptions.push(command);
  };
  register('witnessmark.openSheet', (uri) => panels.show(uri, 'sheet'));
  register('witnessmark.openWalk', (uri) => panels.show(uri, 'walk'));
  register('witnessmark.printSheet', (uri, given) => printSheet(server, builds, uri, given));
  register('witnessmark.printForm', (uri, given) => printSheet(server, builds, uri, given, 'fillable'));
  register('witnessmark.showChangesSince', (uri, given) => showChangesSince(server, uri, given.since));
  register('witnessmark.stopComparing', (uri) => stopComparing(server, uri));
  register('witnessmark.chooseBuild', (uri, given) =>
    given.build === undefined ? builds.pick(uri) : builds.choose(uri, given.build),
  );
  context.subscriptions.push(vscode.commands.registerCommand('witnessmark.restartServer', () => server.restart()));
}
