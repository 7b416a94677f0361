import { el, escapeHtml, type Html } from '../sheet/htmlText';
import type { Chart, ChartPhase, ChartStep } from './chart';
import { headTitle, stepWords } from './chartWords';
import { type DrawMode, ofPreview } from './drawMode';
import { type Column, type Geometry, HEAD, HEAD_HEIGHT, LEAN, n } from './geometry';
import { findingSign, ring, worstOf } from './glyphs';
import { shortened } from './shortened';

const LONGEST_TITLE = 168;
const PHASES = HEAD.titles;
const NUMBERS = PHASES + HEAD.phases;
const MARKS = NUMBERS + HEAD.numbers;

/** The head of the chart: titles that lean, the band of each phase, numbers, and what is found or measured in a step. */
export function headOf(chart: Chart, geometry: Geometry, mode: DrawMode): Html {
  return el(
    'g',
    { class: 'head', role: 'row', 'aria-rowindex': 1 },
    ...chart.phases.map((phase, index) => phaseBand(phase, index, geometry)),
    edgeHead('As received', 'start', 2, geometry.start, mode),
    ...chart.steps.map((step, index) => stepHead(step, index, geometry, mode)),
    edgeHead('At the end', 'end', chart.steps.length + 3, geometry.end, mode),
  );
}

function phaseBand({ title, first, count }: ChartPhase, index: number, { steps }: Geometry): Html {
  const x = steps[first]?.x ?? 0;
  const last = steps[first + count - 1];
  const width = (last === undefined ? x : last.x + last.width) - x;
  const text = shortened(title, width - 8, 11);
  return el(
    'g',
    { class: `phase ${index % 2 === 0 ? 'even' : 'odd'}` },
    el('title', {}, escapeHtml(title)),
    el('rect', { x: n(x), y: PHASES, width: n(width), height: HEAD.phases }),
    el('text', { class: 'phase-title', x: n(x + 4), y: PHASES + 13.5 }, escapeHtml(text)),
  );
}

function stepHead(step: ChartStep, index: number, { steps }: Geometry, mode: DrawMode): Html {
  const column = steps[index] ?? { x: 0, width: 0 };
  const middle = column.x + column.width / 2;
  const found = step.findings;
  const signs = found.length === 0 ? [] : [findingSign(worstOf(found.map((one) => one.severity)), middle, MARKS + 7.5)];
  const rings = found.length === 0 && step.examined.length > 0 ? [ring(middle, MARKS + 8)] : [];
  const attributes = {
    class: `step-head${step.isLeftOut ? ' left-out' : ''}`,
    id: `head-${step.id}`,
    role: 'columnheader',
    'aria-colindex': index + 3,
    ...ofPreview(mode, { tabindex: -1, 'data-words': stepWords(step), 'data-source-offset': step.source }),
  };
  return el(
    'g',
    attributes,
    el('title', {}, escapeHtml(headTitle(step))),
    leaningTitle(step.title, column),
    el('text', { class: 'number', x: n(middle), y: NUMBERS + 12.5 }, escapeHtml(String(step.number))),
    ...signs,
    ...rings,
    hitOf(column),
  );
}

/** What the pointer meets and the cursor of the keys is drawn on. */
function hitOf({ x, width }: Column): Html {
  return el('rect', { class: 'hit', x: n(x), y: NUMBERS, width: n(width), height: HEAD_HEIGHT - NUMBERS });
}

function edgeHead(words: string, id: string, colindex: number, column: Column, mode: DrawMode): Html {
  const attributes = {
    class: 'step-head edge',
    id: `head-${id}`,
    role: 'columnheader',
    'aria-colindex': colindex,
    ...ofPreview(mode, { tabindex: -1, 'data-words': words }),
  };
  return el('g', attributes, el('title', {}, escapeHtml(words)), leaningTitle(words, column), hitOf(column));
}

function leaningTitle(title: string, { x, width }: Column): Html {
  const middle = x + width / 2;
  const text = shortened(title, LONGEST_TITLE, 11);
  return el(
    'text',
    { class: 'leaning', transform: `translate(${n(middle + 3)} ${PHASES - 5}) rotate(-60)` },
    escapeHtml(text),
  );
}

/** How wide the head is drawn: the last titles lean out over the end of the rows. */
export function headWidth({ width }: Geometry): number {
  return width + LEAN;
}
