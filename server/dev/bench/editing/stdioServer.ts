import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import process from 'node:process';
import {
  createMessageConnection,
  type MessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-jsonrpc/node';
import type { InitializeResult, Position, PublishDiagnosticsParams } from 'vscode-languageserver';
import type { Edit } from './editScript';

/** How a server is started, and what it is told when it asks for settings. */
export interface ServerStart {
  readonly name: string;
  readonly args: readonly string[];
  settings(section: string): unknown;
}

/** A language server in a process of its own, spoken to as any client does: both servers get the very same messages. */
export class StdioServer {
  readonly name: string;
  readonly #process: ChildProcess;
  readonly #connection: MessageConnection;
  readonly #waiting = new Map<string, (diagnostics: PublishDiagnosticsParams) => void>();
  /** Resolves once the server has said that the first check of the folder is done. */
  readonly scanned: Promise<void>;
  /** Milliseconds from the start of the process to the answer to `initialize`. */
  startMs = Number.NaN;

  private constructor(start: ServerStart) {
    this.name = start.name;
    this.#process = spawn(process.execPath, [...start.args], { stdio: ['pipe', 'pipe', 'ignore'] });
    const { stdin, stdout } = this.#process;
    if (stdin === null || stdout === null) throw new Error(`${start.name} has no pipes`);
    this.#connection = createMessageConnection(new StreamMessageReader(stdout), new StreamMessageWriter(stdin));
    this.#connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.#waiting.get(params.uri)?.(params);
    });
    this.#connection.onRequest('workspace/configuration', ({ items }: { items: { section: string }[] }) =>
      items.map((item) => start.settings(item.section)),
    );
    for (const method of ['client/registerCapability', 'window/workDoneProgress/create']) {
      this.#connection.onRequest(method, () => null);
    }
    this.scanned = new Promise((resolve) => {
      this.#connection.onNotification('$/progress', ({ value }: { value: { kind: string } }) => {
        if (value.kind === 'end') resolve();
      });
    });
    this.#connection.onUnhandledNotification(() => {});
    this.#connection.listen();
  }

  static async start(start: ServerStart, folder: string | undefined): Promise<StdioServer> {
    const before = performance.now();
    const server = new StdioServer(start);
    await server.request<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: folder ?? null,
      workspaceFolders: folder === undefined ? null : [{ uri: folder, name: 'bench' }],
      capabilities: {
        workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
        textDocument: {
          publishDiagnostics: { relatedInformation: true },
          completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown'] } },
          hover: { contentFormat: ['markdown'] },
        },
        window: { workDoneProgress: true },
      },
    });
    server.startMs = performance.now() - before;
    await server.notify('initialized', {});
    return server;
  }

  request<Result>(method: string, params: unknown): Promise<Result> {
    return this.#connection.sendRequest(method, params);
  }

  notify(method: string, params: unknown): Promise<void> {
    return this.#connection.sendNotification(method, params);
  }

  /** Opens a document; resolves once its findings have come. */
  async open(uri: string, text: string): Promise<void> {
    const shown = this.#findings(uri);
    await this.notify('textDocument/didOpen', {
      textDocument: { uri, languageId: this.name === 'peer' ? 'yaml' : 'witnessmark', version: 1, text },
    });
    await shown;
  }

  /** Sends one change, and resolves to the milliseconds until the findings of the changed text have come. */
  async change(
    uri: string,
    version: number,
    range: { start: Position; end: Position },
    { text }: Pick<Edit, 'text'>,
  ): Promise<number> {
    const before = performance.now();
    const shown = this.#findings(uri, version);
    await this.notify('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range, text }],
    });
    await shown;
    return performance.now() - before;
  }

  /** Resident memory in megabytes, where the platform tells; else undefined. */
  memory(): number | undefined {
    try {
      const status = readFileSync(`/proc/${this.#process.pid}/status`, 'utf8');
      return Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1]) / 1000;
    } catch {
      return undefined;
    }
  }

  async stop(): Promise<void> {
    const gone = once(this.#process, 'exit');
    await this.request('shutdown', null).catch(() => {});
    await this.notify('exit', null).catch(() => {});
    this.#process.stdin?.end();
    await gone;
    this.#connection.dispose();
  }

  /** A server that names the version in its findings is waited for until it names this one. */
  #findings(uri: string, version?: number): Promise<void> {
    return new Promise((resolve) => {
      this.#waiting.set(uri, (params) => {
        if (version !== undefined && params.version !== undefined && params.version !== version) return;
        this.#waiting.delete(uri);
        resolve();
      });
    });
  }
}
