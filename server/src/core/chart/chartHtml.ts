import { el, escapeHtml, type Html, ownMarkup } from '../sheet/htmlText';
import type { Chart } from './chart';
import { chartPageStyles } from './chartStyles';
import { assumedWords, cellWords, findingWords, headingWords, headTitle, standingWords } from './chartWords';
import { bodyOf } from './drawBody';
import { headOf, headWidth } from './drawHead';
import type { DrawMode } from './drawMode';
import { namesOf } from './drawNames';
import { type Geometry, geometryOf, HEAD_HEIGHT, NAMES, n } from './geometry';
import { legendHtml } from './legend';
import { patterns } from './patterns';

/**
 * The chart as a page that needs nothing beside it and runs nothing. A file also tells the walk in words, for paper and
 * for whoever cannot see it. Its bytes depend on the arguments alone.
 */
export function chartToHtml(chart: Chart, { mode }: { readonly mode: DrawMode }): string {
  const geometry = geometryOf(chart);
  const main = el(
    'main',
    { class: 'walk' },
    el('h1', {}, escapeHtml(headingWords(chart))),
    ...said('assumed', assumedWords(chart)),
    ...elsewhereOf(chart),
    frameOf(chart, geometry, mode),
    legendHtml(),
    mode === 'file' ? inWords(chart) : undefined,
  );
  const page = el('html', { lang: 'en' }, headElement(chart, geometry), el('body', { class: 'walk walk-page' }, main));
  return `<!DOCTYPE html>\n${page}\n`;
}

function headElement(chart: Chart, geometry: Geometry): Html {
  const policy = "default-src 'none'; style-src 'unsafe-inline'";
  // On paper names and steps share the width as they do on the screen, so that the rows still meet.
  const columns = `.walk-frame { grid-template-columns: ${NAMES}px auto; scroll-padding: ${HEAD_HEIGHT + 4}px 24px 24px ${NAMES + 4}px; }
@media print { .walk-frame { grid-template-columns: minmax(0, ${NAMES}fr) minmax(0, ${n(headWidth(geometry))}fr); } }
`;
  return el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('meta', { name: 'color-scheme', content: 'light dark' }),
    el('title', {}, escapeHtml(headingWords(chart))),
    el('style', {}, ownMarkup(`:root { color-scheme: light dark; }${chartPageStyles}${columns}`)),
  );
}

function frameOf(chart: Chart, geometry: Geometry, mode: DrawMode): Html {
  const width = headWidth(geometry);
  const { height } = geometry;
  const attributes = {
    class: 'walk-frame',
    role: 'grid',
    tabindex: 0,
    'aria-label': headingWords(chart),
    'aria-rowcount': chart.rows.length + 1,
    'aria-colcount': chart.steps.length + 3,
  };
  return el(
    'div',
    attributes,
    el('div', { class: 'walk-corner', 'aria-hidden': 'true' }, escapeHtml('Parts against steps')),
    pane('walk-head', width, HEAD_HEIGHT, 'rowgroup', [headOf(chart, geometry, mode)]),
    pane('walk-names', NAMES, height, undefined, namesOf(chart)),
    pane('walk-body', width, height, 'rowgroup', [patterns(), ...bodyOf(chart, geometry, mode)]),
  );
}

/** The names are read out with every cell, so the column of them is for the eye alone. */
function pane(name: string, width: number, height: number, role: string | undefined, children: readonly Html[]): Html {
  const size = { width: n(width), height, viewBox: `0 0 ${n(width)} ${height}` };
  const hidden = role === undefined ? 'true' : undefined;
  return el('svg', { class: name, id: name, role, 'aria-hidden': hidden, ...size }, children);
}

function said(name: string, words: string): Html[] {
  return words === '' ? [] : [el('p', { class: name }, escapeHtml(words))];
}

function elsewhereOf({ elsewhere }: Chart): Html[] {
  if (elsewhere.length === 0) return [];
  return [el('ul', { class: 'findings' }, ...elsewhere.map((one) => el('li', {}, escapeHtml(findingWords(one)))))];
}

/** The same in words: how each part begins, and what happens to it step by step. */
function inWords(chart: Chart): Html {
  const starts = chart.rows.map((row) => el('dd', {}, escapeHtml(`${row.name}: ${standingWords(row.start)}`)));
  const steps = [...chart.steps.map(headTitle), 'At the end'].flatMap((title, index) => {
    const happened = chart.rows.flatMap(({ name, cells }) => {
      const cell = cells.find((one) => one.step === index);
      return cell === undefined ? [] : [el('dd', {}, escapeHtml(`${name}: ${cellWords(cell)}`))];
    });
    return happened.length === 0 ? [] : [el('dt', {}, escapeHtml(title)), ...happened];
  });
  const list = el('dl', {}, el('dt', {}, escapeHtml('As received')), ...starts, ...steps);
  return el('details', {}, el('summary', {}, escapeHtml('The walk in words')), list);
}
