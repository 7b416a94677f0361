import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designationProblemWords } from '../../server/src/core/standards/designationProblemWords';
import {
  formatDesignation,
  readThreadDesignation,
  type ThreadDesignation,
  threadDifferences,
} from '../../server/src/core/standards/threadDesignation';

function read(text: string): ThreadDesignation {
  const { designation, problems } = readThreadDesignation(text);
  expect(problems).toEqual([]);
  if (designation === undefined) throw new Error(`${text} was not read`);
  return designation;
}

function partsOf(text: string): string[] {
  return read(text).parts.map(({ kind, span }) => `${kind} ${text.slice(span.start, span.end)}`);
}

function problemsOf(text: string): string[] {
  return readThreadDesignation(text).problems.map(({ kind, span }) => `${kind} ${text.slice(span.start, span.end)}`);
}

describe('metric threads', () => {
  test.each([
    ['M5', 5, 0.8, 'right', ''],
    ['M16', 16, 2, 'right', ''],
    ['M5×0.8', 5, 0.8, 'right', ''],
    ['M5x0.8', 5, 0.8, 'right', ''],
    ['M 5 x 0,8', 5, 0.8, 'right', ''],
    ['M10×1-6H', 10, 1, 'right', '6H'],
    ['M5×0.8-6g', 5, 0.8, 'right', '6g'],
    ['M10×1.5-6H/6g', 10, 1.5, 'right', '6H/6g'],
    ['M10-1.5', 10, 1.5, 'right', ''],
    ['M10-6g', 10, 1.5, 'right', '6g'],
    ['M10x1-LH', 10, 1, 'left', ''],
    ['M16×1 LH-6G', 16, 1, 'left', '6G'],
    ['M6×0.75-5h6h-S-LH', 6, 0.75, 'left', '5h6h'],
    ['M8×1 left-hand', 8, 1, 'left', ''],
    ['M8-LH', 8, 1.25, 'left', ''],
    ['M8×1-RH', 8, 1, 'right', ''],
  ] as const)('%s', (text, diameter, pitch, hand, toleranceClass) => {
    expect(read(text)).toMatchObject({ system: 'metric', diameter, pitch, hand, toleranceClass });
  });

  test('say whether the pitch was written', () => {
    expect(read('M5')).toMatchObject({ pitchFrom: 'coarse-series' });
    expect(read('M5×0.8')).toMatchObject({ pitchFrom: 'written' });
  });

  test('say what stands where', () => {
    expect(partsOf('M6×0.75-5h6h-S-LH')).toEqual(['size M6', 'pitch 0.75', 'class 5h6h', 'engagement S', 'hand LH']);
    expect(partsOf(' M5 x 0,8 LH')).toEqual(['size M5', 'pitch 0,8', 'hand LH']);
  });
});

describe('unified threads', () => {
  test.each([
    ['1/4-20 UNC-2A', '1/4', 20, 'UNC', 'right', '2A'],
    ['1/4-28 UNF', '1/4', 28, 'UNF', 'right', ''],
    ['#10-32 UNF', '#10', 32, 'UNF', 'right', ''],
    ['10-32 UNF-2B LH', '#10', 32, 'UNF', 'left', '2B'],
    ['10-32', '#10', 32, 'UNF', 'right', ''],
    ['No. 8-32', '#8', 32, 'UNC', 'right', ''],
    ['.190-32', '#10', 32, 'UNF', 'right', ''],
    ['0.250-28 UNF-3A', '1/4', 28, 'UNF', 'right', '3A'],
    ['1/2-13 UNC-2A LH', '1/2', 13, 'UNC', 'left', '2A'],
    ['1/4-20 UNC-2A-LH', '1/4', 20, 'UNC', 'left', '2A'],
    ['1/4"-20', '1/4', 20, 'UNC', 'right', ''],
    ['1-8 UNC', '1', 8, 'UNC', 'right', ''],
    ['1-1/8-7', '1-1/8', 7, 'none', 'right', ''],
    ['1/4-27', '1/4', 27, 'none', 'right', ''],
    ['2-56', '#2', 56, 'UNC', 'right', ''],
    ['7/16-20 UNRF', '7/16', 20, 'UNF', 'right', ''],
    ['1/4-28 unf-2b', '1/4', 28, 'UNF', 'right', '2B'],
    ['7/8-16 UN', '7/8', 16, 'UN', 'right', ''],
  ] as const)('%s', (text, size, threadsPerInch, series, hand, toleranceClass) => {
    expect(read(text)).toMatchObject({ system: 'unified', size, threadsPerInch, series, hand, toleranceClass });
  });

  test('have diameter and pitch in millimetres', () => {
    const { diameter, pitch } = read('1/4-20 UNC');
    expect(diameter).toBeCloseTo(6.35, 12);
    expect(pitch).toBeCloseTo(1.27, 12);
  });

  test('get their pitch from the series and their series from the pitch', () => {
    expect(read('1/4 UNF')).toMatchObject({ threadsPerInch: 28, pitchFrom: 'series', seriesFrom: 'written' });
    expect(read('7/16-20')).toMatchObject({ pitchFrom: 'written', series: 'UNF', seriesFrom: 'tables' });
    expect(read('1/4-27')).toMatchObject({ series: 'none', seriesFrom: 'nowhere' });
  });

  test('say what stands where', () => {
    expect(partsOf('1/4-20 UNC-2A-LH')).toEqual(['size 1/4', 'pitch 20', 'series UNC', 'class 2A', 'hand LH']);
  });
});

