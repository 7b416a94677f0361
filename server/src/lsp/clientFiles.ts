import type { Connection } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import type { FileSource, SourceText } from '../core/analysis/workspace';
import { documentKindOf } from '../core/syntax/documentKind';
import { base64 } from '../core/text/base64';
import { toClientUri } from './convert';
import type { PrintOutcome } from './host';
import {
  CLIENT_FOLDER,
  CLIENT_TEXT,
  CLIENT_WRITE,
  type ClientFolderEntry,
  type ClientFolderResult,
  type ClientTextResult,
  type ClientWriteResult,
  type RequestName,
} from './protocol';

/** Files of the client's own file systems: all there are in a browser, and elsewhere those that are not on disk. */
export class ClientFiles implements FileSource {
  readonly #connection: Connection;

  constructor(connection: Connection) {
    this.#connection = connection;
  }

  async read(uri: Uri): Promise<SourceText> {
    const result = await this.#ask<ClientTextResult>(CLIENT_TEXT, { uri: toClientUri(uri) });
    // Only our own client hands files over.
    return result ?? { is: 'unreadable', reason: 'it is not on disk' };
  }

  /** All documents below a folder in the order of their names; hidden folders, installed packages and links are passed over. */
  async *documentsBelow(folder: Uri): AsyncGenerator<Uri> {
    for (const { name, is } of await this.#entries(folder)) {
      if (name.startsWith('.') || name === 'node_modules') continue;
      const uri = `${folder}/${name}`;
      if (is === 'folder') yield* this.documentsBelow(uri);
      else if (documentKindOf(uri) !== undefined) yield uri;
    }
  }

  async write(uri: Uri, bytes: Uint8Array): Promise<PrintOutcome> {
    const params = { uri: toClientUri(uri), base64: base64(bytes) };
    const result = await this.#ask<ClientWriteResult>(CLIENT_WRITE, params);
    if (result === undefined)
      return { is: 'refused', why: 'This editor lets a sheet be printed to a file on disk only.' };
    return result.is === 'written' ? { is: 'printed' } : result;
  }

  async #entries(folder: Uri): Promise<readonly ClientFolderEntry[]> {
    const result = await this.#ask<ClientFolderResult>(CLIENT_FOLDER, { uri: toClientUri(folder) });
    return [...(result?.entries ?? [])].sort((a, b) => (a.name < b.name ? -1 : 1));
  }

  /** The client's answer; undefined from a client that does not know the question. */
  async #ask<Result>(request: RequestName<never, Result>, params: unknown): Promise<Result | undefined> {
    try {
      return await this.#connection.sendRequest<Result>(request.method, params);
    } catch {
      return undefined;
    }
  }
}
