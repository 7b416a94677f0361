import type { CancellationToken } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import { symbolsOf, type WorkspaceSymbol } from '../core/ide/workspaceSymbols';
import { documentKindOf } from '../core/syntax/documentKind';
import { readDocument } from '../core/syntax/readDocument';
import { ReadingMemo } from '../core/syntax/readingMemo';
import { LineIndex, type LinePosition } from '../core/text/lineIndex';
import { throwIfCancelled } from './cancelled';
import { digestOf } from './digest';
import { type FolderText, folderTexts } from './folderTexts';
import type { Session } from './session';

/** A symbol with its place as the protocol counts it, since the text is not kept. */
export interface PlacedSymbol extends WorkspaceSymbol {
  readonly start: LinePosition;
  readonly end: LinePosition;
}

interface Remembered {
  readonly digest: string;
  readonly symbols: readonly PlacedSymbol[];
}

const remembered = new WeakMap<Session, Map<Uri, Remembered>>();

/**
 * The symbols of all documents that are open or in the folders. Each letter that is typed asks again, so the symbols of
 * a text are remembered, and the text itself is told by its digest alone.
 */
export async function folderSymbols(session: Session, token: CancellationToken): Promise<PlacedSymbol[]> {
  const known = remembered.get(session) ?? new Map<Uri, Remembered>();
  remembered.set(session, known);
  const found: PlacedSymbol[] = [];
  const seen = new Set<Uri>();
  for await (const one of folderTexts(session)) {
    throwIfCancelled(token);
    seen.add(one.uri);
    found.push(...symbolsIn(one, known));
  }
  for (const uri of known.keys()) if (!seen.has(uri)) known.delete(uri);
  return found;
}

function symbolsIn(one: FolderText, known: Map<Uri, Remembered>): readonly PlacedSymbol[] {
  const digest = digestOf(one.text);
  const before = known.get(one.uri);
  if (before?.digest === digest) return before.symbols;
  const symbols = placedSymbols(one);
  known.set(one.uri, { digest, symbols });
  return symbols;
}

function placedSymbols({ uri, text }: FolderText): PlacedSymbol[] {
  const kind = documentKindOf(uri);
  if (kind === undefined) return [];
  const lines = new LineIndex(text);
  return symbolsOf(readDocument(uri, kind, text, new ReadingMemo())).map((symbol) => ({
    ...symbol,
    start: lines.position(symbol.span.start),
    end: lines.position(symbol.span.end),
  }));
}
