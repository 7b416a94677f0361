import { describe, expect, test } from 'vitest';
import type { ReceivedUnit } from '../../server/src/core/sheet/recordSheet';
import { type SheetWish, sheetOf } from './fixtures/bench';

/** The page of a procedure with one step for each list of instructions. */
async function received(
  steps: Record<string, string[]>,
  wish: SheetWish = {},
  head = '',
): Promise<ReceivedUnit | undefined> {
  const lines = Object.entries(steps).map(
    ([id, acts]) => `      - { step: ${id}, title: ${id}, do: [${acts.map((act) => `{ ${act} }`).join(', ')}] }`,
  );
  const sheet = await sheetOf(`${head}phases:\n  - phase: Work\n    steps:\n${lines.join('\n')}\n`, wish);
  return sheet.asReceived;
}

describe('what is written down as the unit comes in', () => {
  test('is what is measured before the first part comes off, with the step and its limits', async () => {
    const unit = await received({
      'look-over': ['measure: end-play, accept: record-only', 'measure: run-out'],
      strip: ['remove: cover-screw', 'remove: cover'],
      later: ['measure: tip-gap'],
    });
    expect(unit?.measured).toMatchObject([
      { step: 1, stepId: 'look-over', what: 'End play of the rotor', unit: 'mm', rows: [], places: [] },
      {
        step: 1,
        stepId: 'look-over',
        what: 'Run-out of the shaft',
        unit: 'mm',
        limits: 'at most 0.012 mm',
        rows: [],
        places: ['thread end', 'turbine end'],
      },
    ]);
  });

  test('nothing is measured before stripping where nothing comes off', async () => {
    expect((await received({ look: ['measure: end-play'] }))?.measured).toEqual([]);
  });

  test('the hand that the bench finds has a box for each value, and is not asked of a build that has none', async () => {
    const steps = { strip: ['identify: nut-hand'] };
    expect((await received(steps, { build: 'k2-b' }))?.found).toEqual([
      { what: 'Hand of the cap nut', values: ['Left', 'Right'], at: [{ step: 1, stepId: 'strip' }] },
    ]);
    expect((await received(steps, { build: 'k2-a' }))?.found).toEqual([]);
  });

  test('each serial number that the work writes down is asked for once, with all its steps', async () => {
    const unit = await received({
      one: ['serial: [core, shaft], record: Numbers'],
      two: ['serial: [core], record: Number'],
    });
    expect(unit?.serials).toEqual([
      {
        part: 'core housing',
        at: [
          { step: 1, stepId: 'one' },
          { step: 2, stepId: 'two' },
        ],
      },
      { part: 'shaft and turbine wheel', at: [{ step: 1, stepId: 'one' }] },
    ]);
  });

  test('an option says how the unit of this sheet must come, and a variant that cannot have it is not asked', async () => {
    const head = 'covers: { variants: [k2-a, k2-b], options: [big-wheel] }\nadds: [big-wheel]\n';
    const expected = async (build: string) =>
      (await received({ look: ['measure: end-play'] }, { build }, head))?.arrivals.map((one) => one.expected);
    expect(await expected('k2-a')).toEqual([]);
    expect(await expected('k2-b')).toEqual(['without']);
    expect(await expected('k2-b,arrives=big-wheel')).toEqual(['with']);
    expect(await expected('k2-b,big-wheel')).toEqual(['either']);
  });

  test('the plate bears the variant', async () => {
    expect((await received({ look: ['measure: end-play'] }, { build: 'k2-b' }))?.variants).toEqual(['K2-B']);
  });

  test('no unit comes in where the work starts from parts', async () => {
    expect(await received({ look: ['measure: end-play'] }, {}, 'starts: parts\n')).toBeUndefined();
  });
});
