import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { version } from '../../../package.json';
import { initializeResult } from '../lsp/capabilities';
import { serve } from '../lsp/server';
import { BrowserHost } from './browserHost';

declare const self: DedicatedWorkerGlobalScope;

/** The entry of the language server where it is a worker of a page: its messages are the worker's. */
const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(self),
  new BrowserMessageWriter(self),
);
connection.onInitialize((params) => {
  serve(connection, new BrowserHost(connection), params);
  return initializeResult(params, version);
});
connection.listen();
