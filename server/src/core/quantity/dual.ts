import { isRoundingOf } from './compare';
import { convertStatement, convertValue, numbersOf } from './convert';
import { formatQuantity } from './format';
import type { QuantityProblem, Statement } from './quantity';
import type { ScannedStatement } from './scanStatement';
import { unitsOf } from './units';

/** What is wrong with a value in brackets beside the first value: nothing, or that it is not the same value rounded. */
export function dualProblems(first: Statement, dual: Statement): readonly QuantityProblem[] {
  if (isRoundingOf(dual, first)) return [];
  const places = Math.min(...numbersOf(dual).map((number) => number.resolution));
  const converted = formatQuantity(withToleranceOf(dual, convertStatement(first, dual.unit, places)));
  const rightIn = unitsOf(dual.dimension).filter(
    (unit) => unit !== first.unit && isRoundingOf({ ...dual, unit }, first),
  );
  return [{ kind: 'duals-disagree', span: dual.span, converted, rightIn, replacement: converted }];
}

/** A value in brackets that gave no tolerance is not given one by the correction. */
function withToleranceOf(dual: Statement, converted: Statement): Statement {
  const plain = dual.form === 'single' && dual.tolerance.kind === 'none';
  return plain && converted.form === 'single' ? { ...converted, tolerance: { kind: 'none' } } : converted;
}

/** Where the unit in brackets is missing or ambiguous, the first value tells which units its number can be in. */
export function candidatesForDual(
  problem: QuantityProblem,
  scanned: ScannedStatement,
  first: Statement,
): QuantityProblem {
  if ((problem.kind !== 'unit-missing' && problem.kind !== 'unit-ambiguous') || first.form === 'range') return problem;
  const { value, resolution } = scanned.value.scanned.number;
  const fitting = problem.candidates.filter((unit) => {
    const apart =
      unit.dimension === first.dimension ? convertValue(first.number.value, first.unit, unit) - value : Number.NaN;
    return unit !== first.unit && Math.abs(apart) <= resolution / 2;
  });
  return fitting.length === 0 ? problem : { ...problem, candidates: fitting };
}
