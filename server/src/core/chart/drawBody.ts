import { el, escapeHtml, type Html } from '../sheet/htmlText';
import { barOf, stretchesOf } from './bars';
import type { Chart, ChartCell, ChartRow, Standing } from './chart';
import { cellTitle, standingWords } from './chartWords';
import { type DrawMode, ofPreview } from './drawMode';
import { beatAt, type Geometry, n, ROW } from './geometry';
import { findingSign, glyphsOf, worstOf } from './glyphs';

/** The rows with their bars, upon the bands of the phases and the lines between the steps. */
export function bodyOf(chart: Chart, geometry: Geometry, mode: DrawMode): Html[] {
  return [groundOf(chart, geometry), ...chart.rows.map((row, index) => rowOf(chart, row, index, geometry, mode))];
}

function groundOf({ phases, steps, rows }: Chart, geometry: Geometry): Html {
  const { height } = geometry;
  const bands = phases.map(({ first, count }, index) => {
    const from = geometry.steps[first]?.x ?? 0;
    const to = geometry.steps[first + count]?.x ?? geometry.end.x;
    return el('rect', {
      class: `band ${index % 2 === 0 ? 'even' : 'odd'}`,
      x: n(from),
      y: 0,
      width: n(to - from),
      height,
    });
  });
  const starts = new Set(phases.map((phase) => phase.first));
  const verticals = geometry.steps.map(({ x }, index) => {
    const isPhase = starts.has(index) || index === steps.length;
    return el('path', { class: isPhase ? 'rule phase-rule' : 'rule', d: `M${n(x)} 0V${height}` });
  });
  const temporary = rows.findIndex((row) => row.isTemporary);
  const aside =
    temporary <= 0 ? [] : [el('path', { class: 'rule phase-rule', d: `M0 ${temporary * ROW}H${n(geometry.width)}` })];
  const leftOut = steps.flatMap((step, index) => {
    const column = geometry.steps[index];
    if (!step.isLeftOut || column === undefined) return [];
    return [el('rect', { class: 'not-on-the-way', x: n(column.x), y: 0, width: n(column.width), height })];
  });
  return el('g', { class: 'ground', 'aria-hidden': 'true' }, ...bands, ...leftOut, ...verticals, ...aside);
}

function rowOf(chart: Chart, row: ChartRow, index: number, geometry: Geometry, mode: DrawMode): Html {
  const beats = chart.steps.map((step) => step.beats);
  const attributes = {
    class: 'row',
    id: `row-${row.part}`,
    role: 'row',
    'aria-rowindex': index + 2,
    'aria-label': row.name,
    transform: `translate(0 ${index * ROW})`,
    ...ofPreview(mode, { 'data-standing': standingWords(row.start) }),
  };
  return el(
    'g',
    attributes,
    el('path', { class: 'guide', d: `M0 ${ROW}H${n(geometry.width)}` }),
    ...stretchesOf(row, beats, geometry).flatMap((stretch) => barOf(stretch)),
    ...(row.cells.length === 0 ? [quietCell(row, geometry, mode)] : []),
    ...row.cells.map((cell) => cellOf(chart, row, cell, geometry, mode)),
  );
}

/** A part to which nothing happens says at the start of its row how it stands, for a row has to have a cell. */
function quietCell(row: ChartRow, { start }: Geometry, mode: DrawMode): Html {
  const standing = standingWords(row.start);
  const attributes = {
    class: 'cell',
    id: `cell-${row.part}-start`,
    role: 'gridcell',
    'aria-colindex': 2,
    ...ofPreview(mode, { tabindex: -1, 'data-standing': standing }),
  };
  const frame = { x: n(start.x + 0.5), y: 0.5, width: n(start.width - 1), height: ROW - 1 };
  return el(
    'g',
    attributes,
    el('title', {}, escapeHtml(`${row.name}, ${standing}`)),
    el('rect', { class: 'hit', ...frame }),
  );
}

function cellOf(chart: Chart, row: ChartRow, cell: ChartCell, geometry: Geometry, mode: DrawMode): Html {
  const column = geometry.steps[cell.step] ?? geometry.end;
  const beats = chart.steps[cell.step]?.beats ?? 1;
  const glyphs = cell.beats.flatMap((beat) => glyphsOf(beat, beatAt(column, beat.beat, beats).middle, ROW / 2));
  const frame = { x: n(column.x + 0.5), y: 0.5, width: n(column.width - 1), height: ROW - 1 };
  const found = cell.findings.length === 0 ? [] : [el('rect', { class: `found ${worst(cell)}`, ...frame })];
  const sign = cell.findings.length === 0 ? [] : [findingSign(worst(cell), column.x + column.width / 2, ROW / 2)];
  const attributes = {
    class: 'cell',
    id: `cell-${row.part}-${cell.step}`,
    role: 'gridcell',
    'aria-colindex': cell.step + 3,
    ...ofPreview(mode, {
      tabindex: -1,
      'data-standing': lastStanding(cell),
      'data-source-offset': cell.beats[0]?.source ?? chart.steps[cell.step]?.source,
    }),
  };
  const title = el('title', {}, escapeHtml(cellTitle(chart, row, cell)));
  return el('g', attributes, title, ...found, ...glyphs, ...sign, el('rect', { class: 'hit', ...frame }));
}

function worst({ findings }: ChartCell): 'error' | 'warning' | 'info' {
  return worstOf(findings.map((one) => one.severity));
}

function lastStanding({ beats }: ChartCell): string | undefined {
  const last: Standing | undefined = beats.at(-1)?.standing;
  return last === undefined ? undefined : standingWords(last);
}