describe('what is no designation', () => {
  test.each([
    ['', 'empty '],
    ['   ', 'empty    '],
    ['bolt', 'not-a-thread bolt'],
    ['Mutter', 'not-a-thread Mutter'],
    ['5 mm', 'not-a-thread 5 mm'],
    ['10', 'not-a-thread 10'],
    ['M', 'diameter-missing M'],
    ['M0', 'diameter-missing M0'],
    ['M5×', 'pitch-missing ×'],
    ['1/4', 'pitch-missing 1/4'],
    ['#10', 'pitch-missing #10'],
    ['1/4-', 'pitch-missing -'],
    ['M23', 'pitch-unknown M23'],
    ['M5×8', 'pitch-too-coarse 8'],
    ['1/0-20', 'not-a-thread 1/0-20'],
    ['Tr8×1.5', 'other-system Tr8×1.5'],
    ['G 1/4', 'other-system G 1/4'],
    ['1/8-27 NPT', 'other-system 1/8-27 NPT'],
    ['#10-32 UNJF', 'other-system #10-32 UNJF'],
    ['M16×Ph3P1.5', 'other-system M16×Ph3P1.5'],
  ])('%j: %s', (text, problem) => {
    expect(problemsOf(text)).toEqual([problem]);
    expect(readThreadDesignation(text).designation).toBeUndefined();
  });

  test.each([
    ['M5×0.8 bolt', 'trailing-text bolt', 'M5×0.8'],
    ['M5×0.8-', 'trailing-text -', 'M5×0.8'],
    ['M5×0.8-6Q', 'class-unread 6Q', 'M5×0.8'],
    ['M10-6', 'class-unread 6', 'M10×1.5'],
    ['M8×1-LH-LH', 'trailing-text LH', 'M8×1-LH'],
    ['1/4-20 UNF', 'series-contradicts-pitch UNF', '1/4-20 UNF'],
  ])('%j is read as far as it goes: %s', (text, problem, understood) => {
    const { designation } = readThreadDesignation(text);
    expect(problemsOf(text)).toEqual([problem]);
    expect(designation && formatDesignation(designation)).toBe(understood);
  });

  test('a lost decimal point is told with the pitches that there are', () => {
    expect(readThreadDesignation('M5×8').problems[0]).toMatchObject({ standard: [0.8, 0.5] });
  });

  test('a contradicting series is told with the count that it has', () => {
    expect(readThreadDesignation('1/4-20 UNF').problems[0]).toMatchObject({ series: 'UNF', threadsPerInch: 28 });
  });

  test('half-typed and spoilt text never throws, and every span lies in it', () => {
    const whole = fc.constantFrom(
      'M10×1-6H',
      'M6×0.75-5h6h-S-LH',
      '1/4-20 UNC-2A-LH',
      '#10-32 UNF',
      '1-1/8-7',
      '.190-32',
    );
    const typed = fc.tuple(whole, fc.nat(20), fc.string({ maxLength: 4 })).map(([text, at, more]) => {
      return text.slice(0, at) + more + text.slice(at + 1);
    });
    fc.assert(
      fc.property(fc.oneof(typed, fc.string({ unit: fc.constantFrom(...'M#/-.,×x 0123456789UNCFELHAB"') })), (text) => {
        const { designation, problems } = readThreadDesignation(text);
        expect(designation !== undefined || problems.length > 0).toBe(true);
        for (const { span } of [...problems, ...(designation?.parts ?? [])]) {
          expect(span.start).toBeLessThanOrEqual(span.end);
          expect(span.end).toBeLessThanOrEqual(text.length);
        }
        for (const problem of problems) expect(designationProblemWords(problem)).toMatch(/^\S.*[^.]$/s);
        if (designation !== undefined) expect(designation.pitch).toBeGreaterThan(0);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('writing a designation', () => {
  test.each([
    ['M5', 'M5×0.8'],
    ['M16×1 LH-6G', 'M16×1-6G-LH'],
    ['M6x0,75-5h6h-S-LH', 'M6×0.75-5h6h-S-LH'],
    ['10-32 UNF-2b LH', '#10-32 UNF-2B-LH'],
    ['.190-32', '#10-32 UNF'],
    ['1/4-27', '1/4-27'],
  ])('%s becomes %s, which reads the same', (text, expected) => {
    const written = formatDesignation(read(text));
    expect(written).toBe(expected);
    expect(formatDesignation(read(written))).toBe(expected);
  });
});

describe('two threads', () => {
  test.each([
    ['M5', 'M5×0.8-6H', []],
    ['M5×0.8', 'M5×0.5', ['pitch']],
    ['M5', 'M6', ['diameter', 'pitch']],
    ['M8×1', 'M8×1-LH', ['hand']],
    ['.190-32', '#10-32 UNF-2B', []],
    ['1/4-28 UNF', '1/4-20 UNC', ['pitch']],
    ['M6×1', '1/4-20 UNC', ['diameter', 'pitch']],
  ] as const)('%s and %s differ in %j', (one, other, differences) => {
    expect(threadDifferences(read(one), read(other))).toEqual(differences);
  });
});
