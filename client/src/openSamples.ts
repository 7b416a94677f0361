import * as vscode from 'vscode';

const FOLDER = 'witnessmark-samples';

/** Copies the sample documents into a new folder and opens it; nothing that is there is written over. */
export async function openSamples(
  extension: vscode.Uri,
  given: { readonly target?: string },
): Promise<vscode.Uri | undefined> {
  const parent = given.target === undefined ? await askForParent() : vscode.Uri.parse(given.target);
  if (parent === undefined) return undefined;
  const target = await freeFolder(parent);
  await vscode.workspace.fs.copy(vscode.Uri.joinPath(extension, 'sample-procedures'), target);
  if (given.target === undefined) await offerToOpen(target);
  return target;
}

async function askForParent(): Promise<vscode.Uri | undefined> {
  const [folder] =
    (await vscode.window.showOpenDialog({
      canSelectFiles: false,
      canSelectFolders: true,
      title: vscode.l10n.t('Where the folder with the samples goes'),
      openLabel: vscode.l10n.t('Copy the samples here'),
    })) ?? [];
  return folder;
}

async function freeFolder(parent: vscode.Uri): Promise<vscode.Uri> {
  for (let number = 1; ; number += 1) {
    const folder = vscode.Uri.joinPath(parent, number === 1 ? FOLDER : `${FOLDER}-${number}`);
    const isTaken = await vscode.workspace.fs.stat(folder).then(
      () => true,
      () => false,
    );
    if (!isTaken) return folder;
  }
}

async function offerToOpen(folder: vscode.Uri): Promise<void> {
  if (vscode.workspace.workspaceFolders === undefined) {
    await vscode.commands.executeCommand('vscode.openFolder', folder);
    return;
  }
  const add = vscode.l10n.t('Add to this window');
  const open = vscode.l10n.t('Open in a new window');
  const said = vscode.l10n.t('The samples are in {0}. Everything in them is invented.', folder.fsPath);
  const answer = await vscode.window.showInformationMessage(said, add, open);
  if (answer === open) await vscode.commands.executeCommand('vscode.openFolder', folder, { forceNewWindow: true });
  if (answer === add) {
    vscode.workspace.updateWorkspaceFolders(vscode.workspace.workspaceFolders.length, 0, { uri: folder });
  }
}
