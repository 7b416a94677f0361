import {
  type Connection,
  type InitializeParams,
  InitializeRequest,
  Message,
  type MessageStrategy,
} from 'vscode-languageserver/node';
import { version } from '../../../package.json';
import { initializeResult } from '../lsp/capabilities';

/**
 * Answers the first message of a client at once, and loads what serves it behind that. An editor waits for this answer,
 * and most of what takes time at the start is reading the program itself. Every other message waits until it is there.
 */
export class FirstAnswer implements MessageStrategy {
  #params: InitializeParams | undefined;
  #connection: Connection | undefined;
  #serving: Promise<void> | undefined;

  answerOn(connection: Connection): void {
    this.#connection = connection;
    connection.onInitialize((params) => {
      this.#params = params;
      return initializeResult(params, version);
    });
    connection.listen();
  }

  async handleMessage(message: Message, next: (message: Message) => void | Promise<void>): Promise<void> {
    const isFirst = Message.isRequest(message) && message.method === InitializeRequest.method;
    if (!isFirst) await this.#serve();
    await next(message);
    if (isFirst) await this.#serve();
  }

  /** Where nobody has introduced himself yet there is nobody to serve: the connection refuses what he asks for. */
  #serve(): Promise<void> {
    if (this.#params === undefined || this.#connection === undefined) return Promise.resolve();
    this.#serving ??= load(this.#connection, this.#params);
    return this.#serving;
  }
}

async function load(connection: Connection, params: InitializeParams): Promise<void> {
  const { startServing } = await import('./serving');
  startServing(connection, params);
}
