import { fillLabel, type Labels } from '../labels';
import type { BatchRow, DecisionRow, GaugeRow, SerialRow, SignOff } from '../recordSheet';
import type { RecordRow, Sheet } from '../sheet';
import { blanksOf, box, formTable, stepsCell, toFill, words, wordsWhen } from './cells';
import type { Form, FormBlock, FormBox, FormCell, FormTable } from './form';
import { rememberedRows } from './rememberedRows';

/** The pages that are filed: every value, number, decision and signature of the work, each with its step. */
export function recordForm(sheet: Sheet, labels: Labels): Form {
  const { record, recordTable } = sheet;
  const received = sheet.asReceived === undefined ? [] : [labels.asReceived];
  return {
    name: 'record',
    title: labels.record,
    page: 'start',
    blocks: [
      ...received.map((title) => ({ kind: 'note' as const, text: fillLabel(labels.recordNote, { received: title }) })),
      { kind: 'boxes', rows: identityRows(sheet, labels) },
      ...(sheet.torqueTable.length === 0 ? [] : titled(labels.torqueTable, { kind: 'torques' })),
      ...titledTable(labels.recordTable, measurementTable(recordTable, labels)),
      ...titledTable(labels.decisions, decisionTable(record.decisions, labels)),
      ...titledTable(labels.serialNumbers, serialTable(record.serials, labels)),
      ...titledTable(labels.gauges, gaugeTable(record.gauges, labels)),
      ...titledTable(labels.batches, batchTable(record.batches, labels)),
      ...titledTable(labels.signOffs, signOffTable(record.signOffs, labels)),
      ...titledTable(labels.finalSignatures, finalTable(labels)),
    ],
  };
}

/** What a page that leaves the sheet is known by. */
export function identityRows({ header }: Sheet, labels: Labels): FormBox[][] {
  return [
    [
      box(labels.document, { text: header.document }),
      box(labels.revision, { text: header.revision }),
      box(labels.build, { text: header.build, share: 2 }),
    ],
    [box(labels.unitSerial), box(labels.orderNumber)],
  ];
}

function titled(text: string, block: FormBlock): FormBlock[] {
  return [{ kind: 'heading', text }, block];
}

function titledTable(text: string, table: FormTable): FormBlock[] {
  return table.rows.length === 0 ? [] : titled(text, table);
}

function measurementTable(rows: readonly RecordRow[], labels: Labels): FormTable {
  const columns = [
    [labels.step, 'step'],
    [labels.measurement, 'rest'],
    [labels.limits, 'long'],
    [labels.actual, 'rest'],
    [labels.toolNumber, 'short'],
  ] as const;
  return formTable('records', columns, measuredRows(rows, labels));
}

const measuredRows = rememberedRows((row: RecordRow, labels): FormCell[] => [
  stepsCell([row]),
  measuredWords(row, labels),
  row.limits === undefined ? words(labels.recordOnly) : { kind: 'limits', text: row.limits },
  blanksOf(row),
  toFill,
]);

/** What may be taken again is filed as it was the last time; every time has its row in the step. */
function measuredWords({ what, condition, rounds = 1 }: RecordRow, labels: Labels): FormCell {
  const texts = [what, ...(rounds > 1 ? [labels.lastTaken] : [])].map((text) => ({ text, strong: false }));
  return condition === undefined ? { kind: 'text', texts } : { kind: 'text', texts, condition };
}

function decisionTable(rows: readonly DecisionRow[], labels: Labels): FormTable {
  const columns = [
    [labels.part, 'rest'],
    [labels.step, 'step'],
    [labels.decision, 'wide'],
    [labels.newPartNumber, 'long'],
  ] as const;
  const values = [labels.fateBenchUsed, labels.fateBenchRenewed];
  const cells = rows.map(({ part, condition, at }): FormCell[] => [
    wordsWhen(part, condition),
    stepsCell(at),
    { kind: 'choices', values },
    toFill,
  ]);
  return formTable('decision-list', columns, cells);
}

function serialTable(rows: readonly SerialRow[], labels: Labels): FormTable {
  const columns = [
    [labels.part, 'rest'],
    [labels.step, 'step'],
    [labels.serialNumber, 'wide'],
  ] as const;
  const cells = rows.map(({ part, condition, at }) => [wordsWhen(part, condition), stepsCell(at), toFill]);
  return formTable('serial-list', columns, cells);
}

function gaugeTable(rows: readonly GaugeRow[], labels: Labels): FormTable {
  const columns = [
    [labels.tool, 'wide'],
    [labels.usedInSteps, 'rest'],
    [labels.toolNumber, 'medium'],
    [labels.calibrationDue, 'medium'],
  ] as const;
  return formTable('gauge-list', columns, gaugeRows(rows, labels));
}

const gaugeRows = rememberedRows(({ name, at, calibrationDue }: GaugeRow) => [
  words(name),
  stepsCell(at),
  toFill,
  known(calibrationDue),
]);

function batchTable(rows: readonly BatchRow[], labels: Labels): FormTable {
  const columns = [
    [labels.consumable, 'wide'],
    [labels.usedInSteps, 'rest'],
    [labels.batch, 'medium'],
    [labels.useBy, 'medium'],
  ] as const;
  return formTable('batch-list', columns, batchRows(rows, labels));
}

const batchRows = rememberedRows(({ name, at, expires }: BatchRow) => [
  words(name),
  stepsCell(at),
  toFill,
  known(expires),
]);

function known(date: string | undefined): FormCell {
  return date === undefined ? toFill : words(date);
}

function signOffTable(rows: readonly SignOff[], labels: Labels): FormTable {
  const columns = [
    [labels.step, 'step'],
    [labels.signOffs, 'rest'],
    [labels.who, 'short'],
    [labels.name, 'medium'],
    [labels.signature, 'medium'],
    [labels.date, 'short'],
  ] as const;
  return formTable('sign-off-list', columns, signOffRows(rows, labels), 'tall');
}

const signOffRows = rememberedRows((row: SignOff) => [
  stepsCell([row]),
  wordsWhen(row.title, row.condition),
  words(row.who),
  toFill,
  toFill,
  toFill,
]);

function finalTable(labels: Labels): FormTable {
  const columns = [
    [labels.who, 'short'],
    [labels.name, 'rest'],
    [labels.signature, 'rest'],
    [labels.date, 'short'],
    [labels.stamp, 'medium'],
  ] as const;
  const cells = [labels.fitter, labels.inspector].map((who) => [words(who), toFill, toFill, toFill, toFill]);
  return formTable('final-list', columns, cells, 'tall');
}
