import * as vscode from 'vscode';
import type { TemplateKind } from './templates/documentTemplates';

const FOLDERS: Readonly<Record<TemplateKind, string>> = {
  family: 'families',
  kit: 'kits',
  stores: 'stores',
  procedure: 'procedures',
  settings: '',
};

/** The folder in which a new document is likely to belong: that of its kind near the family or in the open folder. */
export async function usualFolder(kind: TemplateKind, family: vscode.Uri | undefined): Promise<vscode.Uri | undefined> {
  const base = family === undefined ? openFolder() : aboveFamilies(family);
  if (base === undefined) return undefined;
  const own = vscode.Uri.joinPath(base, FOLDERS[kind]);
  return vscode.workspace.fs.stat(own).then(
    () => own,
    () => base,
  );
}

function openFolder(): vscode.Uri | undefined {
  const active = vscode.window.activeTextEditor?.document.uri;
  const folder = active === undefined ? undefined : vscode.workspace.getWorkspaceFolder(active);
  return (folder ?? vscode.workspace.workspaceFolders?.[0])?.uri;
}

function aboveFamilies(family: vscode.Uri): vscode.Uri {
  const folder = vscode.Uri.joinPath(family, '..');
  return folder.path.endsWith(`/${FOLDERS.family}`) ? vscode.Uri.joinPath(folder, '..') : folder;
}
