import { el, escapeHtml, type Html } from '../sheet/htmlText';
import type { Chart, ChartPhase, ChartStep } from './chart';
import { headTitle } from './chartWords';
import { type Column, type Geometry, HEAD, HEAD_HEIGHT, LEAN, n } from './geometry';
import { findingSign, ring, worstOf } from './glyphs';
import { shortened } from './shortened';

const LONGEST_TITLE = 168;
const PHASES = HEAD.titles;
const NUMBERS = PHASES + HEAD.phases;
const MARKS = NUMBERS + HEAD.numbers;

/** The head of the chart: titles that lean, the band of each phase, numbers, and what is found or measured in a step. */
export function headOf(chart: Chart, geometry: Geometry): Html {
  return el(
    'g',
    { class: 'head', role: 'row', 'aria-rowindex': 1 },
    ...chart.phases.map((phase, index) => phaseBand(phase, index, geometry)),
    edgeHead('As received', 'start', 2, geometry.start),
    ...chart.steps.map((step, index) => stepHead(step, index, geometry)),
    edgeHead('At the end', 'end', chart.steps.length + 3, geometry.end),
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

function stepHead(step: ChartStep, index: number, { steps }: Geometry): Html {
  const column = steps[index] ?? { x: 0, width: 0 };
  const middle = column.x + column.width / 2;
  const found = step.findings;
  const signs = found.length === 0 ? [] : [findingSign(worstOf(found.map((one) => one.severity)), middle, MARKS + 7.5)];
  const rings = found.length === 0 && step.examined.length > 0 ? [ring(middle, MARKS + 8)] : [];
  const attributes = {
    class: `step-head${step.isLeftOut ? ' left-out' : ''}`,
    id: `head-${step.id}`,
    role: 'columnheader',
    tabindex: -1,
    'aria-colindex': index + 3,
    'data-source-offset': step.source,
  };
  return el(
    'g',
    attributes,
    el('title', {}, escapeHtml(headTitle(step))),
    leaningTitle(step.title, column),
    el('text', { class: 'number', x: n(middle), y: NUMBERS + 12.5 }, escapeHtml(String(step.number))),
    ...signs,
    ...rings,
    el('rect', {
      class: 'hit',
      x: n(column.x),
      y: PHASES + HEAD.phases,
      width: n(column.width),
      height: HEAD_HEIGHT - PHASES - HEAD.phases,
    }),
  );
}

function edgeHead(words: string, id: string, colindex: number, column: Column): Html {
  const attributes = {
    class: 'step-head edge',
    id: `head-${id}`,
    role: 'columnheader',
    tabindex: -1,
    'aria-colindex': colindex,
  };
  return el('g', attributes, el('title', {}, escapeHtml(words)), leaningTitle(words, column));
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
