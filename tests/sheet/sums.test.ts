import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { FAMILY, filesWith, instructionOf, procedureWith, sheetOf, sheetOfFiles } from './fixtures/bench';

const blank = { kind: 'blank', unit: 'mm' };

describe('sums worked out on paper', () => {
  test('have a blank for each thing that was measured, what is added first, and the limits at what comes out', async () => {
    const { sum } = await instructionOf(
      '- { calculate: journal-clearance, from: [-shaft-journal, +bearing-bore, -0.05 mm] }',
    );
    expect(sum).toEqual({
      terms: [
        { sign: '+', name: 'Bearing bore', amount: blank },
        { sign: '−', name: 'Shaft journal', amount: blank },
        { sign: '−', name: '', amount: { kind: 'stated', text: '0.05 mm' } },
      ],
      result: { name: 'Journal clearance', unit: 'mm', limits: '0.028 to 0.042 mm' },
      rounds: 1,
    });
  });

  test('come from the family where the instruction does not say them', async () => {
    const { sum, reading } = await instructionOf('- calculate: journal-clearance');
    expect(sum?.terms.map((term) => term.sign + term.name)).toEqual(['+Bearing bore', '−Shaft journal']);
    // It stays in the record of measurements.
    expect(reading?.name).toBe('Journal clearance');
  });

  test('of one term are none', async () => {
    expect(await instructionOf('- { calculate: end-play, from: [+stack] }')).not.toHaveProperty('sum');
  });

  test('end in the size that is chosen', async () => {
    const one = await instructionOf('- { choose: shim, size: [+42.21 mm, -stack] }');
    expect(one.sum).toMatchObject({
      terms: [{ amount: { kind: 'stated', text: '42.21 mm' } }, { sign: '−', name: 'Height of the stack' }],
      result: { name: 'Size chosen', unit: 'mm' },
    });
    expect(one).not.toHaveProperty('record');
    expect((await instructionOf('- choose: shim')).record).toEqual({ labels: ['Size chosen'] });
  });

  test('add what turns the nut to the torque that is stated', async () => {
    expect((await instructionOf('- { tighten: left-nut, plus: drag }')).sum).toEqual({
      terms: [
        { sign: '+', name: 'Running torque of the nut', amount: { kind: 'blank', unit: 'N·m' } },
        { sign: '+', name: '', amount: { kind: 'stated', text: '5 ± 0.5 N·m' } },
      ],
      result: { name: 'Torque to set', unit: 'N·m' },
      rounds: 1,
    });
  });

  test('leave the torque blank where what the bench finds decides it, or nobody states it', async () => {
    for (const fastener of ['two-bolt', 'bare-nut']) {
      const { sum } = await instructionOf(`- { tighten: ${fastener}, plus: drag }`);
      expect(sum?.terms[1]?.amount).toMatchObject({ kind: 'blank' });
    }
  });
});

describe('measurements that the work may come back to', () => {
  const steps = (goTo: string): string => `phases:
  - phase: Set
    steps:
      - { step: before, title: Before, do: [{ measure: stack }] }
      - { step: set-it, title: Set, do: [{ measure: stack }, { choose: shim, size: [+42 mm, -stack] }] }
      - { step: test-it, title: Test, do: [{ measure: end-play, if-not: { ${goTo} } }, { measure: run-out }] }
`;
  const roundsOf = (sheet: Sheet) =>
    sheet.phases.flatMap((phase) =>
      phase.steps.map((step) => step.instructions.map((one) => one.sum?.rounds ?? one.reading?.rounds ?? 1)),
    );

  test('have a row more than the work goes back, from the step that it goes back to up to the test', async () => {
    expect(roundsOf(await sheetOf(steps('go-to: set-it, at-most: 2')))).toEqual([[1], [3, 3], [3, 1]]);
  });

  test('have two rows where nobody says how often, and never more than a page holds', async () => {
    expect(roundsOf(await sheetOf(steps('go-to: set-it')))).toEqual([[1], [2, 2], [2, 1]]);
    expect(roundsOf(await sheetOf(steps('go-to: set-it, at-most: 90')))[2]).toEqual([8, 1]);
  });

  test('have one row where the step is not there or lies ahead', async () => {
    expect(roundsOf(await sheetOf(steps('go-to: nowhere, at-most: 2')))).toEqual([[1], [1, 1], [1, 1]]);
    expect(roundsOf(await sheetOf(steps('replace: shim')))).toEqual([[1], [1, 1], [1, 1]]);
  });
});

test('a family without the limit of a sum still gives the rest of the sheet', async () => {
  const files = filesWith(
    procedureWith(
      'phases:\n  - { phase: Work, steps: [{ step: one-step, title: Work, do: [{ calculate: no-such }] }] }\n',
    ),
  );
  const sheet = await sheetOfFiles({ ...files, 'families/pellow-k2.family.yaml': FAMILY });
  expect(sheet.phases[0]?.steps[0]?.instructions[0]).not.toHaveProperty('sum');
});
