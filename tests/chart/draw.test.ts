import { describe, expect, test } from 'vitest';
import type { Chart } from '../../server/src/core/chart/chart';
import { chartToHtml } from '../../server/src/core/chart/chartHtml';
import { chartToSvg } from '../../server/src/core/chart/chartSvg';
import { bodyOf } from '../../server/src/core/chart/drawBody';
import { headOf } from '../../server/src/core/chart/drawHead';
import { geometryOf } from '../../server/src/core/chart/geometry';
import { shortened } from '../../server/src/core/chart/shortened';
import { beat, cell, row, SMALL_CHART, standing, step } from './fixtures/smallChart';

/** Markup with one element to a line, to be read in a snapshot. */
function inLines(markup: string): string {
  return markup.replaceAll(/></g, '>\n<');
}

function drawn(kind: Parameters<typeof standing>[0]): string {
  const chart: Chart = { ...SMALL_CHART, rows: [row('nut', standing(kind), [])] };
  return bodyOf(chart, geometryOf(chart), 'preview').join('').replaceAll(/nut/g, '');
}

describe('the drawing of a small chart', () => {
  test('is this', () => {
    const geometry = geometryOf(SMALL_CHART);
    expect(inLines(headOf(SMALL_CHART, geometry, 'preview'))).toMatchSnapshot('head');
    expect(inLines(bodyOf(SMALL_CHART, geometry, 'preview').slice(0, 3).join(''))).toMatchSnapshot(
      'ground and two rows',
    );
  });

  test('is the same, byte for byte, when it is drawn again', () => {
    const again = structuredClone(SMALL_CHART);
    expect(chartToSvg(again)).toBe(chartToSvg(SMALL_CHART));
    expect(chartToHtml(again, { mode: 'file' })).toBe(chartToHtml(SMALL_CHART, { mode: 'file' }));
  });

  test('tells every state apart by shape alone', () => {
    const kinds = ['torqued', 'loose', 'fitted', 'bench', 'off', 'ready', 'away', 'gone', 'absent'] as const;
    // Without the names of classes, which colour hangs on, and of the states themselves.
    const shapes = kinds.map((kind) => drawn(kind).replaceAll(/ (?:class|data-standing)="[^"]*"/g, ''));
    const dashes = { off: 'dots', ready: 'comb' };
    const told = shapes.map((shape, i) => `${shape} ${dashes[kinds[i] as 'off'] ?? ''}`);
    expect(new Set(told).size).toBe(kinds.length);
  });
});

describe('a cell', () => {
  const { cells } = SMALL_CHART.rows[1] ?? { cells: [] };
  const markup = bodyOf(SMALL_CHART, geometryOf(SMALL_CHART), 'preview').join('');

  test('says in words what happens in it, and where that is written', () => {
    expect(cells).toHaveLength(3);
    expect(markup).toContain(
      '<title>Step 1 Take off the nut: cap nut, loosened, in place, finger-tight; then taken off, scrapped or given back</title>',
    );
    expect(markup).toContain('id="cell-cap-nut-0" role="gridcell" aria-colindex="3" tabindex="-1"');
    expect(markup).toMatch(/id="cell-cap-nut-0"[^>]* data-source-offset="100"/);
  });

  test('holds the findings of its part, escaped, at its step or at the end', () => {
    expect(markup).toContain(
      '<title>At the end: cap nut, Error: The cap nut is &lt;not&gt; tightened (K1-A) [left-loose]</title>',
    );
    expect(markup).toMatch(/id="cell-cover-2"[\s\S]*?<rect class="found warning"/);
  });
});

test('a step is as wide as what is done in it needs, and a change begins at its beat', () => {
  const chart: Chart = {
    ...SMALL_CHART,
    phases: [{ title: 'Strip', first: 0, count: 1 }],
    steps: [step(1, 'Work', { beats: 3 })],
    rows: [row('nut', standing('torqued'), [cell(0, [beat('loosen', standing('loose'), { beat: 2 })])])],
  };
  const { steps } = geometryOf(chart);
  const [work] = steps;
  const from = (work?.x ?? 0) + ((work?.width ?? 0) * 2) / 3;
  expect(bodyOf(chart, geometryOf(chart), 'preview').join('')).toContain(`d="M${Math.round(from * 10) / 10} 6.3H`);
});

test('a page of a file tells the walk in words, and runs and fetches nothing', () => {
  const page = chartToHtml(SMALL_CHART, { mode: 'file' });
  expect(page).toContain('<dd>wheel: marked</dd>');
  expect(page).toContain('Shown is the plain way: used again: wheel.');
  expect(page).toContain('default-src &#39;none&#39;; style-src');
  expect(page).not.toMatch(/<script|https?:\/\//);
});

test('a chart without a part is still a page', () => {
  const empty: Chart = { ...SMALL_CHART, steps: [], rows: [], phases: [] };
  expect(chartToHtml(empty, { mode: 'preview' })).toContain('for K1-A</h1>');
  expect(chartToSvg(empty)).toContain('</svg>');
});

test('a text that is too long is cut, and one that is not stays', () => {
  expect(shortened('Take off', 100, 11)).toBe('Take off');
  expect(shortened('Take off the compressor cover', 60, 11)).toMatch(/^Take off.*…$/);
  expect(shortened('Take off', 2, 11)).toBe('');
});
