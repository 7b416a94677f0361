import { el, type Html } from '../sheet/htmlText';
import type { ChartRow, Standing, StandingKind } from './chart';
import { beatAt, type Geometry, n, ROW } from './geometry';

/** A stretch of a row over which the part stands in one way. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly standing: Standing;
}

/** The stretches of a row from left to right; they meet each other and fill it. */
export function stretchesOf({ start, cells }: ChartRow, beats: readonly number[], geometry: Geometry): Stretch[] {
  const stretches: Stretch[] = [];
  let now = { from: geometry.start.x + 5, standing: start };
  const close = (to: number): void => {
    if (to > now.from) stretches.push({ from: now.from, to, standing: now.standing });
  };
  for (const cell of cells) {
    const column = geometry.steps[cell.step];
    if (column === undefined) continue;
    for (const beat of cell.beats) {
      if (!beat.changed) continue;
      const { from } = beatAt(column, beat.beat, beats[cell.step] ?? 1);
      close(from);
      now = { from, standing: beat.standing };
    }
  }
  close(geometry.end.x + geometry.end.width - 5);
  return stretches;
}

/** Draws a state over a stretch, about the middle of its row. Each state has a shape of its own, whatever its colour. */
export function barOf({ from, to, standing }: Stretch, middle = ROW / 2): Html[] {
  const heat = standing.heat === undefined ? [] : [heatLine(from, to, middle, standing.heat)];
  return [...shapeOf(standing.kind, from, to, middle), ...heat];
}

function shapeOf(kind: StandingKind, from: number, to: number, middle: number): Html[] {
  switch (kind) {
    case 'torqued':
      return [block('torqued', from, to, middle, 9)];
    case 'fitted':
      return [block('fitted', from, to, middle, 4)];
    case 'loose':
    case 'released':
      return [line('loose', from, to, middle - 3.7), line('loose', from, to, middle + 3.7)];
    case 'bench':
      return [block('bench', from + 0.5, to - 0.5, middle, 8)];
    case 'off':
      return [line('off', from + 4, to - 1, middle)];
    case 'ready':
      return [line('ready', from + 1.5, to, middle)];
    case 'away':
      return [chevron(from + 7, middle, -4), chevron(to - 7, middle, 4)];
    case 'gone':
      return [cross(from + 6, middle)];
    case 'absent':
      return [];
  }
}

function block(kind: StandingKind, from: number, to: number, middle: number, height: number): Html {
  const width = n(Math.max(1, to - from));
  return el('rect', { class: `bar ${kind}`, x: n(from), y: n(middle - height / 2), width, height: n(height) });
}

function line(kind: StandingKind, from: number, to: number, y: number): Html {
  return el('path', { class: `bar ${kind}`, d: `M${n(from)} ${n(y)}H${n(Math.max(from + 0.1, to))}` });
}

function chevron(x: number, middle: number, by: number): Html {
  return el('path', { class: 'bar away', d: `M${n(x)} ${n(middle - 4)}l${-by} 4l${by} 4` });
}

function cross(x: number, middle: number): Html {
  return el('path', { class: 'bar gone', d: `M${n(x - 3.5)} ${n(middle - 3.5)}l7 7m0 -7l-7 7` });
}

/** Heat is a wave over the bar, cold a saw. */
function heatLine(from: number, to: number, middle: number, heat: 'hot' | 'cold'): Html {
  const waves = Math.max(1, Math.floor((to - from) / 6));
  const step = heat === 'hot' ? 'q1.5 -3 3 0t3 0' : 'l3 -3l3 3';
  return el('path', { class: heat, d: `M${n(from)} ${n(middle - 7)}${step.repeat(waves)}` });
}
