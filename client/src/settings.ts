import * as vscode from 'vscode';

/** The paper that the editor's settings name for a document. */
export function paperFor(uri: vscode.Uri): 'a4' | 'letter' {
  const paper = vscode.workspace.getConfiguration('witnessmark', uri).get<string>('paper');
  return paper === 'letter' ? 'letter' : 'a4';
}
