import type { Acceptance } from '../acceptance';
import { capital } from '../sentences/grammar';
import type { Sheet } from '../sheet';
import type { Asking, FieldPlace } from './asking';
import { always, never } from './formField';
import type { AskedInSteps } from './stepFields';

/** What is asked for in more than one place is one field, filled in once. */
export interface SharedFields {
  /** Of a box by its label. */
  box(label: string): string | undefined;
  /** The same by label, for the boxes on the first page. */
  readonly boxes: Readonly<Record<string, string>>;
  /** The names for the blanks or boxes of a cell, by table, row and column, each counted from 0. */
  cell(table: string, row: number, column: number): readonly string[] | undefined;
  /** The box that says that a row holds at all. */
  applies(table: string, row: number): string | undefined;
  /** What the values of a row are judged by, where no step asks for them. */
  accepts(table: string, row: number): readonly Acceptance[];
}

export function sharedFields(sheet: Sheet, asked: AskedInSteps, asking: Asking): SharedFields {
  const { labels } = asking;
  const unit: FieldPlace = { path: ['unit'], words: labels.record, need: never };
  const boxes = new Map([
    [labels.unitSerial, asking.text({ ...unit, need: always }, 'serial', labels.unitSerial)],
    [labels.orderNumber, asking.text(unit, 'order', labels.orderNumber)],
  ]);
  const readings = readingsByRow(sheet, asked);
  const tables = cellsByTable(sheet, asked, readings, asking);
  return {
    box: (label) => boxes.get(label),
    boxes: Object.fromEntries(boxes),
    cell: (table, row, column) => tables.get(table)?.(row, column),
    applies: (table, row) => (table === 'records' ? readings[row]?.applies : undefined),
    accepts: (table, row) => (table === 'records' ? sheet.recordTable[row]?.accepts : undefined) ?? [],
  };
}

type Cells = (row: number, column: number) => readonly string[] | undefined;

type AskedReading = AskedInSteps['readings'][number];

/** The table of measurements has rows besides those of the steps' readings. */
function readingsByRow({ recordTable }: Sheet, { readings }: AskedInSteps): (AskedReading | undefined)[] {
  const rest = [...readings];
  return recordTable.map((row) => {
    const at = rest.findIndex((one) => one.stepId === row.stepId && one.name === row.what);
    return at < 0 ? undefined : rest.splice(at, 1)[0];
  });
}

function cellsByTable(
  sheet: Sheet,
  asked: AskedInSteps,
  readings: readonly (AskedReading | undefined)[],
  asking: Asking,
): ReadonlyMap<string, Cells> {
  const { record } = sheet;
  const numbers = toolNumbers(sheet, asking);
  const batches = batchNumbers(sheet, asking);
  const column = (wanted: number, names: (row: number) => readonly (string | undefined)[]): Cells => {
    return (row, at) => {
      const name = names(row)[at - wanted];
      return name === undefined ? undefined : [name];
    };
  };
  return new Map<string, Cells>([
    ['records', (row, at) => (at === 3 ? readings[row]?.blanks : undefined)],
    ['found-list', (row, at) => (at === 2 ? foundCells(row, sheet, asked) : undefined)],
    ['decision-list', (row, at) => decisionCells(row, at, sheet, asked)],
    ['sign-off-list', (row, at) => signOffCells(row, at, sheet, asked)],
    ['tool-list', column(4, (row) => [numbers.get(sheet.tools[row]?.name ?? '')])],
    ['gauge-list', column(2, (row) => [numbers.get(record.gauges[row]?.name ?? '')])],
    ['consumable-list', column(4, (row) => batches.get(sheet.consumables[row]?.name ?? '') ?? [])],
    ['batch-list', column(2, (row) => batches.get(record.batches[row]?.name ?? '') ?? [])],
  ]);
}

/** The number of each tool; of what measures it belongs to the record. */
function toolNumbers({ tools, record }: Sheet, asking: Asking): Map<string, string> {
  const measuring = new Set(record.gauges.map((gauge) => gauge.name));
  return new Map(
    tools.map(({ id, name }) => {
      const need = measuring.has(name) ? always : never;
      const at = { path: ['tool', id], words: asking.labels.tools, need };
      return [name, asking.text(at, 'number', `${name}: ${asking.labels.toolNumber}`)];
    }),
  );
}

/** Batch and last day of use; of what stays in the unit they belong to the record. */
function batchNumbers({ consumables, record }: Sheet, asking: Asking): Map<string, string[]> {
  const { labels } = asking;
  const staying = new Set(record.batches.map((batch) => batch.name));
  return new Map(
    consumables.map(({ id, name }) => {
      const need = staying.has(name) ? always : never;
      const at = { path: ['consumable', id], words: labels.consumables, need };
      const fields = [asking.text(at, 'batch', `${name}: ${labels.batch}`)];
      return [name, [...fields, asking.text({ ...at, need: never }, 'use-by', `${name}: ${labels.useBy}`)]];
    }),
  );
}

/** The form lists arrivals, then what is found out, then what is measured. */
function foundCells(row: number, { asReceived }: Sheet, asked: AskedInSteps): readonly string[] | undefined {
  if (asReceived === undefined) return undefined;
  const found = asReceived.found[row - asReceived.arrivals.length];
  if (found !== undefined) {
    return asked.found.find((one) => one.stepId === found.at[0]?.stepId && one.fields.length === found.values.length)
      ?.fields;
  }
  const measured = asReceived.measured[row - asReceived.arrivals.length - asReceived.found.length];
  return asked.readings.find((one) => one.stepId === measured?.stepId && one.name === measured?.what)?.blanks;
}

function decisionCells(
  row: number,
  column: number,
  { record }: Sheet,
  asked: AskedInSteps,
): readonly string[] | undefined {
  const decision = record.decisions[row];
  const box = asked.renewals.find(
    (one) => one.stepId === decision?.at[0]?.stepId && one.part === capital(decision?.part ?? ''),
  );
  if (box === undefined) return undefined;
  return column === 2 ? box.choices : column === 3 ? [box.number] : undefined;
}

/** A signature itself is given once, at the step. */
function signOffCells(
  row: number,
  column: number,
  { record }: Sheet,
  asked: AskedInSteps,
): readonly string[] | undefined {
  const hold = asked.holds.get(record.signOffs[row]?.stepId ?? '');
  if (hold === undefined) return undefined;
  return column === 3 ? [hold.name] : column === 5 ? [hold.date] : undefined;
}
