import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { instructionOf, sheetOf, stepWith } from './fixtures/bench';
import { printedOnly } from './fixtures/printedOnly';

const units = (torque: string[]) => ({ ...DEFAULT_SETTINGS, units: new Map([['torque', torque]]) });

describe('torque', () => {
  test('a torque that nobody states is a blank, in the call-out and in the table', async () => {
    const sheet = await sheetOf(
      'phases:\n  - { phase: Work, steps: [{ step: one-step, title: Work, do: [{ tighten: bare-nut }] }] }\n',
    );
    expect(sheet.phases[0]?.steps[0]?.instructions[0]?.torque?.setting).toEqual({
      kind: 'blank',
      turn: { hand: 'right', direction: 'clockwise' },
    });
    expect(sheet.torqueTable[0]).not.toHaveProperty('primary');
  });

  test('a branch without a torque is a line to fill in beside the branch that has one', async () => {
    const { torque } = await instructionOf('- tighten: half-bolt');
    const branches = torque?.setting.kind === 'byOutcome' ? torque.setting.branches : [];
    expect(branches.map(({ setting }) => (setting.kind === 'one' ? setting.value.primary : setting.kind))).toEqual([
      '8 ± 1 N·m',
      'blank',
    ]);
  });

  test('no hand is assumed where none is stated', async () => {
    const { torque } = await instructionOf('- { tighten: rod-end, torque: 3 N·m }');
    expect(printedOnly(torque?.setting)).toEqual({
      kind: 'one',
      value: { primary: '3 N·m', secondary: '27 lbf·in', passes: [] },
    });
  });

  test.each([
    ['as written, with the usual other unit', undefined, '5 N·m', '5 N·m', '44 lbf·in'],
    ['a bigger one goes by the foot', undefined, '60 N·m', '60 N·m', '44 lbf·ft'],
    [
      'the value in brackets is kept as it was written',
      undefined,
      '5.1 ± 0.3 N·m (45 ± 3 lbf·in)',
      '5.1 ± 0.3 N·m',
      '45 ± 3 lbf·in',
    ],
    [
      'the settings turn it round',
      ['lbf·in', 'N·m'],
      '5.1 ± 0.3 N·m (45 ± 3 lbf·in)',
      '45 ± 3 lbf·in',
      '5.1 ± 0.3 N·m',
    ],
    [
      'the settings ask for one unit that was not written',
      ['lbf·ft', 'N·m'],
      '27 ± 3 N·m',
      '20 ± 2 lbf·ft',
      '27 ± 3 N·m',
    ],
    ['pounds written first stay first', undefined, '45 lbf·in', '45 lbf·in', '5.1 N·m'],
  ] as const)('units: %s', async (_, wanted, torque, primary, secondary) => {
    const settings = wanted === undefined ? DEFAULT_SETTINGS : units([...wanted]);
    const one = await instructionOf(`- { tighten: left-nut, torque: ${torque} }`, { settings });
    expect(one.torque?.setting).toMatchObject({ kind: 'one', value: { primary, secondary } });
  });

  test('without a unit it is not printed as a value', async () => {
    const one = await instructionOf('- { tighten: bare-nut, torque: 5 ± 0.5 }');
    expect(one.torque?.setting).toEqual({ kind: 'blank', turn: { hand: 'right', direction: 'clockwise' } });
  });

  test('fasteners of one instruction that differ get a call-out each', async () => {
    const step = await stepWith('- { tighten: [left-nut, cover-screw], caution: Mind your fingers. }');
    expect(step.instructions.map((one) => one.torque?.fastener)).toEqual(['Left nut', 'Cover screws (4)']);
    expect(step.instructions.map((one) => one.cautions.length)).toEqual([1, 0]);
  });

  test('what is added to it is printed with it, with a line for the sum', async () => {
    const one = await instructionOf('- { tighten: left-nut, plus: drag }');
    expect(one.torque?.setting).toMatchObject({ value: { primary: '5 ± 0.5 N·m + running torque of the nut' } });
    expect(one.sum?.result).toEqual({ name: 'Torque to set', unit: 'N·m' });
  });
});

describe('measurements', () => {
  test('limits and blanks come from the family', async () => {
    expect(printedOnly((await instructionOf('- measure: run-out')).reading)).toEqual({
      name: 'Run-out of the shaft',
      unit: 'mm',
      limits: 'at most 0.012 mm',
      rows: [],
      places: ['thread end', 'turbine end'],
    });
  });

  test('a limit without a value for this build says so, and is never a value to write down only', async () => {
    expect((await instructionOf('- measure: tip-gap', { build: 'k2-a' })).reading?.limits).toBe(
      'not stated: ask before you go on',
    );
    expect((await instructionOf('- measure: tip-gap', { build: 'k2-b' })).reading?.limits).toBe('0.3 to 0.5 mm');
    expect((await instructionOf('- { measure: end-play, accept: record-only }')).reading).not.toHaveProperty('limits');
    expect((await instructionOf('- measure: stack')).reading).toEqual({
      name: 'Height of the stack',
      unit: 'mm',
      rows: [],
      places: [],
    });
  });

  test('balancing leaves a blank for each plane', async () => {
    expect((await instructionOf('- balance: rotor')).reading).toMatchObject({
      name: 'Residual unbalance of the rotor',
      unit: 'g·mm',
      limits: 'at most 0.09 g·mm',
      places: ['Plane 1', 'Plane 2'],
    });
  });

  test('each has its row in the record', async () => {
    const sheet = await sheetOf(
      'phases:\n  - { phase: Work, steps: [{ step: one-step, title: Work, do: [{ measure: end-play, places: 3 }] }] }\n',
    );
    expect(sheet.recordTable).toMatchObject([
      {
        step: 1,
        stepId: 'one-step',
        what: 'End play of the rotor',
        unit: 'mm',
        limits: '0.04 to 0.09 mm',
        rows: [],
        places: ['1', '2', '3'],
      },
    ]);
  });
});
