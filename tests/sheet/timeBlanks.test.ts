import { describe, expect, test } from 'vitest';
import type { TimeBlank } from '../../server/src/core/sheet/sheet';
import { instructionOf, stepWith } from './fixtures/bench';

const timesOf = async (instruction: string): Promise<TimeBlank[] | undefined> =>
  (await instructionOf(instruction)).times;

describe('times to write down', () => {
  test('threadlocker has the time it was put on, and when it may be loaded as the stores state it', async () => {
    expect(await timesOf('- { apply: threadlocker, to: cap-nut }')).toEqual([
      { kind: 'on' },
      { kind: 'earliest', after: '24 h' },
    ]);
  });

  test('no time is made up where the stores state none', async () => {
    expect(await timesOf('- { apply: sealant, to: cover }')).toBeUndefined();
    expect(await timesOf('- { apply: no-such, to: cover }')).toBeUndefined();
  });

  test('several things put on at once are named', async () => {
    expect(await timesOf('- { apply: [threadlocker, sealant], to: cap-nut }')).toEqual([
      { kind: 'on', what: 'Threadlocker' },
      { kind: 'earliest', after: '24 h' },
    ]);
  });

  test('a wait has its start and its end', async () => {
    expect(await timesOf('- wait: 10 min')).toEqual([{ kind: 'start' }, { kind: 'end', after: '10 min' }]);
    expect(await timesOf('- { wait: cure, of: threadlocker }')).toEqual([
      { kind: 'start' },
      { kind: 'end', after: '24 h' },
    ]);
    expect(await timesOf('- { wait: cure, of: [threadlocker, sealant] }')).toEqual([
      { kind: 'start' },
      { kind: 'end' },
    ]);
  });

  test('heat has its times and its temperature, cold its temperature', async () => {
    expect(await timesOf('- { heat: wheel, until: 110 ± 5 °C, with: oven }')).toEqual([
      { kind: 'in' },
      { kind: 'out' },
      { kind: 'temperature', unit: '°C', limits: '110 ± 5 °C' },
    ]);
    expect(await timesOf('- { cool: wheel, until: 35 °C }')).toEqual([
      { kind: 'temperature', unit: '°C', limits: '35 °C' },
    ]);
    expect(await timesOf('- cool: wheel')).toBeUndefined();
  });
});

describe('what becomes of a part that is inspected', () => {
  const renewals = async (instructions: string) =>
    (await stepWith(instructions)).instructions.map((one) => one.renewals?.map((box) => box.part));

  test('is asked at the last instruction that may renew it', async () => {
    const wheel = '- { inspect: wheel, if-not: { replace: wheel } }';
    expect(await renewals(`${wheel}\n${wheel}`)).toEqual([undefined, ['Wheel']]);
  });

  test('is asked where something later depends on it, though the instruction does not replace it', async () => {
    expect(await renewals('- inspect: wheel\n- { mark: wheel, when: wheel=re-used }')).toEqual([['Wheel'], undefined]);
  });

  test('is not asked of what is always renewed, or rejected with the unit', async () => {
    expect(await renewals('- { inspect: core, if-not: { reject: true } }')).toEqual([undefined]);
    expect(await renewals('- { inspect: bearing, if-not: { replace: bearing } }')).toEqual([undefined]);
  });
});
