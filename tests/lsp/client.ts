import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { renameSync, rmSync, unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { expect, onTestFinished } from 'vitest';
import type { DataCallback, Disposable, Message } from 'vscode-jsonrpc';
import {
  type ClientCapabilities,
  type CodeAction,
  CodeActionRequest,
  CodeLensRefreshRequest,
  type ConfigurationItem,
  ConfigurationRequest,
  createProtocolConnection,
  type Diagnostic,
  DiagnosticRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  DidRenameFilesNotification,
  type DocumentDiagnosticReport,
  DocumentDiagnosticRequest,
  FileChangeType,
  InitializedNotification,
  InitializeRequest,
  type InitializeResult,
  InlayHintRefreshRequest,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  RegistrationRequest,
  SemanticTokensRefreshRequest,
  StreamMessageReader,
  StreamMessageWriter,
  type TextDocumentClientCapabilities,
  type TextEdit,
  WorkDoneProgressCreateRequest,
} from 'vscode-languageserver/node';
import { protocolShapes } from '../support/protocolShapes';
import { ProtocolWatch } from '../support/protocolWatch';
import { temporaryFiles } from '../support/temporaryFiles';

const root = join(import.meta.dirname, '../..');
let bundle: Promise<string> | undefined;

/** Bundles the server as it is now, once for a test file. */
function bundledServer(): Promise<string> {
  bundle ??= bundleServer();
  return bundle;
}

async function bundleServer(): Promise<string> {
  const outfile = join(root, `.cache/lsp-tests/server-${process.pid}.js`);
  await build({
    absWorkingDir: root,
    entryPoints: ['server/src/node/main.ts'],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    external: ['@myriaddreamin/typst-ts-node-compiler'],
    // Run from source, the printer finds its templates and fonts from where its own files lie.
    define: { 'import.meta.url': 'importMetaUrl', __dirname: JSON.stringify(join(root, 'server/src/node/pdf')) },
    banner: { js: "const importMetaUrl = require('node:url').pathToFileURL(__filename).href;" },
    logLevel: 'error',
  });
  process.once('exit', () => rmSync(outfile, { force: true }));
  return outfile;
}

class WatchedReader extends StreamMessageReader {
  readonly #watch: ProtocolWatch;

  constructor(input: NodeJS.ReadableStream, watch: ProtocolWatch) {
    super(input);
    this.#watch = watch;
  }

  override listen(callback: DataCallback): Disposable {
    return super.listen((message) => {
      this.#watch.received(message);
      callback(message);
    });
  }
}

class WatchedWriter extends StreamMessageWriter {
  readonly #watch: ProtocolWatch;

  constructor(output: NodeJS.WritableStream, watch: ProtocolWatch) {
    super(output);
    this.#watch = watch;
  }

  override write(message: Message): Promise<void> {
    this.#watch.sent(message);
    return super.write(message);
  }
}

export interface ClientOptions {
  /** Folders to open, relative; by default the one that holds the files. An empty list opens none. */
  readonly folders?: readonly string[];
  /** What a hover may be written in; left out, the client does not say. */
  readonly hoverFormats?: ('markdown' | 'plaintext')[];
  /** What the client answers when it is asked for its settings; left out, it cannot be asked. */
  readonly configuration?: unknown;
  readonly initializationOptions?: unknown;
  /** Whether the client can be asked to draw again. */
  readonly refreshes?: boolean;
  /** Whether the client asks for findings. */
  readonly pulls?: boolean;
  /** The server to run; the sources as they are now where none is named. */
  readonly program?: string;
  /** Folders that are no folders on disk, by their URIs. */
  readonly otherFolders?: readonly string[];
  /** What the client can do, instead of what the other options make of it. */
  readonly capabilities?: ClientCapabilities;
  /** What else the client can do with texts. */
  readonly textDocument?: TextDocumentClientCapabilities;
}

/** An editor, as the server sees one: real messages to a real process over its standard input and output. */
export class TestClient {
  readonly #shown = new Map<string, PublishDiagnosticsParams>();
  readonly #waiting = new Set<() => void>();
  readonly #versions = new Map<string, number>();
  #configuration: unknown;
  /** What the server has asked the settings of. */
  readonly askedFor: ConfigurationItem[] = [];
  /** What the server has asked to be drawn again. */
  readonly refreshed = new Set<string>();
  initialized: InitializeResult | undefined;

  private constructor(
    readonly folder: string,
    readonly server: ChildProcess,
    readonly connection: ProtocolConnection,
    /** Holds every message of the server against the protocol; what is wrong with one fails the test. */
    readonly watch: ProtocolWatch,
  ) {}

  static async start(files: Readonly<Record<string, string>>, options: ClientOptions = {}): Promise<TestClient> {
    const folder = temporaryFiles(files);
    const server = spawn(process.execPath, [options.program ?? (await bundledServer()), '--stdio'], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const watch = new ProtocolWatch(await protocolShapes());
    const input = new WatchedReader(server.stdout, watch);
    const output = new WatchedWriter(server.stdin, watch);
    const connection = createProtocolConnection(input, output);
    const client = new TestClient(folder, server, connection, watch);
    onTestFinished(() => client.#stop());
    await client.#initialize(options);
    return client;
  }

  uri(path: string): string {
    return pathToFileURL(join(this.folder, path)).href;
  }

  open(path: string, text: string): void {
    this.#versions.set(path, 1);
    const textDocument = { uri: this.uri(path), languageId: 'witnessmark', version: 1, text };
    void this.connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument });
  }

  /** Types: one edit, or a whole new text. */
  change(path: string, change: TextEdit | string): void {
    const version = (this.#versions.get(path) ?? 0) + 1;
    this.#versions.set(path, version);
    const contentChanges =
      typeof change === 'string' ? [{ text: change }] : [{ range: change.range, text: change.newText }];
    const params = { textDocument: { uri: this.uri(path), version }, contentChanges };
    void this.connection.sendNotification(DidChangeTextDocumentNotification.type, params);
  }

  close(path: string): void {
    void this.connection.sendNotification(DidCloseTextDocumentNotification.type, {
      textDocument: { uri: this.uri(path) },
    });
  }

  /** Writes a file on disk, as another program would, and says so. */
  writeOnDisk(path: string, text: string): void {
    writeFileSync(join(this.folder, path), text);
    this.#fileEvent(path, FileChangeType.Changed);
  }

  removeOnDisk(path: string): void {
    unlinkSync(join(this.folder, path));
    this.#fileEvent(path, FileChangeType.Deleted);
  }

  /** Renames a folder, as the editor does it itself. */
  rename(from: string, to: string): void {
    renameSync(join(this.folder, from), join(this.folder, to));
    const files = [{ oldUri: this.uri(from), newUri: this.uri(to) }];
    void this.connection.sendNotification(DidRenameFilesNotification.type, { files });
  }

  /** Waits until what the server has said last of a document is as wanted. */
  async shown(path: string, wanted: (diagnostics: readonly Diagnostic[]) => boolean): Promise<readonly Diagnostic[]> {
    for (;;) {
      const last = this.#shown.get(this.uri(path));
      const isCurrent = last?.version === undefined || last.version === this.#versions.get(path);
      if (last !== undefined && isCurrent && wanted(last.diagnostics)) return last.diagnostics;
      await this.#something();
    }
  }

  #something(): Promise<void> {
    return new Promise((resolve) => this.#waiting.add(resolve));
  }

  #wake(): void {
    const waiting = [...this.#waiting];
    this.#waiting.clear();
    for (const wake of waiting) wake();
  }

  /** Whether anything was ever sent of a document without having been asked for. */
  get isPushed(): boolean {
    return this.#shown.size > 0;
  }

  /** Asks for the findings of a document. */
  pull(path: string, previousResultId?: string): Promise<DocumentDiagnosticReport> {
    const textDocument = { uri: this.uri(path) };
    const params = { textDocument, ...(previousResultId === undefined ? {} : { previousResultId }) };
    return this.connection.sendRequest(DocumentDiagnosticRequest.type, params);
  }

  /** Waits until the server has asked for something to be drawn again. */
  async refresh(method: string): Promise<void> {
    while (!this.refreshed.delete(method)) await this.#something();
  }

  /** Waits until a finding of a rule is shown, and gives the first. */
  async finding(path: string, rule: string): Promise<Diagnostic> {
    const has = (diagnostic: Diagnostic) => diagnostic.code === rule;
    const found = (await this.shown(path, (diagnostics) => diagnostics.some(has))).find(has);
    if (found === undefined) throw new Error(`No ${rule}`);
    return found;
  }

  /** Waits until no finding of a rule is shown any more. */
  async noFinding(path: string, rule: string): Promise<void> {
    await this.shown(path, (diagnostics) => diagnostics.every((diagnostic) => diagnostic.code !== rule));
  }

  /** Sets other settings, and says so. */
  configure(configuration: unknown): void {
    this.#configuration = configuration;
    void this.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  }

  async fixes(path: string, diagnostic: Diagnostic): Promise<CodeAction[]> {
    const actions = await this.connection.sendRequest(CodeActionRequest.type, {
      textDocument: { uri: this.uri(path) },
      range: diagnostic.range,
      context: { diagnostics: [diagnostic] },
    });
    return (actions ?? []) as CodeAction[];
  }

  async #initialize(options: ClientOptions): Promise<void> {
    this.#configuration = options.configuration;
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
      this.#shown.set(params.uri, params);
      this.#wake();
    });
    this.connection.onRequest(RegistrationRequest.type, () => {});
    this.connection.onRequest(WorkDoneProgressCreateRequest.type, () => {});
    this.connection.onRequest(ConfigurationRequest.type, ({ items }) => {
      this.askedFor.push(...items);
      if (this.#configuration instanceof Error) throw this.#configuration;
      return items.map(() => this.#configuration);
    });
    for (const { method } of REFRESHES) {
      this.connection.onRequest(method, () => {
        this.refreshed.add(method);
        this.#wake();
      });
    }
    this.connection.listen();
    this.initialized = await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: [
        ...(options.folders ?? ['.']).map((folder) => ({ uri: this.uri(folder), name: folder })),
        ...(options.otherFolders ?? []).map((uri) => ({ uri, name: uri })),
      ],
      initializationOptions: options.initializationOptions,
      capabilities: options.capabilities ?? capabilitiesOf(options),
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
  }

  #fileEvent(path: string, type: FileChangeType): void {
    const changes = [{ uri: this.uri(path), type }];
    void this.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes });
  }

  async #stop(): Promise<void> {
    const ended = this.server.exitCode === null ? once(this.server, 'exit') : undefined;
    this.connection.dispose();
    this.server.kill();
    await ended;
    expect(this.watch.problems).toEqual([]);
  }
}

const REFRESHES = [
  DiagnosticRefreshRequest.type,
  InlayHintRefreshRequest.type,
  CodeLensRefreshRequest.type,
  SemanticTokensRefreshRequest.type,
];

function capabilitiesOf({ hoverFormats, textDocument, ...options }: ClientOptions): ClientCapabilities {
  const refresh = { refreshSupport: options.refreshes === true };
  return {
    workspace: {
      diagnostics: refresh,
      didChangeWatchedFiles: { dynamicRegistration: true },
      workspaceEdit: { documentChanges: true },
      configuration: 'configuration' in options,
      inlayHint: refresh,
      codeLens: refresh,
      semanticTokens: refresh,
    },
    textDocument: {
      publishDiagnostics: { relatedInformation: true },
      ...(options.pulls === true ? { diagnostic: { relatedDocumentSupport: false } } : {}),
      ...textDocument,
      ...(hoverFormats === undefined ? {} : { hover: { contentFormat: hoverFormats } }),
    },
  };
}
