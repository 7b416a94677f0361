import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../server/src/core/quantity';
import type { Dimension } from '../../server/src/core/quantity/dimension';
import { faceForThread } from '../../server/src/core/standards/bearingFaces';
import { type CalculationStep, step } from '../../server/src/core/standards/calculation';
import { stackUp } from '../../server/src/core/standards/stackUp';
import { readThreadDesignation } from '../../server/src/core/standards/threadDesignation';
import { torqueBand } from '../../server/src/core/standards/torqueBand';
import { evaluate } from '../../server/src/core/workings/arithmetic';
import { calculationLines } from '../../server/src/core/workings/calculationText';
import { quantityWorking } from '../../server/src/core/workings/quantityWorking';
import type { Working } from '../../server/src/core/workings/working';
import { workingMarkdown } from '../../server/src/core/workings/workingMarkdown';
import { workingText } from '../../server/src/core/workings/workingText';

const WORKING: Working = {
  title: 'torque of the nut',
  builds: 'V4-20',
  rows: [
    { label: 'stated', text: '5 N·m' },
    { label: 'weakest part', text: 'bolt of class 8.8' },
  ],
  steps: [
    step('d', 'nominal diameter', 'given', 5, 'mm'),
    step('P', 'pitch', 'given', 0.8, 'mm'),
    step('A_s', 'stress area', 'π/4·(d − 0.9382·P)²', 14.1826, 'mm²'),
    step('S_p', 'proof stress', 'ISO 898-1:2013', 580, 'MPa'),
    step('F', 'preload', 'S_p·A_s', 8225.9, 'N'),
  ],
  missing: ['the property class of the shaft'],
  sources: ['ISO 898-1:2013', 'VDI 2230'],
};

function equationOf(steps: readonly CalculationStep[], symbol: string): string {
  const line = calculationLines(steps).findLast((one) => one.symbol === symbol);
  return `${symbol} = ${line?.equals.join(' = ')}`;
}

describe('a working as text', () => {
  test('fits a screen: title, rows, calculation with its numbers, what is not known, sources', () => {
    expect(workingText(WORKING)).toBe(`Torque of the nut (V4-20)
  Stated        5 N·m
  Weakest part  bolt of class 8.8

  Given         d = 5 mm (nominal diameter), P = 0.8 mm (pitch),
                S_p = 580 MPa (proof stress, ISO 898-1:2013)
  Stress area   A_s = π/4·(d − 0.9382·P)² = π/4·(5 − 0.9382·0.8)² = 14.2 mm²
  Preload       F = S_p·A_s = 580·14.2 = 8230 N

  Not known: the property class of the shaft
  Sources: ISO 898-1:2013; VDI 2230`);
  });

  test('keeps to the width, and no number is torn from its unit', () => {
    const text = 'about 12.5 N·m and then 110.25 N·m and again 7.125 N·m on the long way to the end of it all';
    const narrow = workingText({ ...WORKING, rows: [{ label: 'a', text }], steps: [] }, 50).split('\n');
    expect(narrow.filter((line) => [...line].length > 50)).toEqual([]);
    expect(narrow.join('\n')).not.toMatch(/\d\n\s*N·m/);
    expect(narrow.join(' ').replace(/\s+/g, ' ')).toContain(text);
  });

  test('with nothing but a title is the title', () => {
    expect(workingText({ title: 'x', builds: '', rows: [], steps: [], missing: [], sources: [] })).toBe('X');
  });
});

