import { el, escapeHtml, type Html, ownMarkup } from '../sheet/htmlText';
import type { Chart } from './chart';
import { drawingStyles } from './chartStyles';
import { assumedWords, findingWords, headingWords } from './chartWords';
import { bodyOf } from './drawBody';
import { headOf, headWidth } from './drawHead';
import { namesOf } from './drawNames';
import { geometryOf, HEAD_HEIGHT, NAMES, ROW } from './geometry';
import { legendSvg } from './legend';
import { patterns } from './patterns';
import { shortened } from './shortened';

const MARGIN = 16;
const LINE = 18;

/** The chart as one drawing that needs nothing beside it, legend included. Its bytes depend on the chart alone. */
export function chartToSvg(chart: Chart): string {
  const geometry = geometryOf(chart);
  const width = Math.max(700, NAMES + headWidth(geometry)) + 2 * MARGIN;
  const lines = headingOf(chart, width - 2 * MARGIN);
  const top = MARGIN + lines.length * LINE;
  const body = top + HEAD_HEIGHT;
  const below = body + geometry.height + 2 * ROW;
  const legend = legendSvg(width - 2 * MARGIN);
  const height = below + legend.height + MARGIN;
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    class: 'walk',
    width: Math.ceil(width),
    height,
    viewBox: `0 0 ${Math.ceil(width)} ${height}`,
    role: 'img',
    'aria-label': headingWords(chart),
  };
  const svg = el(
    'svg',
    attributes,
    el('style', {}, ownMarkup(`${drawingStyles}.walk text.heading { font-size: 15px; font-weight: 600; }`)),
    patterns(),
    el('rect', { class: 'sheet-of-paper', width: Math.ceil(width), height, fill: 'var(--paper)' }),
    ...lines,
    placed(MARGIN + NAMES, top, headOf(chart, geometry, 'file')),
    placed(MARGIN, body, ...namesOf(chart)),
    placed(MARGIN + NAMES, body, ...bodyOf(chart, geometry, 'file')),
    placed(MARGIN, below, legend.html),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}

function placed(x: number, y: number, ...children: Html[]): Html {
  return el('g', { transform: `translate(${x} ${y})` }, ...children);
}

function headingOf(chart: Chart, width: number): Html[] {
  const said = [assumedWords(chart), ...chart.elsewhere.map(findingWords)].filter((words) => words !== '');
  return [headingWords(chart), ...said].map((words, index) => {
    const attributes = { class: index === 0 ? 'heading' : 'said', x: MARGIN, y: MARGIN + 10 + index * LINE };
    const title = el('title', {}, escapeHtml(words));
    return el('text', attributes, title, escapeHtml(shortened(words, width, index === 0 ? 15 : 12)));
  });
}
