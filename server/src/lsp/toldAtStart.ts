import type { InitializeParams } from 'vscode-languageserver';

/**
 * Whether a client asks for findings instead of being sent them. One that can do both may prefer to be sent them, by
 * `{ diagnostics: 'push' }` among its first options.
 */
export function asksForFindings({ capabilities, initializationOptions }: InitializeParams): boolean {
  const prefersPush = initializationOptions?.diagnostics === 'push';
  return capabilities?.textDocument?.diagnostic !== undefined && !prefersPush;
}

/** Whether the client has the command that shows the places which a lens counts. */
export function showsUses({ initializationOptions }: InitializeParams): boolean {
  return initializationOptions?.showUses === true;
}

/** The folders that a client has opened, as it writes them. */
export function foldersOf({ workspaceFolders, rootUri }: InitializeParams): readonly string[] {
  return workspaceFolders?.map((folder) => folder.uri) ?? (rootUri === null || rootUri === undefined ? [] : [rootUri]);
}
