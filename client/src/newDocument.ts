import * as vscode from 'vscode';
import { chooseFamily } from './chooseFamily';
import { usualFolder } from './documentFolders';
import { DOCUMENT_TEMPLATES, type TemplateKind } from './templates/documentTemplates';
import { type Answers, fillTemplate, plainDocument } from './templates/fillTemplate';
import { fileNameFor, kitPartOf, relativePath } from './templates/relatedPaths';

/** Answers that a program gives; a person is asked for what is left out. */
export interface NewDocumentArguments {
  readonly id?: string;
  readonly name?: string;
  /** URI of the family that a procedure or a kit is for. */
  readonly family?: string;
  /** URI of the file to write. */
  readonly target?: string;
}

/** The kinds that have an id and are saved where a person says. */
type NamedKind = Exclude<TemplateKind, 'settings'>;

/** Begins a document from its template; gives its URI, or undefined where it was given up or the file exists. */
export async function newDocument(kind: NamedKind, given: NewDocumentArguments): Promise<vscode.Uri | undefined> {
  const family = await familyFor(kind, given);
  if (family === 'given up') return undefined;
  const id = given.id ?? (await askForId(kind));
  if (id === undefined) return undefined;
  const name = given.name ?? (kind === 'stores' ? '' : await askForName(kind));
  if (name === undefined) return undefined;
  const target = given.target === undefined ? await askForTarget(kind, id, family) : vscode.Uri.parse(given.target);
  if (target === undefined) return undefined;
  return write(kind, target, { id, name, ...(await linkTo(family, target)) });
}

/** Begins the settings document of a folder, or opens the one that is there. */
export async function newSettings(given: NewDocumentArguments): Promise<vscode.Uri | undefined> {
  if (given.target !== undefined) return write('settings', vscode.Uri.parse(given.target), {});
  const folders = vscode.workspace.workspaceFolders ?? [];
  const folder = folders.length > 1 ? await vscode.window.showWorkspaceFolderPick() : folders[0];
  if (folder !== undefined) return write('settings', vscode.Uri.joinPath(folder.uri, 'witnessmark.yaml'), {});
  if (folders.length === 0) {
    void vscode.window.showInformationMessage(
      vscode.l10n.t('Open a folder first: the settings document lies at its root.'),
    );
  }
  return undefined;
}

async function familyFor(kind: NamedKind, given: NewDocumentArguments): Promise<vscode.Uri | undefined | 'given up'> {
  if (kind !== 'procedure' && kind !== 'kit') return undefined;
  if (given.family !== undefined) return vscode.Uri.parse(given.family);
  return (await chooseFamily(() => newDocument('family', {}))) ?? 'given up';
}

function askForId(kind: NamedKind): Thenable<string | undefined> {
  const { prompt, value } = idQuestion(kind);
  return vscode.window.showInputBox({
    prompt,
    value,
    validateInput: (text) => idProblem(kind, text),
    ignoreFocusOut: true,
  });
}

function idQuestion(kind: NamedKind): { prompt: string; value: string } {
  switch (kind) {
    case 'family':
      return { prompt: vscode.l10n.t('Id of the family: small letters, digits and hyphens'), value: 'my-unit' };
    case 'kit':
      return { prompt: vscode.l10n.t('Number of the kit, as on its box'), value: 'K-100' };
    case 'stores':
      return { prompt: vscode.l10n.t('Name of the stores'), value: vscode.l10n.t('Bay 1') };
    case 'procedure':
      return { prompt: vscode.l10n.t('Number of the procedure'), value: 'OP-100' };
  }
}

function idProblem(kind: NamedKind, text: string): string | undefined {
  if (kind === 'family' && !/^[a-z][a-z0-9-]{2,}$/.test(text)) {
    return vscode.l10n.t('An id has three or more small letters, digits and hyphens, and begins with a letter');
  }
  return text.trim() === '' ? vscode.l10n.t('Type something that tells it from others') : undefined;
}

function askForName(kind: NamedKind): Thenable<string | undefined> {
  const prompt =
    kind === 'procedure'
      ? vscode.l10n.t('Title of the procedure, such as “Major rebuild of the V4”')
      : vscode.l10n.t('Name in full, as people say it');
  return vscode.window.showInputBox({ prompt, ignoreFocusOut: true });
}

async function askForTarget(
  kind: NamedKind,
  id: string,
  family: vscode.Uri | undefined,
): Promise<vscode.Uri | undefined> {
  const folder = await usualFolder(kind, family);
  const file = `${fileNameFor(id)}.${kind}.yaml`;
  const chosen = await vscode.window.showSaveDialog({
    ...(folder === undefined ? {} : { defaultUri: vscode.Uri.joinPath(folder, file) }),
    title: vscode.l10n.t('Where the new document goes'),
    saveLabel: vscode.l10n.t('Create'),
  });
  // The kind of a document is told by its name, so the ending is not the person's to leave out.
  if (chosen === undefined || new RegExp(`\\.${kind}\\.ya?ml$`).test(chosen.path)) return chosen;
  return chosen.with({ path: `${chosen.path.replace(/\.ya?ml$/, '')}.${kind}.yaml` });
}

async function linkTo(family: vscode.Uri | undefined, target: vscode.Uri): Promise<Answers> {
  if (family === undefined) return {};
  const folder = vscode.Uri.joinPath(target, '..');
  const part = kitPartOf((await vscode.workspace.openTextDocument(family)).getText());
  return { family: relativePath(folder.path, family.path), ...(part === undefined ? {} : { part }) };
}

async function write(kind: TemplateKind, target: vscode.Uri, answers: Answers): Promise<vscode.Uri | undefined> {
  if (await exists(target)) {
    const name = target.path.slice(target.path.lastIndexOf('/') + 1);
    void vscode.window.showWarningMessage(vscode.l10n.t('{0} exists already and is left as it is.', name));
    await vscode.window.showTextDocument(target);
    return undefined;
  }
  const snippet = fillTemplate(DOCUMENT_TEMPLATES[kind], answers);
  await vscode.workspace.fs.writeFile(target, new TextEncoder().encode(plainDocument(snippet)));
  const editor = await vscode.window.showTextDocument(target, { preview: false });
  const everything = new vscode.Range(0, 0, editor.document.lineCount, 0);
  // The same text once more, so that the Tab key leads from one placeholder to the next.
  await editor.insertSnippet(new vscode.SnippetString(snippet), everything);
  await editor.document.save();
  return target;
}

async function exists(uri: vscode.Uri): Promise<boolean> {
  return vscode.workspace.fs.stat(uri).then(
    () => true,
    () => false,
  );
}
