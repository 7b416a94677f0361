import { bodyBlocks } from './htmlBlocks';
import { memoFor } from './htmlMemo';
import { blockHtml, type HtmlBlock } from './htmlPieces';
import { el, escapeHtml, type Html, type HtmlContext, type HtmlOptions, ownMarkup } from './htmlText';
import { labelsFor } from './labels';
import type { Sheet } from './sheet';
import { pageRules, sheetStyles } from './styles';

export type { HtmlOptions } from './htmlText';

/**
 * The sheet as one HTML document that needs nothing beside it: style inside, pictures as data. All text is escaped,
 * and no script runs unless the preview names one.
 */
export function sheetToHtml(sheet: Sheet, options: HtmlOptions): string {
  const context = contextFor(sheet, options);
  const body = el('body', { class: bodyClass(context) }, ...bodyBlocks(context).map(blockHtml), script(options));
  return `<!DOCTYPE html>\n${el('html', { lang: sheet.language }, headHtml(context), body)}\n`;
}

/** The same page for a preview that is patched: its pieces, what they look like, and where each step stands. */
export interface SheetPage {
  readonly language: string;
  readonly bodyClass: string;
  readonly style: string;
  readonly blocks: readonly HtmlBlock[];
  /** Where each step begins in the source, in UTF-16 code units, in the order of the sheet. */
  readonly sources: readonly number[];
}

export function sheetToPage(sheet: Sheet): SheetPage {
  const options: HtmlOptions = { mode: 'preview', sources: 'apart' };
  const context = contextFor(sheet, options);
  return {
    language: sheet.language,
    bodyClass: bodyClass(context),
    style: styleOf(sheet),
    blocks: bodyBlocks(context),
    sources: sheet.source?.offsets ?? [],
  };
}

function contextFor(sheet: Sheet, options: HtmlOptions): HtmlContext {
  return { sheet, labels: labelsFor(sheet.language), options, memo: memoFor(sheet.language, options) };
}

function bodyClass({ sheet, options }: HtmlContext): string {
  return `${options.mode} ${sheet.paper}`;
}

function styleOf(sheet: Sheet): string {
  return `${sheetStyles}${pageRules(sheet)}`;
}

function headHtml({ sheet, options }: HtmlContext): Html {
  const { document, title } = sheet.header;
  return el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: securityPolicy(options) }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('meta', { name: 'color-scheme', content: 'light dark' }),
    el('title', {}, escapeHtml(`${document} ${title}`)),
    el('style', { nonce: options.cspNonce }, ownMarkup(styleOf(sheet))),
  );
}

function securityPolicy({ cspNonce, figureUrl, previewScript }: HtmlOptions): string {
  const source = cspNonce === undefined ? "'unsafe-inline'" : `'nonce-${cspNonce}'`;
  const images = figureUrl === undefined ? 'data:' : 'data: blob: https:';
  const scripts = previewScript !== undefined && cspNonce !== undefined ? `; script-src ${source}` : '';
  return `default-src 'none'; style-src ${source}; img-src ${images}${scripts}`;
}

function script({ cspNonce, previewScript }: HtmlOptions): Html | undefined {
  return previewScript === undefined ? undefined : el('script', { nonce: cspNonce, src: previewScript });
}
