import type { SheetHtmlResult } from '../../server/src/lsp/protocol';

/** What a panel shows: the step sheet, or the walk as a chart of parts against steps. */
export type View = 'sheet' | 'walk';

export function isView(value: unknown): value is View {
  return value === 'sheet' || value === 'walk';
}

/** What the extension says to the page of a sheet. */
export type ToPage =
  | ({ readonly is: 'page'; readonly view: View } & SheetHtmlResult)
  /** Where the caret stands in the source, in UTF-16 code units. */
  | { readonly is: 'caret'; readonly offset: number };

/** What the page says back. */
export type FromPage =
  | { readonly is: 'ready' }
  | { readonly is: 'source'; readonly offset: number }
  | { readonly is: 'build'; readonly id: string }
  | { readonly is: 'view'; readonly view: View }
  | { readonly is: 'print' };

/** A message of the page, or undefined for anything else that may arrive. */
export function fromPage(message: unknown): FromPage | undefined {
  if (typeof message !== 'object' || message === null || !('is' in message)) return undefined;
  const { is } = message;
  if (is === 'ready' || is === 'print') return { is };
  if (is === 'source' && 'offset' in message && Number.isSafeInteger(message.offset)) {
    return { is, offset: message.offset as number };
  }
  if (is === 'view' && 'view' in message && isView(message.view)) return { is, view: message.view };
  if (is === 'build' && 'id' in message && typeof message.id === 'string') return { is, id: message.id };
  return undefined;
}
