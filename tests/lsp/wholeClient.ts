import type { ClientCapabilities } from 'vscode-languageserver';

const dynamicRegistration = true;
const refreshSupport = true;
const markup = ['markdown' as const, 'plaintext' as const];

/** A client that can do everything, so that the server announces all that it has. */
export const WHOLE_CLIENT: ClientCapabilities = {
  window: { workDoneProgress: true, showDocument: { support: true }, showMessage: {} },
  workspace: {
    applyEdit: true,
    workspaceEdit: { documentChanges: true, resourceOperations: ['create', 'rename', 'delete'] },
    configuration: true,
    workspaceFolders: true,
    didChangeConfiguration: { dynamicRegistration },
    didChangeWatchedFiles: { dynamicRegistration },
    fileOperations: {
      didCreate: true,
      didDelete: true,
      didRename: true,
      willCreate: true,
      willDelete: true,
      willRename: true,
    },
    symbol: { resolveSupport: { properties: ['location.range'] } },
    executeCommand: {},
    codeLens: { refreshSupport },
    inlayHint: { refreshSupport },
    semanticTokens: { refreshSupport },
    diagnostics: { refreshSupport },
    foldingRange: { refreshSupport },
  },
  textDocument: {
    synchronization: { didSave: true, willSave: true, willSaveWaitUntil: true },
    publishDiagnostics: {
      relatedInformation: true,
      codeDescriptionSupport: true,
      tagSupport: { valueSet: [1, 2] },
      versionSupport: true,
    },
    diagnostic: { relatedDocumentSupport: true },
    completion: {
      completionItem: {
        snippetSupport: true,
        documentationFormat: markup,
        labelDetailsSupport: true,
        insertReplaceSupport: true,
        resolveSupport: { properties: ['documentation', 'detail', 'additionalTextEdits'] },
      },
      contextSupport: true,
    },
    hover: { contentFormat: markup },
    definition: { linkSupport: true },
    references: {},
    documentHighlight: {},
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    codeAction: {
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix', 'refactor', 'source'] } },
      isPreferredSupport: true,
      disabledSupport: true,
      dataSupport: true,
      resolveSupport: { properties: ['edit'] },
    },
    codeLens: {},
    documentLink: { tooltipSupport: true },
    formatting: {},
    rangeFormatting: { rangesSupport: true },
    onTypeFormatting: {},
    rename: { prepareSupport: true },
    foldingRange: { foldingRange: { collapsedText: true } },
    selectionRange: {},
    linkedEditingRange: {},
    callHierarchy: {},
    semanticTokens: {
      requests: { full: { delta: true }, range: true },
      tokenTypes: [],
      tokenModifiers: [],
      formats: ['relative'],
      augmentsSyntaxTokens: true,
    },
    inlayHint: { resolveSupport: { properties: ['tooltip'] } },
    signatureHelp: { signatureInformation: { documentationFormat: markup } },
  },
};
