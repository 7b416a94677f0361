import { describe, expect, test } from 'vitest';
import { type Dimension, parseQuantity, type QuantityProblem } from '../../server/src/core/quantity';

/** Problems as `kind "underlined" -> "replacement"`, short enough for a table. */
function problemsIn(text: string, dimension: Dimension = 'torque'): string {
  return parseQuantity(text, dimension)
    .problems.map((problem) => describeProblem(text, problem))
    .join('; ');
}

function describeProblem(text: string, problem: QuantityProblem): string {
  const underlined = `${problem.kind} "${text.slice(problem.span.start, problem.span.end)}"`;
  return problem.replacement === undefined ? underlined : `${underlined} -> "${problem.replacement}"`;
}

type Row = readonly [text: string, expected: string, dimension?: Dimension];

const rows: readonly Row[] = [
  ['', 'number-missing ""'],
  ['hand tight', 'number-missing "hand tight"'],
  ['5.1', 'unit-missing "5.1"'],
  ['5.1 ± 0.3', 'unit-missing "5.1 ± 0.3"'],
  ['5.1 ± 6 %', 'unit-missing "5.1"'],
  ['2 N·m + 110', 'unit-missing "110"'],
  ['5.1 Nxx', 'unit-unknown "Nxx"'],
  ['45 lbf-fr', 'unit-unknown "lbf-fr"'],
  ['5 MV', 'unit-unknown "MV"', 'voltage'],
  ['5 mpa', 'unit-unknown "mpa"', 'pressure'],
  ['45 lb', 'unit-ambiguous "lb"'],
  ['45 lbs', 'unit-ambiguous "lbs"'],
  ['45 #', 'unit-ambiguous "#"'],
  ['45 pounds', 'unit-ambiguous "pounds"'],
  ['4 kg', 'unit-ambiguous "kg"'],
  ['45 psi', 'unit-ambiguous "psi"'],
  ['120°', 'unit-ambiguous "°"', 'temperature'],
  ['5m', 'unit-ambiguous "m"', 'length'],
  ['3/8"', 'unit-ambiguous """ -> " in"', 'length'],
  ["5'", 'unit-ambiguous "\'" -> "′"', 'angle'],
  ['5.1 Nm', 'unit-spelling "Nm" -> "N·m"'],
  ['5.1Nm', 'unit-spelling "Nm" -> " N·m"'],
  ['5.1N·m', 'unit-spelling "N·m" -> " N·m"'],
  ['5.1  N·m', 'unit-spelling "  N·m" -> " N·m"'],
  ['5.1 N·m.', 'unit-spelling "N·m." -> "N·m"'],
  ['110 °', 'unit-spelling " °" -> "°"', 'angle'],
  ['45 in-lb', 'unit-spelling "in-lb" -> "lbf·in"'],
  ['45 ft. lbs.', 'unit-spelling "ft. lbs." -> "lbf·ft"'],
  ['45 inch pounds', 'unit-spelling "inch pounds" -> "lbf·in"'],
  ['80 oz-in', 'unit-spelling "oz-in" -> "ozf·in"'],
  ['80 oz-in', 'unit-spelling "oz-in" -> "oz·in"', 'unbalance'],
  ['45 mm', 'wrong-dimension "mm"'],
  ['5 N·m', 'wrong-dimension "N·m"', 'length'],
  ['5,1 N·m', 'decimal-comma "5,1" -> "5.1"'],
  ['0,125 mm', 'decimal-comma "0,125" -> "0.125"', 'length'],
  ['1.234,5 N', 'decimal-comma "1.234,5" -> "1234.5"', 'force'],
  ['150,000 rpm', 'decimal-comma "150,000"', 'rotational-speed'],
  ['1,234,567 rpm', 'decimal-comma "1,234,567" -> "1 234 567"', 'rotational-speed'],
  ['5 N·m ± 300 mN·m', 'units-mixed "300 mN·m" -> "0.3 N·m"'],
  ['5.4..4.8 N·m', 'range-reversed "5.4..4.8" -> "4.8..5.4"'],
  ['5.1 ± 0.3 N·m (47 ± 3 lbf·in)', 'duals-disagree "47 ± 3 lbf·in" -> "45 ± 3 lbf·in"'],
  ['5.1 ± 0.3 N·m (45 ± 4 lbf·in)', 'duals-disagree "45 ± 4 lbf·in" -> "45 ± 3 lbf·in"'],
  ['5.1 N·m (45 lbf·ft)', 'duals-disagree "45 lbf·ft" -> "4 lbf·ft"'],
  ['2 N·m + 110° (18 lbf·in + 90°)', 'duals-disagree "18 lbf·in + 90°" -> "18 lbf·in + 110°"'],
  ['4.8..5.4 N·m (42..50 lbf·in)', 'duals-disagree "42..50 lbf·in" -> "42..48 lbf·in"'],
  ['5.1 N·m dry', 'trailing-text "dry"'],
  ['5.1 N·m (45 lbf·in', 'trailing-text "(45 lbf·in"'],
  ['≤ 5 ± 1 N·m', 'unit-missing "≤ 5"; trailing-text "± 1 N·m"'],
];

