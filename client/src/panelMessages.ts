import type { SheetHtmlResult } from '../../server/src/lsp/protocol';

/** What the extension says to the page of a sheet. */
export type ToPage =
  | ({ readonly is: 'sheet' } & SheetHtmlResult)
  /** Where the caret stands in the source, in UTF-16 code units. */
  | { readonly is: 'caret'; readonly offset: number };

/** What the page says back. */
export type FromPage =
  | { readonly is: 'ready' }
  | { readonly is: 'source'; readonly offset: number }
  | { readonly is: 'build'; readonly id: string }
  | { readonly is: 'print' };

/** A message of the page, or undefined for anything else that may arrive. */
export function fromPage(message: unknown): FromPage | undefined {
  if (typeof message !== 'object' || message === null || !('is' in message)) return undefined;
  const { is } = message;
  if (is === 'ready' || is === 'print') return { is };
  if (is === 'source' && 'offset' in message && Number.isSafeInteger(message.offset)) {
    return { is, offset: message.offset as number };
  }
  if (is === 'build' && 'id' in message && typeof message.id === 'string') return { is, id: message.id };
  return undefined;
}
