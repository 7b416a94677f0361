import type { Chart } from './chart';

/** Sizes in CSS pixels. */
export const ROW = 20;
export const NAMES = 206;
/** A step is as wide as its number needs, and wider by one of these for each further beat. */
const STEP = 20;
const BEAT = 9;
/** The columns before the first and behind the last step. */
const EDGE = 30;
export const HEAD = { titles: 156, phases: 19, numbers: 17, marks: 15 } as const;
export const HEAD_HEIGHT = HEAD.titles + HEAD.phases + HEAD.numbers + HEAD.marks;
/** Titles lean; this is how far the last one reaches beyond its column. */
export const LEAN = 90;

export interface Column {
  readonly x: number;
  readonly width: number;
}

/** Where everything of a chart lies: columns from left to right, rows from top to bottom, each from 0. */
export interface Geometry {
  readonly start: Column;
  /** One for each step, and behind them the one for the end. */
  readonly steps: readonly Column[];
  readonly end: Column;
  readonly width: number;
  readonly height: number;
}

export function geometryOf({ steps, rows }: Chart): Geometry {
  const start = { x: 0, width: EDGE };
  const columns: Column[] = [];
  let x = EDGE;
  for (const { beats } of steps) {
    const width = STEP + BEAT * (beats - 1);
    columns.push({ x, width });
    x += width;
  }
  const end = { x, width: EDGE };
  return { start, steps: [...columns, end], end, width: x + EDGE, height: rows.length * ROW };
}

/** Where a beat begins within its step, and where its middle is. */
export function beatAt(
  { x, width }: Column,
  beat: number,
  beats: number,
): { readonly from: number; readonly middle: number } {
  const each = width / beats;
  return { from: x + each * beat, middle: x + each * (beat + 0.5) };
}

/** A number for markup: short, and the same on every machine. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
