import type { SheetPage } from '../core/sheet/html';
import { ownMarkup } from '../core/sheet/htmlText';
import { sheetStyles } from '../core/sheet/styles';

/** A page that says something where there is no sheet to show. */
export function messagePage(title: string, text: string): string {
  const body = `<body class="preview"><main><h1>${escaped(title)}</h1><p>${escaped(text)}</p></main></body>`;
  const head = `<meta charset="utf-8"><title>${escaped(title)}</title><style>${sheetStyles}</style>`;
  return `<!DOCTYPE html>\n<html lang="en"><head>${head}</head>${body}</html>\n`;
}

/** The same in pieces, of which it has one. */
export function messagePieces(title: string, text: string): SheetPage {
  const html = ownMarkup(`<main><h1>${escaped(title)}</h1><p>${escaped(text)}</p></main>`);
  const blocks = [{ key: 'message', html }];
  return { language: 'en', bodyClass: 'preview', style: sheetStyles, blocks, sources: [] };
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
