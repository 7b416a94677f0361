import { DidChangeConfigurationNotification } from 'vscode-languageserver';
import { SECTION } from '../clientConfiguration';
import type { Feature } from '../feature';
import { refreshViews } from '../refreshViews';

/** What the client has set, and that it has changed. */
export const configuration: Feature = {
  register(connection, session) {
    connection.onDidChangeConfiguration(({ settings }) =>
      session.hear(() => {
        session.configurationTold(settings);
        session.diagnostics.recheckAll();
        refreshViews(session);
      }),
    );
  },
  async started(connection, session) {
    if (session.client.workspace?.didChangeConfiguration?.dynamicRegistration !== true) return;
    await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
  },
};
