import { el, escapeHtml, type Html } from '../sheet/htmlText';
import { barOf } from './bars';
import type { Standing, StandingKind } from './chart';
import { STANDING_WORDS } from './chartWords';
import { ROW } from './geometry';
import { findingSign, notch, ring } from './glyphs';

export const SAMPLE = 46;

interface LegendEntry {
  readonly sample: readonly Html[];
  readonly words: string;
}

const KINDS: readonly StandingKind[] = [
  'torqued',
  'loose',
  'fitted',
  'bench',
  'off',
  'ready',
  'away',
  'gone',
  'absent',
];

/** Where the legend says more than a cell does. */
const MEANINGS: Readonly<Partial<Record<StandingKind, string>>> = {
  loose: 'in place, finger-tight; of a ring: released',
  away: 'away, sent out',
};

/** Every sign of the chart with what it means. */
export function legendEntries(): LegendEntry[] {
  const middle = ROW / 2;
  const states = KINDS.map((kind) => ({
    sample: barOf(sampleOf({ kind })),
    words: MEANINGS[kind] ?? STANDING_WORDS[kind],
  }));
  return [
    ...states,
    { sample: barOf(sampleOf({ kind: 'off', heat: 'hot' })), words: 'a wave over it: hot; a saw: cold' },
    { sample: [ring(SAMPLE / 2, middle)], words: 'measured, checked or inspected' },
    {
      sample: [notch(SAMPLE / 2 - 9, middle), notch(SAMPLE / 2 + 9, middle), notch(SAMPLE / 2 + 9, middle, -1)],
      words: 'marked; aligned',
    },
    {
      sample: [findingSign('error', 8, middle), findingSign('warning', 24, middle), findingSign('info', 39, middle)],
      words: 'finding: error, warning, information',
    },
  ];
}

function sampleOf({ kind, heat }: { kind: StandingKind; heat?: 'hot' }) {
  const standing: Standing = { kind, pieces: undefined, heat, marked: false };
  return { from: 1, to: SAMPLE - 1, standing };
}

/** The legend of the page: a list with a small picture before each meaning. */
export function legendHtml(): Html {
  const items = legendEntries().map(({ sample, words }) => {
    const picture = el(
      'svg',
      { class: 'sample', width: SAMPLE, height: ROW, viewBox: `0 0 ${SAMPLE} ${ROW}`, 'aria-hidden': 'true' },
      [...sample],
    );
    return el('li', {}, picture, el('span', {}, escapeHtml(words)));
  });
  return el('ul', { class: 'legend', 'aria-label': 'What the signs mean' }, ...items);
}

/** The legend of the drawing, in columns of equal width below one another. */
export function legendSvg(width: number): { readonly html: Html; readonly height: number } {
  const entries = legendEntries();
  const columns = Math.max(1, Math.floor(width / 300));
  const lines = Math.ceil(entries.length / columns);
  const drawn = entries.map(({ sample, words }, index) => {
    const x = Math.floor(index / lines) * 300;
    const y = (index % lines) * ROW;
    const text = el('text', { x: SAMPLE + 8, y: 14 }, escapeHtml(words));
    return el('g', { transform: `translate(${x} ${y})` }, [...sample], text);
  });
  return { html: el('g', { class: 'legend' }, ...drawn), height: lines * ROW };
}
