import { type DocumentSymbol, type SymbolInformation, SymbolKind } from 'vscode-languageserver';
import { outlineOf } from '../../core/ide/outline';
import type { OutlineEntry, OutlineKind } from '../../core/ide/outlineEntry';
import { findSymbols, symbolLabel } from '../../core/ide/workspaceSymbols';
import type { LineIndex } from '../../core/text/lineIndex';
import { linesOf, toRange } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import { folderSymbols } from '../folderSymbols';
import type { Session } from '../session';

/** More than these nobody reads; who finds too many types another letter. */
const MOST_FOUND = 250;

/** The contents of a document, and everything with an id in all of them. */
export const symbols: Feature = {
  register(connection, session) {
    connection.onDocumentSymbol(({ textDocument }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const { document } = current;
        const symbolsHere = outlineOf(document).map((entry) => toSymbol(linesOf(document), entry));
        return takesTrees(session) ? symbolsHere : flattened(symbolsHere, textDocument.uri);
      }),
    );
    connection.onWorkspaceSymbol(({ query }, token) =>
      session.answer(token, async () => {
        const found = findSymbols(await folderSymbols(session, token), query, MOST_FOUND);
        return found.map((symbol) => ({
          name: symbolLabel(symbol),
          kind: KINDS[symbol.kind],
          containerName: symbol.container,
          location: { uri: session.clientUriOf(symbol.uri), range: { start: symbol.start, end: symbol.end } },
        }));
      }),
    );
  },
};

const KINDS: Readonly<Record<OutlineKind | 'document', SymbolKind>> = {
  document: SymbolKind.File,
  group: SymbolKind.Package,
  phase: SymbolKind.Module,
  step: SymbolKind.Function,
  part: SymbolKind.Object,
  tool: SymbolKind.Interface,
  consumable: SymbolKind.Field,
  limit: SymbolKind.Number,
  reading: SymbolKind.Variable,
  check: SymbolKind.Boolean,
  figure: SymbolKind.File,
  variant: SymbolKind.EnumMember,
  option: SymbolKind.EnumMember,
  outcome: SymbolKind.Enum,
  assembly: SymbolKind.Class,
  'balance-group': SymbolKind.Array,
  dimension: SymbolKind.Constant,
  'kit-line': SymbolKind.Key,
  concession: SymbolKind.Event,
  setting: SymbolKind.Property,
};

function takesTrees({ client }: Session): boolean {
  return client.textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true;
}

function toSymbol(lines: LineIndex, entry: OutlineEntry): DocumentSymbol {
  return {
    name: entry.label,
    ...(entry.detail === '' ? {} : { detail: entry.detail }),
    kind: KINDS[entry.kind],
    range: toRange(lines, entry.span),
    selectionRange: toRange(lines, entry.labelSpan),
    children: entry.children.map((child) => toSymbol(lines, child)),
  };
}

/** The same as a plain list, for a client that shows no tree. */
function flattened(symbolsHere: readonly DocumentSymbol[], uri: string, containerName = ''): SymbolInformation[] {
  return symbolsHere.flatMap(({ name, kind, range, children = [] }) => [
    { name, kind, location: { uri, range }, ...(containerName === '' ? {} : { containerName }) },
    ...flattened(children, uri, name),
  ]);
}
