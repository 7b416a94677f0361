import * as vscode from 'vscode';

const PROCEDURE = /\.procedure\.ya?ml$/i;

export function isProcedure(uri: vscode.Uri): boolean {
  return PROCEDURE.test(uri.path);
}

/** Arguments of a command as another program gives them; a menu gives the URI alone. */
export interface CommandArguments {
  readonly uri?: string;
  readonly build?: string;
  /** Where to write, as a URI; nobody is asked then. */
  readonly target?: string;
  /** A revision of git to compare with; nobody is asked then. */
  readonly since?: string;
}

export function argumentsOf(given: unknown): CommandArguments {
  if (given instanceof vscode.Uri) return { uri: given.toString() };
  return typeof given === 'object' && given !== null ? (given as CommandArguments) : {};
}

/** The procedure that a command is about: the one that is named, else that of the sheet or the text in front. */
export function procedureOf(given: CommandArguments, sheetInFront: vscode.Uri | undefined): vscode.Uri | undefined {
  const named = given.uri === undefined ? undefined : vscode.Uri.parse(given.uri);
  const uri = named ?? sheetInFront ?? vscode.window.activeTextEditor?.document.uri;
  if (uri !== undefined && isProcedure(uri)) return uri;
  void vscode.window.showInformationMessage(vscode.l10n.t('Open a procedure first: a file named *.procedure.yaml.'));
  return undefined;
}
