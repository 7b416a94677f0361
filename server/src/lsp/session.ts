import {
  type CancellationToken,
  type Connection,
  ErrorCodes,
  type InitializeParams,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { folderOf, isInside, type Uri } from '../core/analysis/uri';
import { type FileSource, type SourceText, Workspace } from '../core/analysis/workspace';
import { Cancelled, throwIfCancelled } from './cancelled';
import { CheckedDocuments } from './checkedDocuments';
import type { ClientConfiguration } from './clientConfiguration';
import { Comparisons } from './comparisons';
import { Configuration } from './configuration';
import { toClientUri, toCoreUri } from './convert';
import { Diagnostics } from './diagnostics';
import type { Host } from './host';
import type { OpenDocument } from './openDocument';
import { asksForFindings, foldersOf, showsUses } from './toldAtStart';

/** One client with its folders and open documents. It lives as long as the connection. */
export class Session {
  readonly connection: Connection;
  readonly host: Host;
  readonly workspace = new Workspace();
  readonly files: FileSource = { read: (uri) => this.#read(uri) };
  readonly checked: CheckedDocuments;
  readonly diagnostics: Diagnostics;
  readonly #configuration: Configuration;
  /** Procedures whose sheet somebody looks at, and wants to hear of. */
  readonly sheetsShown = new Set<Uri>();
  /** What somebody compares with an earlier text. */
  readonly comparisons = new Comparisons();
  readonly client: InitializeParams['capabilities'];
  /** Whether the client has the command that shows the places which a lens counts. */
  readonly showsUses: boolean;
  /** Whether the client asks for findings instead of being sent them. */
  readonly asksForFindings: boolean;
  #fileChanges = 0;
  #isOver = false;
  #folders: readonly Uri[] = [];
  readonly #open = new Map<Uri, OpenDocument>();
  /** How the client writes the URI of what it has opened, for a client that compares spellings. */
  readonly #spellings = new Map<Uri, string>();

  constructor(connection: Connection, host: Host, params: InitializeParams) {
    this.connection = connection;
    this.host = host;
    this.client = params.capabilities ?? {};
    this.showsUses = showsUses(params);
    this.asksForFindings = asksForFindings(params);
    this.#configuration = new Configuration(this);
    this.checked = new CheckedDocuments(this.workspace, this.files, {
      today: () => host.today(),
      prepare: async (uri) => void (await this.configuration(uri)),
    });
    this.diagnostics = new Diagnostics(this);
    this.#configuration.told(params.initializationOptions);
    this.setFolders(foldersOf(params).map(toCoreUri));
  }

  /** The client has said that it goes; nothing is answered any more. */
  end(): void {
    this.#isOver = true;
  }

  /** How often files were said to have changed on disk; whoever remembers what is in them looks again then. */
  get fileChanges(): number {
    return this.#fileChanges;
  }

  /** What the client has set for a document. What a settings document says too counts before it: `settingsFor`. */
  configuration(uri: Uri): Promise<ClientConfiguration> {
    return this.#configuration.of(uri);
  }

  /** The client has set something else; what it tells along counts where it cannot be asked. */
  configurationTold(settings: unknown): void {
    this.#configuration.told(settings);
  }

  /** The folders that the client has opened. */
  get folders(): readonly Uri[] {
    return this.#folders;
  }

  setFolders(folders: readonly Uri[]): void {
    this.#folders = [...new Set(folders.map((folder) => folder.replace(/\/+$/, '')))];
    this.#setRoots();
    this.#configuration.forget();
  }

  /** Whether a document is checked without being open: in a folder, and not in a hidden one or among packages. */
  isInFolders(uri: Uri): boolean {
    return this.#folders.some(
      (folder) => isInside(uri, folder) && !/\/(?:\.|node_modules\/)/.test(uri.slice(folder.length)),
    );
  }

  openDocument(uri: Uri): OpenDocument | undefined {
    return this.#open.get(uri);
  }

  get openUris(): readonly Uri[] {
    return [...this.#open.keys()];
  }

  setOpen(document: OpenDocument): void {
    const isNew = !this.#open.has(document.uri);
    this.#open.set(document.uri, document);
    this.#spellings.set(document.uri, document.clientUri);
    if (isNew) this.#setRoots();
    this.workspace.set(document.uri, { is: 'open', content: document.content });
  }

  /** From now on the file on disk counts again. */
  setClosed(uri: Uri): void {
    this.#open.delete(uri);
    this.#setRoots();
    this.workspace.forget(uri);
  }

  /** Whether the client says when files change on disk. */
  get hearsOfFiles(): boolean {
    return this.client.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
  }

  /** Files have come, gone or changed on disk; the text of what is open counts all the same. */
  filesChanged(uris: readonly Uri[]): void {
    this.#fileChanges += 1;
    for (const uri of uris) if (!this.#open.has(uri)) this.workspace.forget(uri);
    for (const uri of uris) this.diagnostics.changed(uri);
  }

  /** Where nobody says when files change, saving is the moment to look again. */
  fileSaved(): void {
    if (this.hearsOfFiles) return;
    this.#fileChanges += 1;
    for (const uri of [...this.workspace.snapshot.uris]) if (!this.#open.has(uri)) this.workspace.forget(uri);
    this.diagnostics.recheckOpen();
  }

  async scanFolders(folders: readonly Uri[] = this.#folders): Promise<void> {
    for (const folder of folders) await this.hear(() => this.diagnostics.scan(folder));
  }

  clientUriOf(uri: Uri): string {
    return this.#spellings.get(uri) ?? toClientUri(uri);
  }

  /**
   * Answers a request. The only place where an error is caught: it is logged, the client gets a reason, and the server
   * goes on.
   */
  async answer<Result>(
    token: CancellationToken,
    work: () => Promise<Result> | Result,
  ): Promise<Result | ResponseError<never>> {
    try {
      // What the client has sent before it cancelled is heard first, so that no work is done for nobody.
      await this.host.nextTurn();
      throwIfCancelled(token);
      if (this.#isOver) return new ResponseError<never>(ErrorCodes.InvalidRequest, 'The server was told to end');
      return await work();
    } catch (error) {
      if (error instanceof Cancelled) return new ResponseError<never>(LSPErrorCodes.RequestCancelled, 'Cancelled');
      this.#log(error);
      return new ResponseError<never>(ErrorCodes.InternalError, reasonOf(error));
    }
  }

  /** Hears a notification or does work that nobody waits for; what goes wrong is logged. */
  async hear(work: () => Promise<void> | void): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.#log(error);
    }
  }

  #log(error: unknown): void {
    this.connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
  }

  /** A document outside every folder is its own small world: the folder above its own, where its kits and families are. */
  #setRoots(): void {
    const outside = [...this.#open.keys()]
      .filter((uri) => !this.isInFolders(uri))
      .map((uri) => folderOf(folderOf(uri)));
    const roots = [...new Set([...this.#folders, ...outside])];
    const known = this.workspace.snapshot.roots;
    if (roots.length !== known.length || roots.some((root, i) => root !== known[i])) this.workspace.setRoots(roots);
  }

  async #read(uri: Uri): Promise<SourceText> {
    const fromDisk = await this.host.files.read(uri);
    // It may have been opened while the disk was busy, and then the disk no longer counts.
    const open = this.#open.get(uri);
    if (open !== undefined) return { is: 'text', text: open.content.whole };
    // Editors take the byte-order mark off, and positions must count from the same start.
    return fromDisk.is === 'text' ? { is: 'text', text: fromDisk.text.replace(/^\uFEFF/, '') } : fromDisk;
  }
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
