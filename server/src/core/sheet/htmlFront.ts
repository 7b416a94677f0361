import { bandOf } from './filledLabels';
import type { SheetForms } from './forms';
import { cautionsHtml } from './htmlCautions';
import { changesHtml } from './htmlChanges';
import { figureHtml } from './htmlFigures';
import { formBlock } from './htmlForm';
import { type HtmlBlock, piecesOf } from './htmlPieces';
import { el, escapeHtml, type Html, type HtmlContext, proseHtml, section, tickBox } from './htmlText';
import type { Labels } from './labels';
import type { BeforeLine, SheetHeader } from './sheet';

export function headerHtml({ sheet, labels }: HtmlContext): Html {
  const { header } = sheet;
  const band = bandOf(labels, { status: header.status, errors: sheet.notReleased?.errors ?? 0 });
  const facts = headerFacts(header, labels)
    .flat()
    .map(([label, value]) => el('div', {}, el('dt', {}, escapeHtml(label)), el('dd', {}, escapeHtml(value))));
  return el(
    'header',
    {},
    band && el('p', { class: `band ${band.look}`, role: 'status' }, el('strong', {}, escapeHtml(band.text))),
    el('p', { class: 'document-kind' }, escapeHtml(`${labels.documentKind} ${header.document}`)),
    el('h1', {}, escapeHtml(header.title)),
    el('dl', { class: 'facts' }, ...facts),
  );
}

/**
 * Label and value of each fact about the document, row by row, in the order in which they are looked for.
 * Whoever has not signed yet has an empty value, so that there is room to sign.
 */
export function headerFacts(header: SheetHeader, labels: Labels): [label: string, value: string][][] {
  const statuses = { draft: labels.statusDraft, released: labels.statusReleased, withdrawn: labels.statusWithdrawn };
  return [
    [
      [labels.build, header.build],
      [labels.family, header.family],
    ],
    [
      [labels.kit, header.kits.join(', ')],
      [labels.revision, header.revision],
      [labels.revisionDate, header.revisionDate ?? ''],
      [labels.status, statuses[header.status]],
    ],
    [
      [labels.preparedBy, header.preparedBy ?? ''],
      [labels.checkedBy, header.checkedBy ?? ''],
      [labels.approvedBy, header.approvedBy ?? ''],
    ],
    [
      [labels.unitSerial, ''],
      [labels.orderNumber, ''],
    ],
  ];
}

/** All that comes before the first step; a part with nothing in it is left out. */
export function frontBlocks({ safety, received, layOut }: SheetForms, context: HtmlContext): HtmlBlock[] {
  const { sheet, labels } = context;
  const before = [
    changesHtml(context),
    safetyHtml(context),
    sheet.beforeYouStart.length === 0
      ? undefined
      : section('before', labels.beforeYouStart, ...sheet.beforeYouStart.map((line) => beforeHtml(line, context))),
  ];
  return [
    ...piecesOf(before, 'front'),
    ...[...safety, ...received, ...layOut].map((form) => formBlock(form, 'front', context)),
  ];
}

function beforeHtml(line: BeforeLine, context: HtmlContext): readonly Html[] {
  if (line.kind === 'caution') return cautionsHtml([line.caution], context.labels);
  return [line.kind === 'figure' ? figureHtml(line.figure, context) : el('p', {}, proseHtml(line.text))];
}

function safetyHtml({ sheet, labels }: HtmlContext): Html {
  const { wear } = sheet.safety;
  return section(
    'safety',
    labels.safety,
    el('p', {}, escapeHtml(labels.safetyNote)),
    el('p', {}, el('strong', {}, escapeHtml(wear.length === 0 ? labels.wearUnknown : labels.wear))),
    wear.length === 0 ? undefined : el('ul', { class: 'choices' }, ...wear.map(wearHtml)),
  );
}

function wearHtml(item: string): Html {
  return el('li', {}, tickBox(item), el('strong', {}, escapeHtml(item)));
}
