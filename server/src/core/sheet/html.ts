import { backHtml, footerHtml } from './htmlBack';
import { frontHtml, headerHtml } from './htmlFront';
import { findingsHtml, phasesHtml } from './htmlSteps';
import { el, escapeHtml, type Html, type HtmlContext, type HtmlOptions, ownMarkup } from './htmlText';
import { labelsFor } from './labels';
import type { Sheet } from './sheet';
import { sheetStyles } from './styles';

export type { HtmlOptions } from './htmlText';

/**
 * The sheet as one HTML document that needs nothing beside it: style inside, pictures as data. All text is escaped,
 * and no script runs unless the preview names one.
 */
export function sheetToHtml(sheet: Sheet, options: HtmlOptions): string {
  const context: HtmlContext = { sheet, labels: labelsFor(sheet.language), options };
  const preview = options.mode === 'preview';
  const main = el(
    'main',
    {},
    preview ? findingsHtml(sheet.findings, context) : undefined,
    ...frontHtml(context),
    ...phasesHtml(context),
    ...backHtml(context),
  );
  const body = el(
    'body',
    { class: `${options.mode} ${sheet.paper}` },
    headerHtml(context),
    main,
    footerHtml(context),
    script(options),
  );
  return `<!DOCTYPE html>\n${el('html', { lang: sheet.language }, headHtml(context), body)}\n`;
}

function headHtml({ sheet, options }: HtmlContext): Html {
  const { document, title } = sheet.header;
  const style = `${sheetStyles}@page { size: ${sheet.paper === 'a4' ? 'A4' : 'letter'}; margin: 15mm; }\n`;
  return el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: securityPolicy(options) }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('meta', { name: 'color-scheme', content: 'light dark' }),
    el('title', {}, escapeHtml(`${document} ${title}`)),
    el('style', { nonce: options.cspNonce }, ownMarkup(style)),
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
