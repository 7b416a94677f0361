import { describe, expect, test } from 'vitest';
import type { SheetRecord } from '../../server/src/core/sheet/recordSheet';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { type SheetWish, sheetOf } from './fixtures/bench';

function sheetFrom(steps: Record<string, string[]>, wish: SheetWish = {}, more = ''): Promise<Sheet> {
  const lines = Object.entries(steps).map(
    ([id, acts]) =>
      `      - { step: ${id}, title: Do ${id}${more}, do: [${acts.map((act) => `{ ${act} }`).join(', ')}] }`,
  );
  return sheetOf(`phases:\n  - phase: Work\n    steps:\n${lines.join('\n')}\n`, wish);
}

const recordFrom = async (steps: Record<string, string[]>, wish: SheetWish = {}): Promise<SheetRecord> =>
  (await sheetFrom(steps, wish)).record;

const at = (step: number, stepId: string) => [{ step, stepId }];

describe('the record of the work', () => {
  test('names every gauge and torque tool with its steps and its calibration, and no socket', async () => {
    const { gauges } = await recordFrom({
      close: ['tighten: cover-screw, with: [torque-wrench-10, socket-8]'],
      play: ['measure: end-play, with: dial-gauge'],
      again: ['tighten: cover-screw, with: [torque-wrench-10]'],
    });
    expect(gauges).toEqual([
      {
        name: 'torque wrench 2–10 N·m',
        at: [...at(1, 'close'), ...at(3, 'again')],
        calibrationDue: '2027-03-01',
      },
      { name: 'dial gauge', at: at(2, 'play') },
    ]);
  });

  test('names what the consumables are used for, so that their batches can be written down', async () => {
    const { batches } = await recordFrom({
      lock: ['apply: threadlocker, to: cap-nut'],
      wipe: ['clean: cover, using: degreaser'],
    });
    expect(batches).toEqual([
      { name: 'threadlocker', at: at(1, 'lock') },
      { name: 'degreaser', at: at(2, 'wipe') },
    ]);
  });

  test('gathers the hold points with who signs', async () => {
    const sheet = await sheetFrom({ close: ['install: cover'] }, {}, ', sign: inspector');
    expect(sheet.record.signOffs).toEqual([{ step: 1, stepId: 'close', title: 'Do close', who: 'inspector' }]);
  });

  test('has a decision for each part that the bench renews or not, with the last step that may renew it', async () => {
    const { decisions } = await recordFrom({
      strip: ['remove: cap-nut', 'remove: wheel'],
      look: ['inspect: wheel, if-not: { replace: wheel }'],
      build: ['install: wheel', 'tighten: two-bolt'],
    });
    expect(decisions).toEqual([{ part: 'wheel', at: at(2, 'look') }]);
  });

  test('says what the work leaves loose at its end, and that nothing is', async () => {
    const off = ['remove: cover-screw', 'remove: cover', 'remove: cover-seal'];
    const on = ['install: cover-seal', 'install: cover', 'install: cover-screw'];
    const open = await recordFrom({ strip: off, build: on });
    expect(open.looseAtEnd?.map(({ what }) => what)).toEqual(['Cover screws (4)']);
    const closed = await recordFrom({ strip: off, build: [...on, 'tighten: cover-screw'] });
    expect(closed.looseAtEnd).toEqual([]);
  });

  test('claims nothing of an end that cannot be walked', async () => {
    const sheet = await sheetOf('family: ../families/none.family.yaml\nphases: []\n');
    expect(sheet.record).not.toHaveProperty('looseAtEnd');
  });
});

describe('the tables of torques and measurements', () => {
  test('a torque of several pieces says how many', async () => {
    const { torqueTable } = await sheetFrom({ close: ['tighten: cover-screw', 'tighten: cap-nut'] });
    expect(torqueTable.map(({ pieces }) => pieces)).toEqual([4, undefined]);
  });

  test('a size that is chosen stands behind what it is chosen from', async () => {
    const steps = { shim: ['measure: stack', 'choose: shim, size: [+stack]'], play: ['measure: end-play'] };
    const { recordTable } = await sheetFrom(steps);
    expect(recordTable.map(({ step, what, limits }) => [step, what, limits])).toEqual([
      [1, 'Height of the stack', undefined],
      [1, 'Size chosen: thrust shim', '0.40 to 0.60 mm'],
      [2, 'End play of the rotor', '0.04 to 0.09 mm'],
    ]);
  });

  test('a measurement says for which outcome it is made', async () => {
    const { recordTable } = await sheetFrom({ play: ['measure: end-play, when: nut-hand=left'] }, { build: 'k2-b' });
    expect(recordTable[0]?.condition?.text).toContain('the hand of the cap nut is left');
  });
});
