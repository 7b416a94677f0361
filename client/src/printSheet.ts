import * as vscode from 'vscode';
import { PRINT_SHEET, type PrintSheetResult } from '../../server/src/lsp/protocol';
import type { ChosenBuilds } from './chosenBuilds';
import type { LanguageServer } from './languageServer';
import type { CommandArguments } from './procedureUri';
import { paperFor } from './settings';

/** Prints the sheet of a procedure; asks for the build and the file only where they are not known. */
export async function printSheet(
  server: LanguageServer,
  builds: ChosenBuilds,
  uri: vscode.Uri,
  given: CommandArguments,
  variant: 'print' | 'fillable' = 'print',
): Promise<PrintSheetResult | undefined> {
  const build = given.build ?? builds.of(uri) ?? (await builds.pick(uri))?.id;
  if (build === undefined) return undefined;
  const target = given.target === undefined ? await askForTarget(uri, variant) : vscode.Uri.parse(given.target);
  if (target === undefined) return undefined;
  const params = { uri: uri.toString(), build, paper: paperFor(uri), target: target.toString(), variant };
  const options = { location: vscode.ProgressLocation.Notification, title: vscode.l10n.t('Printing the step sheet') };
  const result = await vscode.window.withProgress(options, () => server.ask(PRINT_SHEET, params));
  // Whoever names the file is a program, and a program reads the result.
  if (given.target === undefined) void report(result, target);
  return result;
}

function askForTarget(uri: vscode.Uri, variant: 'print' | 'fillable'): Thenable<vscode.Uri | undefined> {
  const ending = variant === 'fillable' ? '-fillable.pdf' : '.pdf';
  const path = uri.path.replace(/(?:\.procedure)?\.ya?ml$/i, ending);
  return vscode.window.showSaveDialog({
    defaultUri: uri.with({ path }),
    filters: { [vscode.l10n.t('PDF documents')]: ['pdf'] },
    title: vscode.l10n.t('Print the step sheet'),
    saveLabel: vscode.l10n.t('Print'),
  });
}

async function report(result: PrintSheetResult, target: vscode.Uri): Promise<void> {
  if (result.is === 'refused') {
    void vscode.window.showErrorMessage(vscode.l10n.t('The step sheet was not printed. {0}', result.why));
    return;
  }
  const name = target.path.slice(target.path.lastIndexOf('/') + 1);
  const said = vscode.l10n.t('Printed {0} for {1}.', name, result.build.label);
  const isOnDisk = target.scheme === 'file';
  const open = isOnDisk ? vscode.l10n.t('Open') : vscode.l10n.t('Show in the Explorer');
  const answer =
    result.errors === 0
      ? await vscode.window.showInformationMessage(said, open)
      : await vscode.window.showWarningMessage(`${said} ${notReleased(result.errors)}`, open);
  if (answer !== open) return;
  // From what is no disk no program could open it; from the Explorer it can be downloaded.
  if (!isOnDisk) await vscode.commands.executeCommand('revealInExplorer', target);
  // On another machine no program could open it either, so the editor tries.
  else if (vscode.env.remoteName === undefined) await vscode.env.openExternal(target);
  else await vscode.commands.executeCommand('vscode.open', target);
}

function notReleased(errors: number): string {
  return errors === 1
    ? vscode.l10n.t('It is marked as not released: 1 error stands.')
    : vscode.l10n.t('It is marked as not released: {0} errors stand.', errors);
}
