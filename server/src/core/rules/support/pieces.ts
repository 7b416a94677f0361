import type { ProcedureView } from '../../analysis/procedureView';
import { areSame } from '../../analysis/sameParts';
import { type BuildSet, type BuildSpace, valuesByBuild } from '../../builds';
import type { Count } from '../../model/values';
import { type FittedPart, type Fitting, fittedParts, fittingsOf } from './fittings';
import type { SupplyLine } from './kitSupply';

/** Numbers of pieces, each with the builds that it holds for; the sets exclude each other. */
export type Pieces = readonly { readonly number: number; readonly where: BuildSet }[];

/**
 * How many new pieces the procedure fits: the sum of the counts that the instructions state, or all that the unit has
 * where one states none. Undefined where a number cannot be read.
 */
export function piecesNeeded(procedure: ProcedureView, part: string): Pieces | undefined {
  const stretches = fittedParts(procedure).get(part)?.stretches ?? [];
  const known = needs.get(procedure.space) ?? new Map<string, Needed>();
  needs.set(procedure.space, known);
  const before = known.get(part);
  if (before !== undefined && areSame(before.stretches, stretches)) return before.pieces;
  const pieces = sumNeeded(procedure, part, fittingsOf(procedure, part));
  known.set(part, { stretches, pieces });
  return pieces;
}

/** What was needed where the part was fitted at the same places; the last procedure of a family that was looked at. */
interface Needed {
  readonly stretches: readonly FittedPart[];
  readonly pieces: Pieces | undefined;
}

const needs = new WeakMap<BuildSpace, Map<string, Needed>>();

function sumNeeded(procedure: ProcedureView, part: string, all: readonly Fitting[]): Pieces | undefined {
  const always = all.filter((one) => !one.ifNeeded);
  const fittings = always.length > 0 ? always : all;
  const uncounted = procedure.space.union(fittings.filter((one) => one.count === undefined).map((one) => one.where));
  const counted = fittings
    .filter((one) => one.count !== undefined)
    .map((one) => ({ ...one, where: one.where.minus(uncounted) }));
  const whole = piecesInUnit(procedure, part, uncounted);
  const sum =
    counted.length === 0
      ? []
      : sumOf(
          procedure,
          counted.map((one) => term(one, one.count)),
        );
  return whole === undefined || sum === undefined ? undefined : [...whole, ...sum];
}

/** How many pieces the kits hold, by build. Undefined where a number cannot be read. */
export function piecesSupplied(procedure: ProcedureView, lines: readonly SupplyLine[]): Pieces | undefined {
  return sumOf(
    procedure,
    lines.map((one) => term(one, one.line.quantity)),
  );
}

interface Term {
  readonly number: number | undefined;
  readonly where: BuildSet;
}

function term(owner: Fitting | SupplyLine, count: Count | undefined): Term {
  return { number: count?.value, where: owner.where };
}

/** Adds numbers that each hold for some builds; what comes to nothing is left out. */
function sumOf(procedure: ProcedureView, terms: readonly Term[]): Pieces | undefined {
  let cells = new Map([[0, procedure.space.everything]]);
  for (const { number, where } of terms) {
    if (number === undefined) return undefined;
    const next = new Map<number, BuildSet>();
    const put = (sum: number, set: BuildSet): void => {
      if (!set.isEmpty) next.set(sum, next.get(sum)?.or(set) ?? set);
    };
    for (const [sum, set] of cells) {
      put(sum + number, set.and(where));
      put(sum, set.minus(where));
    }
    cells = next;
  }
  return [...cells].flatMap(([number, where]) => (number === 0 ? [] : [{ number, where }]));
}

function piecesInUnit(procedure: ProcedureView, part: string, within: BuildSet): Pieces | undefined {
  if (within.isEmpty) return [];
  const quantity = procedure.family?.part(part)?.quantity;
  if (quantity === undefined) return [{ number: 1, where: within }];
  if (quantity.is === 'one') return known([{ number: quantity.value.value, where: within }]);
  const cases = quantity.cases.flatMap((one) => (one.expr === undefined ? [] : [{ ...one, expr: one.expr }]));
  const otherwise = quantity.cases.find((one) => one.otherwise);
  const { coverage, otherwise: rest } = valuesByBuild(
    procedure.space,
    cases.map(({ key, expr }) => ({ key: key.text, expr })),
    { otherwise: otherwise !== undefined, within },
  );
  const terms = cases.map((one, place) => ({
    number: one.value.value,
    where: coverage[place] ?? procedure.space.nothing,
  }));
  return known([...terms, { number: otherwise === undefined ? 0 : otherwise.value.value, where: rest }]);
}

function known(terms: readonly Term[]): Pieces | undefined {
  const pieces = terms.flatMap(({ number, where }) =>
    number === undefined || where.isEmpty ? [] : [{ number, where }],
  );
  return terms.some((one) => one.number === undefined) ? undefined : pieces;
}
