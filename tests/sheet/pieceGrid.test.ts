import { describe, expect, test } from 'vitest';
import { orderPicture } from '../../server/src/core/sheet/orderPicture';
import type { PieceGrid } from '../../server/src/core/sheet/sheet';
import { instructionOf } from './fixtures/bench';

const gridOf = async (instruction: string): Promise<PieceGrid | undefined> =>
  (await instructionOf(instruction)).torque?.grid;

describe('boxes for pieces and passes', () => {
  test('stand in the order that the family states, a row for each pass', async () => {
    const grid = await gridOf('- { tighten: cover-screw, passes: [3 N·m, 6 N·m, 9 ± 1 N·m] }');
    expect(grid?.rows).toEqual([{ kind: 'pass', number: 1 }, { kind: 'pass', number: 2 }, { kind: 'final' }]);
    expect(grid?.bands).toEqual([{ kind: 'ordered', first: 1, pieces: ['1', '3', '2', '4'] }]);
    expect(grid?.picture).toMatchObject({ alt: 'In the order 1, 3, 2, 4', image: { kind: 'svg' } });
  });

  test('have neither names nor a picture where nobody states an order', async () => {
    expect(await gridOf('- tighten: two-bolt')).toEqual({
      rows: [{ kind: 'only' }],
      bands: [{ kind: 'boxes', count: 2 }],
    });
  });

  test('of fewer pieces than the order names are boxes alone: nobody has said which ones', async () => {
    const grid = await gridOf('- { tighten: cover-screw, count: 3 }');
    expect(grid).toEqual({ rows: [{ kind: 'only' }], bands: [{ kind: 'boxes', count: 3 }] });
  });

  test('leave the drawing to the writer where the instruction has one', async () => {
    expect(await gridOf('- { tighten: cover-screw, figure: order }')).not.toHaveProperty('picture');
  });

  test('have a row for the angle that follows', async () => {
    expect((await gridOf('- tighten: stretch-bolt'))?.rows).toEqual([
      { kind: 'torque' },
      { kind: 'angle', angle: '110°' },
    ]);
  });

  test('are left out for one piece in one pass, and there for one in several', async () => {
    expect(await gridOf('- tighten: left-nut')).toBeUndefined();
    expect((await gridOf('- { tighten: left-nut, passes: [2 N·m, 5 N·m] }'))?.bands).toEqual([
      { kind: 'boxes', count: 1 },
    ]);
  });

  test('of many pieces go into bands that go on counting', async () => {
    const order = Array.from({ length: 14 }, (_, index) => index + 1).join(', ');
    const grid = await gridOf(`- { tighten: cover-screw, count: 14, in-order: [${order}] }`);
    expect(grid?.bands.map((band) => (band.kind === 'ordered' ? [band.first, band.pieces.length] : []))).toEqual([
      [1, 7],
      [8, 7],
    ]);
  });
});

describe('the picture of the order', () => {
  const texts = (svg: string | undefined): string[] =>
    [...(svg ?? '').matchAll(/<text[^>]*>([^<]*)</gu)].map((match) => match[1] ?? '');

  test('has each piece around the circle with its turn', () => {
    // Piece 1 with turn 1, piece 2 with turn 3, and so on around.
    expect(texts(orderPicture(['1', '3', '2', '4']))).toEqual(['1', '1', '2', '3', '3', '2', '4', '4']);
  });

  test('has named pieces in a row, and those that are too long for it not at all', () => {
    expect(texts(orderPicture(['A', 'C', 'B']))).toEqual(['1', 'A', '2', 'C', '3', 'B']);
    expect(orderPicture(['bolt at the drain', 'bolt at the inlet'])).toBeUndefined();
  });

  test('shows nothing of a name that could open a tag', () => {
    expect(orderPicture(['<b>', '&', 'c'])).toContain('&lt;b&gt;');
  });

  test('stays within its frame however many pieces there are', () => {
    for (let count = 3; count <= 16; count += 1) {
      const svg = orderPicture(Array.from({ length: count }, (_, index) => String(index + 1))) ?? '';
      const marks = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" fill="#/gu)].map((match) =>
        match.slice(1).map(Number),
      ) as [number, number, number][];
      expect(marks).toHaveLength(2 * count);
      for (const [x, y, radius] of marks) {
        expect(Math.min(x, y) - radius).toBeGreaterThanOrEqual(0);
        expect(Math.max(x, y) + radius).toBeLessThanOrEqual(120);
      }
      const open = marks.filter((_, index) => index % 2 === 0);
      for (const [index, [x, y, radius]] of open.entries()) {
        const [nextX, nextY] = open[(index + 1) % open.length] ?? [x, y];
        expect(Math.hypot(nextX - x, nextY - y)).toBeGreaterThan(2 * radius);
      }
    }
  });
});
