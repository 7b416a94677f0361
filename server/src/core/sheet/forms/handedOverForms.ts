import type { Labels } from '../labels';
import type { PortCaps, SentLine, SentSlip } from '../recordSheet';
import type { Sheet } from '../sheet';
import { box, formTable, stepsCell, toFill, words } from './cells';
import type { Form, FormBlock, FormCell, FormTable } from './form';
import { identityRows } from './recordForm';

/** A page for each place that parts are sent to; it goes with them and comes back with them. */
export function slipForms(sheet: Sheet, labels: Labels): Form[] {
  return sheet.slips.map((slip, place) => ({
    name: `slip-${place + 1}`,
    title: labels.slip,
    page: 'own',
    blocks: slipBlocks(slip, sheet, labels),
  }));
}

function slipBlocks({ to, lines }: SentSlip, sheet: Sheet, labels: Labels): FormBlock[] {
  const ticks = [labels.isComplete, labels.isUndamaged, labels.isCertified];
  const goesTo = box(labels.goesTo, to === '' ? {} : { text: to });
  return [
    { kind: 'note', text: labels.slipNote },
    { kind: 'boxes', rows: [...identityRows(sheet, labels), [goesTo]] },
    sentTable(lines, labels),
    { kind: 'boxes', rows: [[box(labels.sentBy), box(labels.date), box(labels.signature)]] },
    { kind: 'lines', label: labels.workDone, count: 4, grows: true },
    { kind: 'ticks', items: ticks.map((text) => [{ kind: 'text', text }]) },
    {
      kind: 'boxes',
      rows: [
        [box(labels.receivedBackBy), box(labels.date), box(labels.signature)],
        [box(labels.checkedBy), box(labels.date), box(labels.signature)],
      ],
    },
  ];
}

function sentTable(lines: readonly SentLine[], labels: Labels): FormTable {
  const columns = [
    [labels.packed, 'tick'],
    [labels.part, 'wide'],
    [labels.serialNumber, 'medium'],
    [labels.comesBackWith, 'rest'],
    [labels.step, 'step'],
    [labels.backAtStep, 'step'],
  ] as const;
  const rows = lines.map(({ part, condition, say, certificate, hasSerial, sent, back }): FormCell[] => [
    { kind: 'tick', name: part },
    { kind: 'text', texts: plainLines(part, say), ...(condition === undefined ? {} : { condition }) },
    hasSerial ? toFill : words('–'),
    words(certificate),
    stepsCell(sent),
    back.length === 0 ? words('–') : stepsCell(back),
  ]);
  return formTable('sent-list', columns, rows);
}

function plainLines(...texts: readonly (string | undefined)[]): { text: string; strong: boolean }[] {
  return texts.flatMap((text) => (text === undefined ? [] : [{ text, strong: false }]));
}

/** The page for whoever fits the unit: only what the writer says of it, and what must be counted. */
export function installerForms(sheet: Sheet, labels: Labels): Form[] {
  const { atInstallation, portCaps } = sheet;
  if (atInstallation.length === 0) return [];
  return [
    {
      name: 'installation',
      title: labels.forInstaller,
      page: 'own',
      blocks: [
        { kind: 'strong', text: labels.installerNote },
        { kind: 'boxes', rows: identityRows(sheet, labels) },
        { kind: 'heading', text: labels.atInstallation },
        { kind: 'ticks', items: atInstallation },
        ...(portCaps.length === 0
          ? []
          : [{ kind: 'heading' as const, text: labels.portCaps }, capTable(portCaps, labels)]),
        {
          kind: 'boxes',
          rows: [
            [box(labels.engine, { share: 2 }), box(labels.hoursOfService, { unit: 'h' })],
            [box(labels.fittedBy), box(labels.date), box(labels.signature)],
          ],
        },
        { kind: 'lines', label: labels.notes, count: 4, grows: true },
      ],
    },
  ];
}

function capTable(caps: readonly PortCaps[], labels: Labels): FormTable {
  const columns = [
    [labels.portCap, 'rest'],
    [labels.step, 'step'],
    [labels.capsFitted, 'rest'],
    [labels.capsRemoved, 'rest'],
  ] as const;
  const rows = caps.map(({ name, at }) => [words(name), stepsCell(at), toFill, toFill]);
  return formTable('cap-list', columns, rows);
}
