import type { ChartHtmlResult, SheetPagesResult, SheetPatchResult } from '../../server/src/lsp/protocol';

/** What a panel shows: the step sheet as it flows, its printed pages, or the walk as a chart of parts against steps. */
export type View = 'sheet' | 'pages' | 'walk';

export function isView(value: unknown): value is View {
  return value === 'sheet' || value === 'pages' || value === 'walk';
}

/** What the extension says to the page of a sheet. */
export type ToPage =
  | ({ readonly is: 'sheet' } & SheetPatchResult)
  | ({ readonly is: 'pages' } & SheetPagesResult)
  | ({ readonly is: 'walk' } & ChartHtmlResult)
  /** Where the caret stands in the source, in UTF-16 code units. */
  | { readonly is: 'caret'; readonly offset: number };

/** What the page says back. */
export type FromPage =
  /** It has nothing yet, or cannot go on from what it has. */
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
