import { describe, expect, test } from 'vitest';
import type { TurnLine } from '../../server/src/core/sheet/sheet';
import { instructionOf, stepWith } from './fixtures/bench';

const leftLoose = { hand: 'left', direction: 'clockwise' } as const;
const rightLoose = { hand: 'right', direction: 'counter-clockwise' } as const;

const turningOf = async (instruction: string, build = 'k2-a'): Promise<TurnLine[] | undefined> =>
  (await instructionOf(instruction, { build })).turning;

describe('which way to turn', () => {
  test('stands beside a loosening whose hand is known', async () => {
    expect(await turningOf('- loosen: cap-nut')).toEqual([{ turn: rightLoose }]);
    expect(await turningOf('- loosen: left-nut')).toEqual([{ turn: leftLoose }]);
  });

  test('has a box for each hand that the bench can find', async () => {
    expect(await turningOf('- loosen: cap-nut', 'k2-b')).toEqual([
      { condition: 'When the hand of the cap nut is left', turn: leftLoose },
      { condition: 'When the hand of the cap nut is right', turn: rightLoose },
    ]);
  });

  test('names fasteners that turn differently, and asks where a hand is not stated', async () => {
    expect(await turningOf('- loosen: [left-nut, cover-screw, rod-end]')).toEqual([
      { fastener: 'Left nut', turn: leftLoose },
      { fastener: 'Cover screw', turn: rightLoose },
      { fastener: 'Rod end' },
    ]);
  });

  test('is not said of what is spun off, lifted off, or tightened with a torque', async () => {
    const step = await stepWith('- loosen: left-nut\n- remove: left-nut\n- remove: cover\n- tighten: left-nut');
    expect(step.instructions.map((one) => one.turning?.length ?? 0)).toEqual([1, 0, 0, 0]);
  });

  test('warns as a left-hand thread is started', async () => {
    expect(await turningOf('- install: left-nut')).toEqual([
      { turn: { hand: 'left', direction: 'counter-clockwise' } },
    ]);
    expect(await turningOf('- install: cover-screw')).toBeUndefined();
  });
});

describe('a torque whose hand the bench finds', () => {
  test('has its value once and a box for each hand', async () => {
    const { torque } = await instructionOf('- tighten: cap-nut', { build: 'k2-b' });
    expect(torque?.found).toEqual([
      { condition: 'When the hand of the cap nut is left', turn: { hand: 'left', direction: 'counter-clockwise' } },
      { condition: 'When the hand of the cap nut is right', turn: { hand: 'right', direction: 'clockwise' } },
    ]);
  });

  test('stays in branches where the values differ', async () => {
    expect((await instructionOf('- tighten: two-bolt')).torque).not.toHaveProperty('found');
    expect((await instructionOf('- tighten: half-bolt')).torque).not.toHaveProperty('found');
  });
});
