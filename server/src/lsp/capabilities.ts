import {
  type ClientCapabilities,
  CodeActionKind,
  type DiagnosticOptions,
  FileOperationPatternKind,
  type InitializeParams,
  type InitializeResult,
  PositionEncodingKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import type { Refactor } from '../core/ide/refactors/refactor';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from '../core/ide/tokens/tokenTypes';
import { asksForFindings } from './toldAtStart';

// A client waits for this before it does anything with the server. So it stands apart from the features, and imports
// nothing that does their work: the answer is given before any of that is loaded.

export const FIX_ALL = `${CodeActionKind.SourceFixAll}.witnessmark`;

/** What an editor calls each of our refactorings. */
export const REFACTOR_KINDS: Readonly<Record<Refactor['kind'], string>> = {
  'sort-tools': `${CodeActionKind.Source}.sortTools.witnessmark`,
  extract: CodeActionKind.RefactorExtract,
  rewrite: CodeActionKind.RefactorRewrite,
};

/** Where something else can be chosen than before: behind a key, in a list or a map, in a mention, a condition, a path. */
const COMPLETION_TRIGGERS = [':', ' ', '-', '[', '{', ',', '<', '/', '=', '+'];

const FOLDERS = { filters: [{ pattern: { glob: '**', matches: FileOperationPatternKind.folder } }] };

/** The answer to the first message of a client. */
export function initializeResult(params: InitializeParams, version: string): InitializeResult {
  return { capabilities: capabilitiesFor(params), serverInfo: { name: 'Witnessmark', version } };
}

function capabilitiesFor(params: InitializeParams): ServerCapabilities {
  return {
    positionEncoding: PositionEncodingKind.UTF16,
    ...documents(params),
    ...reading,
    ...writing(params.capabilities),
  };
}

/** The texts and the folders, and what is found in them. */
function documents(params: InitializeParams): ServerCapabilities {
  return {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: { includeText: false } },
    ...(asksForFindings(params) ? { diagnosticProvider: findings } : {}),
    workspace: {
      fileOperations: { didDelete: FOLDERS, didRename: FOLDERS },
      workspaceFolders: { supported: true, changeNotifications: true },
    },
  };
}

const findings: DiagnosticOptions = {
  identifier: 'witnessmark',
  interFileDependencies: true,
  workspaceDiagnostics: true,
  workDoneProgress: true,
};

/** What is shown of a text. */
const reading: ServerCapabilities = {
  hoverProvider: true,
  definitionProvider: true,
  referencesProvider: { workDoneProgress: true },
  documentHighlightProvider: true,
  documentSymbolProvider: true,
  workspaceSymbolProvider: true,
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  documentLinkProvider: {},
  codeLensProvider: { resolveProvider: true },
  inlayHintProvider: { resolveProvider: true },
  semanticTokensProvider: {
    legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
    full: { delta: true },
    range: true,
  },
};

/** What writes for the writer. */
function writing(client: ClientCapabilities): ServerCapabilities {
  return {
    codeActionProvider: {
      codeActionKinds: [CodeActionKind.QuickFix, FIX_ALL, ...Object.values(REFACTOR_KINDS)],
      resolveProvider: true,
    },
    completionProvider: {
      triggerCharacters: COMPLETION_TRIGGERS,
      resolveProvider: true,
      completionItem: { labelDetailsSupport: true },
    },
    // A client that cannot be told beforehand that nothing can be renamed must not be told that it can be asked.
    renameProvider: asksBeforeRenaming(client) ? { prepareProvider: true, workDoneProgress: true } : true,
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n', moreTriggerCharacter: ['-', ':'] },
  };
}

function asksBeforeRenaming({ textDocument }: ClientCapabilities): boolean {
  return textDocument?.rename?.prepareSupport === true;
}