describe('a working as Markdown', () => {
  test('is a table, then the calculation as a block of code', () => {
    expect(workingMarkdown(WORKING)).toBe(`| Torque of the nut | V4-20 |
|:--|:--|
| Stated | 5 N·m |
| Weakest part | bolt of class 8.8 |

*Not known: the property class of the shaft*

\`\`\`text
d = 5 mm, P = 0.8 mm, S_p = 580 MPa (ISO 898-1:2013)
A_s = π/4·(d − 0.9382·P)² = π/4·(5 − 0.9382·0.8)² = 14.2 mm²  stress area
F = S_p·A_s = 580·14.2 = 8230 N  preload
\`\`\`

Sources: ISO 898-1:2013; VDI 2230`);
  });

  test('takes no text for markup', () => {
    const rows = [{ label: 'a|b', text: '<script> *x* [y](z) `w`\n| row' }];
    const lines = workingMarkdown({ ...WORKING, rows, steps: [], missing: [] }).split('\n');
    expect(lines[2]).toBe('| A\\|b | \\<script\\> \\*x\\* \\[y\\](z) \\`w\\` \\| row |');
  });
});

describe('numbers set into a formula', () => {
  test('are those of the lines before, the latest value of a symbol', () => {
    const steps = [step('µ', '', 'given', 0.1, ''), step('F', '', '2·µ', 0.2, 'N')];
    const again = [...steps, step('µ', '', 'given', 0.14, ''), step('F', '', '2·µ', 0.28, 'N')];
    expect(equationOf(steps, 'F')).toBe('F = 2·µ = 2·0.1 = 0.2 N');
    // The formula is not spelt out again.
    expect(equationOf(again, 'F')).toBe('F = 2·0.14 = 0.28 N');
  });

  test('stand behind what is given; a symbol that gets another value begins anew', () => {
    const given = (symbol: string, value: number) => step(symbol, symbol, 'given', value, '');
    const low = [given('a', 1), step('F', '', '2·a', 2, ''), given('b', 3), step('M', '', 'F·b', 6, '')];
    const high = [given('a', 5), step('F', '', '2·a', 10, ''), given('b', 4), step('M', '', 'F·b', 40, '')];
    const lines = calculationLines([...low, ...high]).map(({ symbol, equals }) => `${symbol} = ${equals.at(-1)}`);
    expect(lines).toEqual(['a = 1', 'b = 3', 'F = 2', 'M = 6', 'a = 5', 'b = 4', 'F = 10', 'M = 40']);
  });

  test('show the power of ten between the units', () => {
    const steps = [step('F', '', 'given', 8000, 'N'), step('l', '', 'given', 2, 'mm'), step('M', '', 'F·l', 16, 'N·m')];
    expect(equationOf(steps, 'M')).toBe('M = F·l = 8000·2·10⁻³ = 16 N·m');
  });

  test('make a share of a hundred without a factor', () => {
    const steps = [
      step('a', '', 'given', 0.3, 'mm'),
      step('b', '', 'given', 1.7, 'mm'),
      step('s', '', 'a/b', 17.647, '%'),
    ];
    expect(equationOf(steps, 's')).toBe('s = a/b = 0.3/1.7 = 17.6 %');
  });

  test('are left out where a symbol is not known, or the formula does not come out at the value', () => {
    expect(equationOf([step('D', '', '(a + b)/2', 6.2, 'mm')], 'D')).toBe('D = (a + b)/2 = 6.2 mm');
    const steps = [step('a', '', 'given', 2, ''), step('b', '', 'a·3', 7, '')];
    expect(equationOf(steps, 'b')).toBe('b = a·3 = 7');
  });

  test('write sums out, each term with its sign', () => {
    const bounds = (lowest: number, highest: number) => ({ lowest, nominal: (lowest + highest) / 2, highest });
    const stack = stackUp([
      { name: 'bore', sign: 1, bounds: bounds(8.024, 8.03) },
      { name: 'journal', sign: -1, bounds: bounds(7.988, 7.996) },
    ]);
    const steps = stack.kind === 'bounded' ? stack.steps : [];
    expect(equationOf(steps, 'X')).toBe('X = Σ ±x = 8.027 − 7.992 = 0.035 mm');
    expect(equationOf(steps, 'T')).toBe('T = Σ (x_max − x_min)/2 = (8.03 − 8.024)/2 + (7.996 − 7.988)/2 = 0.007 mm');
  });

  test('come out at the value that is shown, by an arithmetic that is not ours', () => {
    const math = create(all ?? {});
    const thread = readThreadDesignation('M5×0.8').designation;
    if (thread === undefined) throw new Error('no thread');
    const propertyClass = { system: 'ISO 898-1', name: '8.8' } as const;
    const parts = [{ role: 'bolt' as const, propertyClass }];
    const band = torqueBand({ thread, face: faceForThread(thread), parts, friction: { kind: 'unknown' } });
    const steps = band === undefined ? [] : [...band.high.steps, ...band.low.steps, ...band.proof.steps];
    const filled = calculationLines(steps).flatMap(({ equals }) => (equals.length > 1 ? [equals.slice(-2)] : []));
    const checked = filled.flatMap(([formula = '', result = '']) => {
      const expression = asMath(formula);
      return /[a-zA-Z_]/.test(expression.replace(/pi|sqrt/g, '')) ? [] : [[Number(math.evaluate(expression)), result]];
    });
    expect(checked.length).toBeGreaterThan(8);
    for (const [value, result] of checked as [number, string][]) {
      const shown = Number(result.replace(/(\d) (?=\d{3})/g, '$1').split(' ')[0]);
      expect(Math.abs(value / shown - 1), result).toBeLessThan(0.01);
    }
  });
});

