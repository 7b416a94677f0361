import type { HtmlGroup, HtmlPiece } from './htmlPieces';
import { el, type Html } from './htmlText';

/** A table of which each row is a piece: a long one is not sent again for a row. */
export function tableBlock(name: string, key: string, heads: readonly Html[], rows: readonly HtmlPiece[]): HtmlGroup {
  const head = { key: `${key} head`, html: el('thead', {}, el('tr', {}, ...heads)) };
  const body: HtmlGroup = { key: `${key} body`, element: 'tbody', attributes: {}, parts: rows };
  const table: HtmlGroup = { key: `${key} table`, element: 'table', attributes: { class: name }, parts: [head, body] };
  // What may be wider than the page can be moved by keys.
  return { key, element: 'div', attributes: { class: 'table-frame', tabindex: '0' }, parts: [table] };
}
