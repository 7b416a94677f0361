import { describe, expect, test } from 'vitest';
import type { Acceptance } from '../../server/src/core/sheet/acceptance';
import { always, type FormField, type Need, never } from '../../server/src/core/sheet/fields/formField';
import { type Filled, judgeRecord, type Signatures } from '../../server/src/core/sheet/record/judgeRecord';
import { readPlan } from '../../server/src/core/sheet/record/readPlan';
import type { RecordPlan } from '../../server/src/core/sheet/record/recordPlan';
import type { SheetLanguage } from '../../server/src/core/sheet/sheet';

const common = { place: 'Step 1.1', what: 'it', need: always } as const;

const play: Acceptance = {
  kind: 'between',
  dimension: 'length',
  unit: 'mm',
  printedUnit: 'mm',
  words: '0.04 to 0.09 mm',
  lowest: 0.04,
  highest: 0.09,
};
const torque: Acceptance = {
  kind: 'between',
  dimension: 'torque',
  unit: 'N·m',
  printedUnit: 'N·m',
  words: '5.1 ± 0.3 N·m',
  lowest: 4.8,
  highest: 5.4,
};

function plan(fields: FormField[], language: SheetLanguage = 'en'): RecordPlan {
  return {
    witnessmarkRecord: 1,
    document: 'OP-1',
    title: 'Test',
    revision: 'A',
    status: 'released',
    errors: 0,
    build: 'V4-20',
    buildId: 'v4-20',
    language,
    fields,
  };
}

function value(accepts: readonly Acceptance[], more: Partial<FormField> = {}): FormField {
  return { ...common, name: 'v', kind: 'value', unit: accepts[0]?.printedUnit ?? '', accepts, ...more } as FormField;
}

const text = (words: string): Filled => ({ kind: 'text', text: words });
const on: Filled = { kind: 'tick', isOn: true };
const off: Filled = { kind: 'tick', isOn: false };

function judged(
  fields: FormField[],
  filled: Record<string, Filled>,
  language: SheetLanguage = 'en',
  signatures: Signatures = 'required',
) {
  return judgeRecord(plan(fields, language), new Map(Object.entries(filled)), signatures);
}

function verdict(typed: string, accepts: readonly Acceptance[], language: SheetLanguage = 'en') {
  return judged([value(accepts)], { v: text(typed) }, language).entries[0]?.verdict;
}

describe('a value', () => {
  test.each([
    ['0.05', 'en'],
    ['0,05', 'en'],
    ['0,05', 'de'],
    [' 0.05 mm ', 'en'],
    ['0,05 mm', 'es'],
    ['50 µm', 'en'],
    ['0.002 in', 'en'],
    ['+0.05', 'en'],
    ['0.04', 'en'],
    ['0.09', 'en'],
  ] as const)('%s is within its limits (%s)', (typed, language) => {
    expect(verdict(typed, [play], language)).toEqual({ is: 'within' });
  });

  test.each([
    ['0.10', 'above 0.04 to 0.09 mm'],
    ['0.0900001', 'above 0.04 to 0.09 mm'],
    ['0.03', 'below 0.04 to 0.09 mm'],
    ['-0.05', 'below 0.04 to 0.09 mm'],
    ['0.005 in', 'above 0.04 to 0.09 mm'],
    ['5', 'above 0.04 to 0.09 mm'],
  ])('%s is outside', (typed, why) => {
    expect(verdict(typed, [play])).toEqual({ is: 'outside', why });
  });

  test.each([
    ['ok', 'there is no number in it'],
    ['5 N·m', 'N·m measures torque, not length'],
    ['0.05 furlongs', 'furlongs is no unit that is known'],
    ['0.05 ± 0.01 mm', 'it is no single value'],
  ])('%s is not guessed', (typed, why) => {
    expect(verdict(typed, [play])).toEqual({ is: 'unreadable', why });
  });

  test('is one value, not two', () => {
    expect(verdict('0.05 / 0.06', [play])?.is).toBe('unreadable');
  });

  test('a comma that may part thousands is a decimal sign only where the language writes it so', () => {
    expect(verdict('5,123', [torque])?.is).toBe('unreadable');
    expect(verdict('5,123', [torque], 'de')?.is).toBe('within');
    expect(verdict('1.234,5', [torque], 'de')?.is).toBe('outside');
  });

  test('in another unit than its limit is known to half of its last place', () => {
    // 5.4 N·m are 47.8 lbf·in, which a sheet prints as 48.
    expect(verdict('48 lbf·in', [torque])?.is).toBe('within');
    expect(verdict('48.4 lbf·in', [torque])?.is).toBe('outside');
    expect(verdict('49 lbf·in', [torque])?.is).toBe('outside');
  });

  test('that is stated without a tolerance is met or not', () => {
    const bare: Acceptance = {
      kind: 'stated',
      dimension: 'torque',
      unit: 'N·m',
      printedUnit: 'N·m',
      words: '9 N·m',
      value: 9,
    };
    expect(verdict('9.0', [bare])?.is).toBe('within');
    expect(verdict('9.2', [bare])).toEqual({ is: 'outside', why: 'not 9 N·m, and no tolerance is stated' });
  });

  test('with nothing to hold it against is noted', () => {
    expect(judged([value([], { unit: 'h' } as Partial<FormField>)], { v: text('1200') }).entries[0]).toMatchObject({
      verdict: { is: 'noted' },
      number: 1200,
    });
  });

  test('that one case accepts and another does not is open', () => {
    const other = { ...play, lowest: 0.06, when: 'the nut is left-hand' };
    const found = verdict('0.05', [{ ...play, when: 'the nut is right-hand' }, other]);
    expect(found?.is).toBe('open');
    expect(found).toHaveProperty('why', expect.stringContaining('when the nut is left-hand'));
  });

  test('that is empty is missing, also where it is blanks alone', () => {
    expect(verdict('', [play])).toEqual({ is: 'missing' });
    expect(verdict('   ', [play])).toEqual({ is: 'missing' });
    expect(judged([value([play])], {}).entries[0]?.verdict).toEqual({ is: 'missing' });
  });
});

