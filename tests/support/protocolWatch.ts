import type { Message, NotificationMessage, RequestMessage, ResponseMessage } from 'vscode-jsonrpc';
import type { MethodShapes, ProtocolShapes } from './protocolShapes';
import { shapeProblems } from './valueShapes';

interface Asked {
  readonly method: string;
  readonly shapes: MethodShapes | undefined;
}

/** Looks at every message between a client and a server, and holds what the server says against the protocol. */
export class ProtocolWatch {
  /** What the server has said that it must not say. */
  readonly problems: string[] = [];
  /** The methods that the client has asked for and got an answer to, and those of its notifications. */
  readonly exercised = new Set<string>();
  /** The methods of what the server has said of its own accord. */
  readonly heard = new Set<string>();
  /** The methods that the server has announced after it was asked what it can do. */
  readonly registered = new Set<string>();
  readonly #shapes: ProtocolShapes;
  readonly #asked = new Map<unknown, Asked>();
  readonly #partial = new Map<unknown, Asked>();

  constructor(shapes: ProtocolShapes) {
    this.#shapes = shapes;
  }

  /** A message of the client. */
  sent(message: Message): void {
    if (!('method' in message)) return;
    const { method, params } = message as RequestMessage | NotificationMessage;
    if (!('id' in message)) {
      this.exercised.add(method);
      return;
    }
    const asked = { method, shapes: this.#shapes.methods[method] };
    this.#asked.set(message.id, asked);
    const token = (params as { partialResultToken?: unknown } | undefined)?.partialResultToken;
    if (token !== undefined) this.#partial.set(token, asked);
  }

  /** A message of the server. */
  received(message: Message): void {
    if ('method' in message) this.#heard(message as RequestMessage | NotificationMessage);
    else this.#answered(message as ResponseMessage);
  }

  #heard(message: RequestMessage | NotificationMessage): void {
    const { method, params } = message;
    this.heard.add(method);
    const shapes = this.#shapes.methods[method];
    const wanted = 'id' in message ? 'request' : 'notification';
    if (method === '$/progress') this.#progress(params as { token: unknown; value: unknown });
    // Cancelling and logging of traffic belong to the layer below, and are not among the protocol's own types.
    else if (method.startsWith('$/')) return;
    else if (shapes === undefined) this.problems.push(`${method} is no method`);
    else if (shapes.is !== wanted) this.problems.push(`${method} is sent as a ${wanted}`);
    else this.#hold(method, shapes.params, params);
    if (method === 'client/registerCapability') this.#registrations(params);
  }

  #answered({ id, result, error }: ResponseMessage): void {
    const asked = this.#asked.get(id);
    this.#asked.delete(id);
    if (asked === undefined) {
      // A message that could not be read is answered without anybody having asked.
      if (id !== null) this.problems.push(`nobody has asked for the answer ${id}`);
    } else if (error !== undefined) {
      const isError = Number.isInteger(error.code) && typeof error.message === 'string';
      if (!isError) this.problems.push(`${asked.method} is answered with no proper error`);
    } else {
      this.exercised.add(asked.method);
      if (asked.shapes === undefined) this.problems.push(`${asked.method} is answered, and is no method`);
      else this.#hold(asked.method, asked.shapes.result, result);
    }
  }

  #progress({ token, value }: { token: unknown; value: unknown }): void {
    const asked = this.#partial.get(token);
    if (asked === undefined) this.#hold('$/progress', this.#shapes.workDone, value);
    else this.#hold(`${asked.method} in part`, asked.shapes?.partialResult, value);
  }

  #registrations(params: unknown): void {
    const { registrations } = params as { registrations: { method: string; registerOptions?: unknown }[] };
    for (const { method, registerOptions } of registrations) {
      this.registered.add(method);
      const shapes = this.#shapes.methods[method];
      if (shapes === undefined) this.problems.push(`${method} is registered, and is no method`);
      else this.#hold(`the registration of ${method}`, shapes.registration, registerOptions ?? {});
    }
  }

  #hold(what: string, shape: number | undefined, value: unknown): void {
    const isNothing = value === undefined || value === null || JSON.stringify(value) === '{}';
    if (shape !== undefined) this.problems.push(...shapeProblems(this.#shapes.table, shape, value, what));
    else if (!isNothing) this.problems.push(`${what}: there is nothing to say`);
  }
}
