import { plainCharacters } from './characters';
import { isRoundingOf } from './compare';
import { convertStatement, numbersOf } from './convert';
import type { Dimension } from './dimension';
import { formatQuantity } from './format';
import type { Quantity, QuantityProblem, QuantityReading, Statement } from './quantity';
import { resolveStatement } from './resolveStatement';
import { Scanner } from './scanner';
import { type ScannedQuantity, scanQuantity } from './scanStatement';

/**
 * Reads a written quantity such as `5.1 ± 0.3 N·m (45 ± 3 lbf·in)`. Every text gives a reading, and spans are offsets into `text`.
 * The quantity is left out where a number or unit is missing or could be more than one.
 */
export function parseQuantity(text: string, dimension: Dimension): QuantityReading {
  const scanner = new Scanner(plainCharacters(text), 0, 'value');
  const scanned = scanQuantity(scanner);
  if (scanned === null) return { problems: [{ kind: 'number-missing', span: { start: 0, end: text.length } }] };
  const reading = resolveQuantity(scanned, dimension);
  const rest = trailing(scanner.text, scanned.end);
  return rest === null ? reading : { ...reading, problems: [...reading.problems, rest] };
}

/** Reads what was scanned as a quantity of one dimension, double included. */
export function resolveQuantity(scanned: ScannedQuantity, dimension: Dimension): QuantityReading {
  const problems: QuantityProblem[] = [];
  const first = resolveStatement(scanned.statement, dimension);
  const second = scanned.dual === null ? null : resolveStatement(scanned.dual, dimension);
  problems.push(...first.problems, ...(second?.problems ?? []));
  const dual = second?.statement ?? null;
  if (first.statement === null) return { problems };
  if (dual !== null && !isRoundingOf(dual, first.statement)) problems.push(disagreement(first.statement, dual));
  const quantity: Quantity = { ...first.statement, dual };
  return { quantity, problems };
}

function disagreement(first: Statement, dual: Statement): QuantityProblem {
  const places = Math.min(...numbersOf(dual).map((number) => number.resolution));
  const converted = formatQuantity(withoutToleranceUnless(dual, convertStatement(first, dual.unit, places)));
  return { kind: 'duals-disagree', span: dual.span, converted, replacement: converted };
}

/** A double that gave no tolerance is not given one by a correction of its value. */
function withoutToleranceUnless(dual: Statement, converted: Statement): Statement {
  const plain = dual.form === 'single' && dual.tolerance.kind === 'none';
  return plain && converted.form === 'single' ? { ...converted, tolerance: { kind: 'none' } } : converted;
}

function trailing(text: string, end: number): QuantityProblem | null {
  const rest = text.slice(end);
  const trimmed = rest.trim();
  if (trimmed === '') return null;
  const start = end + rest.indexOf(trimmed);
  const replacement = /^[.,;]$/.test(trimmed) ? { replacement: '' } : {};
  return { kind: 'trailing-text', span: { start, end: start + trimmed.length }, text: trimmed, ...replacement };
}
