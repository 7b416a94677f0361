import { fillLabel, type Labels } from '../labels';
import type { ArrivalRow, FoundRow, ReceivedUnit } from '../recordSheet';
import type { RecordRow } from '../sheet';
import { blanksOf, box, formTable, stepsCell, words, wordsWhen } from './cells';
import type { Form, FormBlock, FormCell } from './form';

/** The page that is filled in as the unit comes in, before anything is cleaned or taken off. */
export function receivedForm(received: ReceivedUnit, labels: Labels): Form {
  const variants = received.variants.join(', ');
  const hint = variants === '' ? {} : { hint: fillLabel(labels.thisSheet, { text: variants }) };
  const serials = received.serials.map(({ part, at, condition }) =>
    box(fillLabel(labels.serialOf, { part }), { at, ...(condition === undefined ? {} : { hint: condition.text }) }),
  );
  return {
    name: 'as-received',
    title: labels.asReceived,
    page: 'own',
    blocks: [
      { kind: 'note', text: labels.receivedNote },
      {
        kind: 'boxes',
        rows: [
          [box(labels.customer), box(labels.orderNumber), box(labels.customerReference)],
          [box(labels.variantOnPlate, hint), box(labels.unitSerial), box(labels.hoursOfService, { unit: 'h' })],
          ...inRows(serials, 2),
        ],
      },
      ...foundBlocks(received, labels),
      { kind: 'lines', label: labels.missingParts, count: 3, grows: false },
      { kind: 'lines', label: labels.damage, count: 4, grows: true },
      {
        kind: 'boxes',
        rows: [[box(labels.photographs)], [box(labels.receivedBy), box(labels.date), box(labels.signature)]],
      },
    ],
  };
}

function foundBlocks({ found, measured, arrivals }: ReceivedUnit, labels: Labels): FormBlock[] {
  const rows = [
    ...arrivals.map((row) => arrivalCells(row, labels)),
    ...found.map(foundCells),
    ...measured.map((row) => measuredCells(row, labels)),
  ];
  if (rows.length === 0) return [];
  const columns = [
    [labels.foundAndMeasured, 'wide'],
    [labels.step, 'step'],
    [labels.asFound, 'rest'],
  ] as const;
  return [formTable('found-list', columns, rows)];
}

function arrivalCells({ what, values, expected }: ArrivalRow, labels: Labels): FormCell[] {
  const said = { with: labels.expectedYes, without: labels.expectedNo, either: undefined }[expected];
  const hint = said === undefined ? undefined : fillLabel(labels.thisSheet, { text: said });
  return [words(what, hint), stepsCell([]), { kind: 'choices', values }];
}

function foundCells({ what, values, condition, at }: FoundRow): FormCell[] {
  return [wordsWhen(what, condition), stepsCell(at), { kind: 'choices', values }];
}

function measuredCells({ what, limits, condition, step, stepId, ...reading }: RecordRow, labels: Labels): FormCell[] {
  const text = limits === undefined ? what : `${what} (${labels.limits}: ${limits})`;
  return [wordsWhen(text, condition), stepsCell([{ step, stepId }]), blanksOf(reading)];
}

/** Boxes in rows of `most`; the last row may have fewer. */
function inRows<Box>(boxes: readonly Box[], most: number): Box[][] {
  const rows: Box[][] = [];
  for (let at = 0; at < boxes.length; at += most) rows.push(boxes.slice(at, at + most));
  return rows;
}