describe('what is asked for', () => {
  const tick = (name: string, need: Need = always): FormField => ({ ...common, need, name, kind: 'tick' });
  const box = (name: string, answer: string): FormField => ({
    ...common,
    name,
    kind: 'choice',
    group: 'g',
    question: 'Which?',
    value: answer,
  });

  test('a box that is not ticked is missing', () => {
    expect(judged([tick('a')], { a: off }).isSound).toBe(false);
    expect(judged([tick('a')], { a: on }).isSound).toBe(true);
    expect(judged([tick('a', never)], {}).isSound).toBe(true);
  });

  test('of several boxes one is ticked', () => {
    const boxes = [box('a', 'Left'), box('b', 'Right')];
    expect(judged(boxes, { a: on }).entries).toMatchObject([{ name: 'g', filled: 'Left', verdict: { is: 'noted' } }]);
    expect(judged(boxes, {}).entries).toMatchObject([{ verdict: { is: 'missing' } }]);
    expect(judged(boxes, { a: on, b: on }).entries).toMatchObject([{ verdict: { is: 'contradiction' } }]);
  });

  test('what stands under a box is asked for only where it is ticked, and contradicts where it is not', () => {
    const under: Need = { kind: 'underTick', ticks: ['a'] };
    const fields = [tick('a', never), value([play], { need: under } as Partial<FormField>)];
    expect(judged(fields, {}).isSound).toBe(true);
    expect(judged(fields, { a: on }).entries[1]?.verdict.is).toBe('missing');
    expect(judged(fields, { a: on, v: text('0.05') }).isSound).toBe(true);
    expect(judged(fields, { v: text('0.05') }).entries[1]?.verdict.is).toBe('contradiction');
  });

  test('the last attempt counts', () => {
    const attempt = (number: number): FormField =>
      value([play], {
        name: `v${number}`,
        attempt: { of: 'v', number },
        need: number === 1 ? always : never,
      } as Partial<FormField>);
    const fields = [attempt(1), attempt(2)];
    const second = judged(fields, { v1: text('0.2'), v2: text('0.05') });
    expect(second.entries.map((entry) => entry.verdict.is)).toEqual(['superseded', 'within']);
    expect(second.isSound).toBe(true);
    expect(judged(fields, { v1: text('0.2') }).isSound).toBe(false);
  });

  test('a signature is required unless it is given on paper', () => {
    const sign: FormField = { ...common, name: 's', kind: 'signature' };
    expect(judged([sign], {}).isSound).toBe(false);
    expect(judged([sign], { s: { kind: 'signature', isSigned: true } }).isSound).toBe(true);
    expect(judged([sign], {}, 'en', 'optional').isSound).toBe(true);
  });
});

describe('a plan', () => {
  test('is read as it was written', () => {
    const written = plan([value([play])]);
    expect(readPlan(JSON.stringify(written))).toEqual(written);
  });

  test.each([
    ['no JSON', '{'],
    ['no record', '[]'],
    ['of another form', '{"witnessmarkRecord":2}'],
    ['damaged', '{"witnessmarkRecord":1}'],
    ['damaged', JSON.stringify({ ...plan([]), fields: [{ name: 'v' }] })],
    ['damaged', JSON.stringify({ ...plan([]), fields: [{ ...value([play]), accepts: [{}] }] })],
  ])('that is %s is refused', (words, given) => {
    const read = readPlan(given);
    expect('problem' in read && read.problem).toContain(
      words.replace('no record', 'holds no record').replace('of another form', 'of a form'),
    );
  });
});
