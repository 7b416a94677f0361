import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  CLIENT_FOLDER,
  CLIENT_TEXT,
  CLIENT_WRITE,
  type ClientFileParams,
  type ClientFolderResult,
  type ClientTextResult,
  type ClientWriteParams,
  type ClientWriteResult,
} from '../../server/src/lsp/protocol';

/** A document larger than this is no document, and reading it would only stall the editor. */
const LARGEST = 8 * 1024 * 1024;

/** Answers the server's questions for files that only the editor can reach. */
export function answerForFiles(client: BaseLanguageClient): vscode.Disposable {
  const answers = [
    client.onRequest(CLIENT_TEXT.method, ({ uri }: ClientFileParams) => readText(vscode.Uri.parse(uri))),
    client.onRequest(CLIENT_FOLDER.method, ({ uri }: ClientFileParams) => readFolder(vscode.Uri.parse(uri))),
    client.onRequest(CLIENT_WRITE.method, (params: ClientWriteParams) => write(params)),
  ];
  return vscode.Disposable.from(...answers);
}

async function readText(uri: vscode.Uri): Promise<ClientTextResult> {
  try {
    const { type, size } = await vscode.workspace.fs.stat(uri);
    if ((type & vscode.FileType.File) === 0) return { is: 'unreadable', reason: 'it is not a file' };
    if (size > LARGEST) return { is: 'unreadable', reason: 'it is larger than 8 MB' };
    return { is: 'text', text: new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)) };
  } catch (error) {
    if (isMissing(error)) return { is: 'missing' };
    return { is: 'unreadable', reason: reasonOf(error) };
  }
}

async function readFolder(uri: vscode.Uri): Promise<ClientFolderResult> {
  try {
    const found = await vscode.workspace.fs.readDirectory(uri);
    const entries = found
      .filter(([, type]) => type === vscode.FileType.File || type === vscode.FileType.Directory)
      .map(([name, type]) => ({ name, is: type === vscode.FileType.File ? ('file' as const) : ('folder' as const) }));
    return { entries };
  } catch {
    return { entries: [] };
  }
}

async function write({ uri, base64 }: ClientWriteParams): Promise<ClientWriteResult> {
  const target = vscode.Uri.parse(uri);
  try {
    const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
    await vscode.workspace.fs.writeFile(target, bytes);
    return { is: 'written' };
  } catch (error) {
    return { is: 'refused', why: `Cannot write ${target.path}: ${reasonOf(error)}` };
  }
}

function isMissing(error: unknown): boolean {
  return error instanceof vscode.FileSystemError && ['FileNotFound', 'FileNotADirectory'].includes(error.code);
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
