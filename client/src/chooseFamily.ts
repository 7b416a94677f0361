import * as vscode from 'vscode';

const MOST = 500;

/** All families in the open folders. */
export function findFamilies(most = MOST): Thenable<vscode.Uri[]> {
  return vscode.workspace.findFiles('**/*.family.{yaml,yml}', '**/node_modules/**', most);
}

/** Lets a person choose the family that a document is for, or begin one; undefined where it was given up. */
export async function chooseFamily(begin: () => Promise<vscode.Uri | undefined>): Promise<vscode.Uri | undefined> {
  const known = (await findFamilies()).sort((a, b) => a.path.localeCompare(b.path));
  const families = known.map((uri) => ({
    label: uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.family\.ya?ml$/, ''),
    description: vscode.workspace.asRelativePath(uri),
    uri,
  }));
  const other = { label: vscode.l10n.t('$(add) Begin a new family'), description: '', uri: undefined };
  const item = await vscode.window.showQuickPick([...families, other], {
    placeHolder: vscode.l10n.t('The family that it is for'),
    matchOnDescription: true,
    ignoreFocusOut: true,
  });
  if (item === undefined) return undefined;
  return item.uri ?? begin();
}