describe('what is wrong is named, underlined and, where certain, replaced', () => {
  test.each(rows.map((row) => ({ row, name: row[0] })))('$name', ({ row }) => {
    const [text, expected, dimension] = row;
    expect(problemsIn(text, dimension)).toBe(expected);
  });
});

test.each([
  ['5.1 Nm', false],
  ['45 ft-lb', false],
  ['5.1 NM', true],
  ['5.1 nm', true],
  ['3 kgm', true],
  ['3 mkp', true],
])('%s is doubtful: %s', (text, doubtful) => {
  expect(parseQuantity(text, 'torque').problems).toMatchObject([{ kind: 'unit-spelling', doubtful }]);
});

const symbols = (units: readonly { symbol: string }[]) => units.map((unit) => unit.symbol).join(' ');

function offered(text: string, dimension: Dimension): string {
  const problem = parseQuantity(text, dimension).problems[0];
  if (problem === undefined) return '';
  if ('candidates' in problem) return symbols(problem.candidates);
  if (problem.kind === 'unit-unknown') return symbols(problem.nearest);
  return problem.kind === 'duals-disagree' ? symbols(problem.rightIn) : '';
}

test.each<[string, Dimension, string]>([
  ['45', 'torque', 'N·m lbf·ft lbf·in'],
  ['45 lb', 'torque', 'lbf·ft lbf·in'],
  ['45 kg', 'torque', 'kgf·m kgf·cm'],
  ['45 mm', 'torque', 'N·m lbf·ft lbf·in'],
  ['5 psia', 'pressure', 'psi'],
  ['5m', 'length', 'thou mm m'],
  // The value before the bracket tells which unit the bracket can be in.
  ['5.1 N·m (45)', 'torque', 'lbf·in'],
  ['5.1 N·m (45 lb)', 'torque', 'lbf·in'],
  ['5.1 N·m (45 lbf·ft)', 'torque', 'lbf·in'],
])('%s as a %s offers %s', (text, dimension, expected) => {
  expect(offered(text, dimension)).toBe(expected);
});

test('a comma that can be two numbers gives both and no quantity', () => {
  const { quantity, problems } = parseQuantity('150,000 rpm', 'rotational-speed');
  expect(quantity).toBeUndefined();
  expect(problems).toMatchObject([{ readings: ['150.000', '150 000'] }]);
});

test('a wrong value in brackets does not hide the first one', () => {
  const { quantity } = parseQuantity('5.1 N·m (45 lb)', 'torque');
  expect(quantity).toMatchObject({ form: 'single', number: { value: 5.1 }, dual: null });
});

test('applying the replacements leaves nothing to replace', () => {
  for (const [text, , dimension = 'torque'] of rows) {
    const { problems } = parseQuantity(text, dimension);
    const [first] = problems;
    if (first?.replacement === undefined || problems.length > 1) continue;
    const mended = text.slice(0, first.span.start) + first.replacement + text.slice(first.span.end);
    expect(problemsIn(mended, dimension), mended).toBe('');
  }
});
