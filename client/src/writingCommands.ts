import * as vscode from 'vscode';
import type { LanguageServer } from './languageServer';
import { type NewDocumentArguments, newDocument, newSettings } from './newDocument';
import { openSamples } from './openSamples';
import { PassingStatus, showFailingBuilds } from './passingStatus';
import { argumentsOf, procedureOf } from './procedureUri';
import { showUses } from './showUses';
import { TemplateCompletion } from './templateCompletion';

/** What surrounds the writing: new documents from templates, samples, and how many builds pass. */
export function registerWriting(context: vscode.ExtensionContext, server: LanguageServer): void {
  const status = new PassingStatus(server);
  const showStatus = () => void status.update().catch(() => {});
  context.subscriptions.push(
    status,
    vscode.window.onDidChangeActiveTextEditor(showStatus),
    server.onSheetChanged(showStatus),
    server.onStarted(showStatus),
    vscode.languages.registerCompletionItemProvider({ language: 'witnessmark' }, new TemplateCompletion()),
  );
  registerCommands(context, server);
}

function registerCommands(
  { subscriptions, extensionUri, extension }: vscode.ExtensionContext,
  server: LanguageServer,
): void {
  const register = (id: string, run: (given: NewDocumentArguments) => Promise<unknown>) =>
    subscriptions.push(vscode.commands.registerCommand(id, (given?: unknown) => run(answersOf(given))));
  for (const kind of ['family', 'kit', 'stores', 'procedure'] as const) {
    const name = `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
    register(`witnessmark.new${name}`, async (given) => (await newDocument(kind, given))?.toString());
  }
  register('witnessmark.newSettings', async (given) => (await newSettings(given))?.toString());
  register('witnessmark.openSamples', async (given) => (await openSamples(extensionUri, given))?.toString());
  subscriptions.push(
    vscode.commands.registerCommand('witnessmark.showUses', showUses),
    vscode.commands.registerCommand('witnessmark.openGettingStarted', () =>
      vscode.commands.executeCommand('workbench.action.openWalkthrough', `${extension.id}#firstSteps`, false),
    ),
    vscode.commands.registerCommand('witnessmark.showFailingBuilds', async (given?: unknown) => {
      const uri = procedureOf(argumentsOf(given), undefined);
      if (uri !== undefined) await showFailingBuilds(server, uri);
    }),
  );
}

/** A menu gives the URI of what was clicked, which answers nothing. */
function answersOf(given: unknown): NewDocumentArguments {
  return given instanceof vscode.Uri || typeof given !== 'object' || given === null ? {} : given;
}
