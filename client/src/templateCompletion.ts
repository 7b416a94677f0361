import * as vscode from 'vscode';
import { findFamilies } from './chooseFamily';
import { DOCUMENT_TEMPLATES, type TemplateKind } from './templates/documentTemplates';
import { fillTemplate } from './templates/fillTemplate';
import { kitPartOf, relativePath } from './templates/relatedPaths';

/** Offers the whole template in a document in which nothing stands yet. */
export class TemplateCompletion implements vscode.CompletionItemProvider {
  async provideCompletionItems(
    document: vscode.TextDocument,
    position: vscode.Position,
  ): Promise<vscode.CompletionItem[]> {
    const kind = kindOf(document.uri);
    const text = document.getText().replaceAll(/^\s*#.*$/gm, '');
    // A word that is being typed is what the list is filtered by, and it gives way.
    if (kind === undefined || !/^\s*[\w-]*\s*$/.test(text)) return [];
    const word = document.getWordRangeAtPosition(position, /[\w-]+/);
    const item = new vscode.CompletionItem(labelOf(kind), vscode.CompletionItemKind.Snippet);
    item.insertText = new vscode.SnippetString(await snippetFor(kind, document.uri));
    item.filterText = word === undefined ? kind : document.getText(word);
    item.preselect = true;
    if (word !== undefined) item.range = word;
    return [item];
  }
}

function labelOf(kind: TemplateKind): string {
  switch (kind) {
    case 'family':
      return vscode.l10n.t('A whole family to begin with');
    case 'kit':
      return vscode.l10n.t('A whole kit bill to begin with');
    case 'stores':
      return vscode.l10n.t('Whole stores to begin with');
    case 'procedure':
      return vscode.l10n.t('A whole procedure to begin with');
    case 'settings':
      return vscode.l10n.t('Whole settings to begin with');
  }
}

function kindOf({ path }: vscode.Uri): TemplateKind | undefined {
  if (/\/witnessmark\.ya?ml$/.test(path)) return 'settings';
  return /\.(family|kit|stores|procedure)\.ya?ml$/.exec(path)?.[1] as TemplateKind | undefined;
}

/** With the first family of the folder in it, so that the document has no error from the start. */
async function snippetFor(kind: TemplateKind, uri: vscode.Uri): Promise<string> {
  const template = DOCUMENT_TEMPLATES[kind];
  const [family] = kind === 'procedure' || kind === 'kit' ? await findFamilies(1) : [];
  if (family === undefined) return template.snippet;
  const part = kind === 'kit' ? kitPartOf((await vscode.workspace.openTextDocument(family)).getText()) : undefined;
  const path = relativePath(vscode.Uri.joinPath(uri, '..').path, family.path);
  return fillTemplate(template, { family: path, ...(part === undefined ? {} : { part }) });
}
