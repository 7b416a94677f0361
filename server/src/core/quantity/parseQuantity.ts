import { plainCharacters } from './characters';
import type { Dimension } from './dimension';
import { candidatesForDual, dualProblems } from './dual';
import type { Quantity, QuantityProblem, QuantityReading, Statement } from './quantity';
import { resolveStatement } from './resolveStatement';
import { Scanner } from './scanner';
import { type ScannedQuantity, type ScannedStatement, scanQuantity } from './scanStatement';

/**
 * Reads a written quantity such as `5.1 ± 0.3 N·m (45 ± 3 lbf·in)`. Every text gives a reading, spans are offsets into
 * `text`, problems are in the order of the text. The quantity is left out where a number or unit is missing or could be
 * more than one.
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
  const { statement, problems } = resolveStatement(scanned.statement, dimension);
  const second = scanned.dual === null ? null : resolveDual(scanned.dual, statement, dimension);
  const all = second === null ? problems : [...problems, ...second.problems];
  const sorted = all.length < 2 ? all : all.toSorted((a, b) => a.span.start - b.span.start);
  if (statement === null) return { problems: sorted };
  const quantity: Quantity = { ...statement, dual: second?.statement ?? null };
  return { quantity, problems: sorted };
}

function resolveDual(
  scanned: ScannedStatement,
  first: Statement | null,
  dimension: Dimension,
): { statement: Statement | null; problems: readonly QuantityProblem[] } {
  const { statement, problems } = resolveStatement(scanned, dimension);
  if (first === null) return { statement, problems };
  if (statement !== null) return { statement, problems: [...problems, ...dualProblems(first, statement)] };
  return { statement, problems: problems.map((problem) => candidatesForDual(problem, scanned, first)) };
}

function trailing(text: string, end: number): QuantityProblem | null {
  const rest = text.slice(end);
  const trimmed = rest.trim();
  if (trimmed === '') return null;
  const start = end + rest.indexOf(trimmed);
  const replacement = /^[.,;]$/.test(trimmed) ? { replacement: '' } : {};
  return { kind: 'trailing-text', span: { start, end: start + trimmed.length }, text: trimmed, ...replacement };
}
