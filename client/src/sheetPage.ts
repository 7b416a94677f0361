import * as vscode from 'vscode';
import type { View } from './panelMessages';
import { SHEET_PAGE_SCRIPT } from './sheetPageScript';

const VIEWS: readonly View[] = ['sheet', 'pages', 'walk'];

/** The page that a sheet or a walk is put into. Nothing runs in it but its own script, and nothing is fetched. */
export function sheetPage(nonce: string, uri: string, view: View): string {
  const policy = `default-src 'none'; img-src data:; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'`;
  const words = toolbarWords();
  return `<!DOCTYPE html>
<html lang="${vscode.env.language}" data-uri="${uri.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}" data-view="${view}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${words.sheetTitle}</title>
<style nonce="${nonce}">${TOOLBAR_STYLES}</style>
<style nonce="${nonce}" id="sheet-style"></style>
<style nonce="${nonce}" id="walk-style"></style>
</head>
<body>
<a id="skip" href="#${view}">${words.skip}</a>
<section id="controls" aria-label="${words.sheetTitle}">
<div id="toolbar" role="toolbar" aria-label="${words.sheetTitle}">
<span class="views" role="group" aria-label="${words.shown}">
${VIEWS.map((one) => `<button id="show-${one}" type="button" aria-pressed="${view === one}">${words[one]}</button>`).join('')}
</span>
<label for="build">${words.build}</label> <select id="build"></select>
<button id="print" type="button">${words.print}</button>
<span id="errors" data-none="${words.noError}" data-one="${words.oneError}" data-many="${words.manyErrors}"></span>
</div>
<p id="announced" role="status" data-words="${words.updated}"></p>
</section>
<div id="sheet" tabindex="-1"></div>
<div id="pages" tabindex="-1" hidden data-title="${words.printedPages}" data-page="${words.pageOf}" data-step="${words.stepCalled}"></div>
<div id="walk" tabindex="-1" lang="en" hidden></div>
<p id="readout" aria-hidden="true"></p>
<script nonce="${nonce}">${SHEET_PAGE_SCRIPT}</script>
</body>
</html>
`;
}

/** The words of the toolbar, as markup. */
function toolbarWords() {
  const words = {
    sheetTitle: vscode.l10n.t('Step sheet'),
    shown: vscode.l10n.t('What is shown'),
    skip: vscode.l10n.t('Skip the tools'),
    sheet: vscode.l10n.t('Sheet'),
    pages: vscode.l10n.t('Pages'),
    walk: vscode.l10n.t('Walk'),
    build: vscode.l10n.t('Build'),
    print: vscode.l10n.t('Print to PDF'),
    printedPages: vscode.l10n.t('Printed pages'),
    // The page puts the numbers and names in, so the places for them have to stay.
    pageOf: vscode.l10n.t('Page {0} of {1}', '{0}', '{1}'),
    stepCalled: vscode.l10n.t('Step {0}: {1}', '{0}', '{1}'),
    updated: vscode.l10n.t('The sheet is up to date. {0}', '{0}'),
    noError: vscode.l10n.t('No error stands'),
    oneError: vscode.l10n.t('1 error stands'),
    manyErrors: vscode.l10n.t('{0} errors stand', '{0}'),
  };
  const markup = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
  return Object.fromEntries(Object.entries(words).map(([name, text]) => [name, markup(text)])) as typeof words;
}

const TOOLBAR_STYLES = `
#toolbar { display: flex; flex-wrap: wrap; align-items: center; gap: .4rem .6rem; padding-bottom: .8rem; margin-bottom: 1rem;
  border-bottom: 1px solid var(--vscode-panel-border, transparent); font: var(--vscode-font-size, 13px) var(--vscode-font-family, sans-serif); }
#toolbar select, #toolbar button { font: inherit; padding: .2rem .5rem; border: 1px solid var(--vscode-contrastBorder, var(--vscode-dropdown-border, transparent)); }
#toolbar select { max-width: min(22rem, 100%); color: var(--vscode-dropdown-foreground); background: var(--vscode-dropdown-background); }
#toolbar button { color: var(--vscode-button-foreground); background: var(--vscode-button-background); cursor: pointer; }
#toolbar .views { display: inline-flex; } #toolbar .views button + button { margin-inline-start: -1px; }
#toolbar .views button { color: var(--vscode-button-secondaryForeground, var(--vscode-foreground)); background: var(--vscode-button-secondaryBackground, transparent); border: 1px solid var(--vscode-contrastBorder, var(--vscode-panel-border, transparent)); }
#toolbar .views button[aria-pressed="true"] { font-weight: 700; color: var(--vscode-button-foreground); background: var(--vscode-button-background); text-decoration: underline; text-underline-offset: .2em; }
#skip:not(:focus) { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
#skip { display: inline-block; padding: .2rem .5rem; color: var(--vscode-button-foreground); background: var(--vscode-button-background); }
#announced { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); }
#sheet:focus, #pages:focus, #walk:focus { outline: none; }
#pages h1 { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); }
.printed-page { position: relative; margin: 0 auto 1.2rem; border: 1px solid var(--vscode-contrastBorder, var(--vscode-panel-border, #80808080)); background: #ffffff; }
.printed-page img { display: block; width: 100%; height: auto; margin: 0; padding: 0; border: 0; max-height: none; }
.mark { position: absolute; inset-inline: 2%; height: 2.2rem; border: 0; padding: 0; background: transparent; cursor: pointer; scroll-margin-top: 1rem; }
.mark:hover { outline: 1px dashed #16191d; } .mark:focus-visible { outline: 3px solid #0b4f9e; }
.mark[aria-current] { border-inline-start: .3rem solid #16191d; }
#walk h1 { font-size: 1.05rem; } #walk p { margin-bottom: .4rem; font-size: 12px; } #walk .walk-frame { max-height: calc(100vh - 5rem); }
#readout { position: sticky; bottom: 0; margin: 0; padding: .3rem .2rem; min-height: 1.2em; background: var(--vscode-editor-background); border-top: 1px solid var(--vscode-panel-border, transparent); font: var(--vscode-font-size, 13px) var(--vscode-font-family, sans-serif); }
#toolbar [hidden] { display: none; } #readout:empty { display: none; }
#toolbar button:hover { background: var(--vscode-button-hoverBackground); }
:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: 2px; }
[data-source-offset], .step { cursor: pointer; }
#sheet [aria-current="step"] { position: relative; }
#sheet [aria-current="step"]::before { content: ''; position: absolute; inset: 0 auto 0 -.75rem; width: .25rem; background: var(--vscode-focusBorder); }
`;
