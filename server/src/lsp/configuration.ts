import { ConfigurationRequest } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import {
  areSameConfigurations,
  type ClientConfiguration,
  DEFAULT_CONFIGURATION,
  readConfiguration,
  SECTION,
} from './clientConfiguration';
import type { Session } from './session';

/**
 * What the client has set, by opened folder: asked for where the client can be asked, and else as it was last told. It
 * is remembered until the client says that it has changed.
 */
export class Configuration {
  readonly #session: Session;
  /** What the client has told without being asked. */
  #told: unknown;
  #asked = new Map<Uri, Promise<ClientConfiguration>>();
  readonly #last = new Map<Uri, ClientConfiguration>();

  constructor(session: Session) {
    this.#session = session;
  }

  /** Takes what the client has sent along with its first message or told later, and forgets what it said before. */
  told(settings: unknown): void {
    if (settings !== undefined && settings !== null) this.#told = settings;
    this.forget();
  }

  /** From now on the client is asked again. */
  forget(): void {
    this.#asked = new Map();
  }

  /** What holds for a document; the workspace prefers it from then on where no settings document says. */
  of(uri: Uri): Promise<ClientConfiguration> {
    const root = this.#session.workspace.snapshot.rootOf(uri);
    if (root === undefined) return Promise.resolve(DEFAULT_CONFIGURATION);
    const known = this.#asked.get(root);
    if (known !== undefined) return known;
    const asked = this.#asked;
    const answer = this.#ask(root).then((one) => (asked === this.#asked ? this.#keep(root, one) : one));
    asked.set(root, answer);
    return answer;
  }

  async #ask(root: Uri): Promise<ClientConfiguration> {
    const { client, connection } = this.#session;
    if (client.workspace?.configuration !== true) return readConfiguration(this.#told);
    try {
      const items = [{ scopeUri: this.#session.clientUriOf(root), section: SECTION }];
      const [answer] = await connection.sendRequest(ConfigurationRequest.type, { items });
      return readConfiguration(answer ?? this.#told);
    } catch (error) {
      // Whoever cannot say what is set gets what is usual, and the reason is in the log.
      connection.console.warn(`The settings of ${root} could not be read: ${error}`);
      return readConfiguration(this.#told);
    }
  }

  /** The same settings stay the same object, so that what was worked out with them is not worked out again. */
  #keep(root: Uri, configuration: ClientConfiguration): ClientConfiguration {
    const last = this.#last.get(root);
    const kept = last !== undefined && areSameConfigurations(last, configuration) ? last : configuration;
    this.#last.set(root, kept);
    if (kept !== last) this.#session.workspace.setPreferences(root, kept);
    return kept;
  }
}
