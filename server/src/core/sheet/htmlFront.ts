import { amountLabel, bandOf, stepsLabel } from './filledLabels';
import { cautionsHtml } from './htmlCautions';
import { figureHtml } from './htmlSteps';
import {
  conditionHtml,
  el,
  escapeHtml,
  type Html,
  type HtmlContext,
  proseHtml,
  section,
  table,
  tickBox,
} from './htmlText';
import { fillLabel, type Labels } from './labels';
import type { BeforeLine, ConsumableLine, KitLine, KitList, SheetHeader } from './sheet';

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
  ];
}

/** All that comes before the first step; a part with nothing in it is left out. */
export function frontHtml(context: HtmlContext): (Html | undefined)[] {
  const { sheet, labels } = context;
  return [
    safetyHtml(context),
    sheet.beforeYouStart.length === 0
      ? undefined
      : section('before', labels.beforeYouStart, ...sheet.beforeYouStart.map((line) => beforeHtml(line, context))),
    hazardsHtml(context),
    toolsHtml(context),
    consumablesHtml(context),
    ...sheet.kits.map((kit, index) => kitHtml(kit, index, labels)),
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
    el(
      'p',
      {},
      el('strong', {}, escapeHtml(wear.length === 0 ? labels.wearUnknown : `${labels.wear} ${wear.join(', ')}.`)),
    ),
  );
}

function hazardsHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.hazards.length === 0) return undefined;
  const rows = sheet.hazards.map((hazard) => [
    escapeHtml([hazard.codes.join(', '), hazard.text].filter((text) => text !== '').join(' ')),
    escapeHtml(hazard.from.join(', ')),
  ]);
  return section('hazards', labels.hazards, table('hazard-list', [labels.hazard, labels.broughtBy], rows));
}

function toolsHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.tools.length === 0) return undefined;
  const heads = [labels.atHand, labels.tool, labels.sizeOrRange, labels.calibrationDue];
  const rows = sheet.tools.map((tool) => [
    tickBox(tool.name),
    escapeHtml(tool.count > 1 ? `${tool.count} × ${tool.name}` : tool.name),
    escapeHtml([tool.size, tool.range].filter((text) => text !== undefined).join(', ')),
    escapeHtml(tool.calibrationDue ?? ''),
  ]);
  return section('tools', labels.tools, table('tool-list', heads, rows));
}

function consumablesHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.consumables.length === 0) return undefined;
  const heads = [labels.atHand, labels.consumable, labels.amount, labels.labelHazards];
  const words = { danger: labels.labelDanger, warning: labels.labelWarning };
  const rows = sheet.consumables.map((line) => [
    tickBox(line.name),
    escapeHtml(line.name),
    amountHtml(line, labels),
    [
      ...(line.signalWord === undefined ? [] : [el('strong', {}, escapeHtml(`${words[line.signalWord]} `))]),
      escapeHtml(line.hazards.map((hazard) => `${hazard.code} ${hazard.text}`).join('; ')),
    ],
  ]);
  return section('consumables', labels.consumables, table('consumable-list', heads, rows));
}

function amountHtml({ amount, steps }: ConsumableLine, labels: Labels): Html[] {
  const lines = [amountLabel(labels, amount), steps.length === 0 ? undefined : stepsLabel(labels, steps)];
  return lines.flatMap((line) => (line === undefined ? [] : [el('p', {}, escapeHtml(line))]));
}

function kitHtml(kit: KitList, index: number, labels: Labels): Html {
  const heads = [labels.picked, labels.item, labels.partNumber, labels.part, labels.quantity];
  const title = fillLabel(labels.pickListOf, { number: kit.number, name: kit.name, revision: kit.revision });
  const rows = kit.lines.map((line) => [
    tickBox(`${line.item} ${line.part}`),
    escapeHtml(line.item),
    escapeHtml(line.number),
    kitPartHtml(line, labels),
    escapeHtml(line.quantity),
  ]);
  return section(`kit-${index + 1}`, `${labels.pickList}: ${title}`, table('kit-list', heads, rows));
}

function kitPartHtml(line: KitLine, labels: Labels): Html[] {
  const replaces = line.replaces === undefined ? '' : ` (${fillLabel(labels.replaces, { number: line.replaces })})`;
  const condition = conditionHtml(line.condition, labels);
  return [escapeHtml(`${line.part}${replaces}`), ...(condition === undefined ? [] : [condition])];
}