function asMath(formula: string): string {
  return formula
    .replace('·10⁻³', '/1000')
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('√', 'sqrt')
    .replaceAll('π', 'pi');
}

test.each([
  ['π/4·(5 − 0.9382·0.8)²', 14.1826],
  ['2π·60/60', 6.2832],
  ['√(9 + 4²)·2', 10],
  ['−3 + 10', 7],
  ['1/2/2', 0.25],
  ['2³', 8],
])('%s is worked out', (expression, value) => {
  expect(evaluate(expression)).toBeCloseTo(value, 3);
});

test.each(['', '2·', '(1', 'a·2', '1 : 2', '1/0', '√(0 − 1)'])('"%s" is worked out to nothing', (expression) => {
  expect(evaluate(expression)).toBeUndefined();
});

describe('a quantity', () => {
  const rowsOf = (text: string, dimension: Dimension): string[] => {
    const { quantity } = parseQuantity(text, dimension);
    const working = quantity && quantityWorking(quantity);
    return (working?.rows ?? []).map(({ label, text: shown }) => `${label} ${shown}`);
  };

  test('is shown in every unit of the trade, with the ends of its tolerance', () => {
    expect(rowsOf('5.1 ± 0.3 N·m (45 ± 3 lbf·in)', 'torque')).toEqual([
      'allows 4.8 to 5.4 N·m, ± 5.9 %',
      'in lbf·ft 3.76 ± 0.22 lbf·ft (3.54 to 3.98)',
      'in lbf·in 45.1 ± 2.7 lbf·in (42.5 to 47.8)',
      'in kgf·cm 52.0 ± 3.1 kgf·cm (48.9 to 55.1)',
      'in brackets 45 ± 3 lbf·in: the same, rounded',
    ]);
  });

  test.each<[string, Dimension, string[]]>([
    ['0.04..0.09 mm', 'length', ['middle 0.065 ± 0.025 mm', 'in in 0.00157 to 0.00354 in', 'in µm 40 to 90 µm']],
    ['≤ 0.05 mm', 'length', ['in in ≤ 0.00197 in', 'in µm ≤ 50 µm']],
    ['80 ± 5 °C', 'temperature', ['allows 75 to 85 °C', 'in °F 176 ± 9 °F (167 to 185)']],
    ['8 mm', 'length', ['in in 0.315 in']],
    ['4 %', 'ratio', []],
  ])('%s', (text, dimension, rows) => {
    expect(rowsOf(text, dimension)).toEqual(rows);
  });

  test('whose second value disagrees is told so', () => {
    expect(rowsOf('45 lbf·in (5.2 N·m)', 'torque')).toContain('in brackets 5.2 N·m: not the same, which is 5.08 N·m');
  });
});
