import type { Instruction, Reading, Sum } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { never } from './formField';

/** The names of a reading's blanks, and of those in which the record asks for what came out in the end. */
export interface NamedReading {
  readonly blanks: Pick<Instruction, 'reading' | 'sum'>;
  readonly final: readonly string[];
}

/** The first attempt is asked for; a later one is made only where the first failed. */
export function nameReadings(reading: Reading, sum: Sum | undefined, at: FieldPlace, asking: Asking): NamedReading {
  const rounds = sum?.rounds ?? reading.rounds ?? 1;
  const cells = cellsOf(reading);
  const fields = cells.map((row) =>
    times(rounds, (round) => row.map((cell) => valueField(reading, cell, round, rounds, at, asking))),
  );
  const final = rounds === 1 ? fields.flat(2) : cells.flat().map((cell) => finalField(reading, cell, at, asking));
  if (sum === undefined) return { blanks: { reading: withNames(reading, { fields }) }, final };
  return { blanks: { reading, sum: nameSum(sum, fields.flat(2), at, asking) }, final };
}

/** One blank of a reading: which row and place, and what it is called. */
interface Cell {
  readonly parts: readonly number[];
  readonly what: string;
}

function cellsOf({ name, rows, places }: Reading): Cell[][] {
  return orOne(rows).map((row, rowIndex) =>
    orOne(places).map((place, placeIndex) => ({
      parts: [rowIndex + 1, placeIndex + 1],
      what: [name, row, place].filter((each) => each !== '').join(', '),
    })),
  );
}

function orOne(names: readonly string[]): readonly string[] {
  return names.length === 0 ? [''] : names;
}

function valueField(
  reading: Reading,
  { parts, what }: Cell,
  round: number,
  rounds: number,
  at: FieldPlace,
  asking: Asking,
): string {
  const place = round === 0 ? at : { ...at, need: never };
  const attempt = { of: [...at.path, 'reading', ...parts].join('/'), number: round + 1 };
  return asking.field(place, ['reading', ...parts, round + 1], {
    kind: 'value',
    unit: reading.unit,
    accepts: reading.accepts ?? [],
    ...(rounds === 1 ? {} : { attempt }),
    what: rounds === 1 ? what : `${what} (${round + 1})`,
  });
}

function finalField(reading: Reading, { parts, what }: Cell, at: FieldPlace, asking: Asking): string {
  const accepts = reading.accepts ?? [];
  return asking.field(at, ['reading', ...parts, 'final'], { kind: 'value', unit: reading.unit, accepts, what });
}

/** The terms of a sum are written down beside its result, once a round. */
function nameSum(sum: Sum, results: readonly string[], at: FieldPlace, asking: Asking): Sum {
  const terms = sum.terms.map((term, index) => {
    const { amount } = term;
    if (amount.kind !== 'blank') return term;
    const fields = times(sum.rounds, (round) =>
      asking.field(round === 0 ? at : { ...at, need: never }, ['term', index + 1, round + 1], {
        kind: 'value',
        unit: amount.unit,
        accepts: [],
        what: sum.rounds === 1 ? term.name : `${term.name} (${round + 1})`,
      }),
    );
    return withNames(term, { fields });
  });
  return withNames({ ...sum, terms }, { fields: results });
}

function times<Value>(count: number, make: (index: number) => Value): Value[] {
  return Array.from({ length: count }, (_, index) => make(index));
}
