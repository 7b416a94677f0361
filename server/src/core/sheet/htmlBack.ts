import { footLabel } from './filledLabels';
import { proofHtml } from './htmlProof';
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
import { turnWords } from './htmlTorque';
import { fatesHtml, temporariesHtml } from './htmlWork';
import type { Labels } from './labels';
import type { ComputedBand, ConcessionPlace, RecordRow, TorqueRow } from './sheet';

/** All that comes after the last step; a part with nothing in it is left out. */
export function backHtml(context: HtmlContext): (Html | undefined)[] {
  return [
    temporariesHtml(context),
    fatesHtml(context),
    torqueTableHtml(context),
    recordTableHtml(context),
    concessionsHtml(context),
    installationHtml(context),
    revisionsHtml(context),
    proofHtml(context),
  ];
}

function placeHtml(at: ConcessionPlace, labels: Labels): Html {
  return at.kind === 'sheet' ? escapeHtml(labels.wholeSheet) : stepLink(at.step, at.stepId);
}

function stepLink(step: number, stepId: string): Html {
  return el('a', { href: `#step-${stepId}` }, escapeHtml(String(step)));
}

function torqueTableHtml(context: HtmlContext): Html | undefined {
  const { sheet, labels } = context;
  if (sheet.torqueTable.length === 0) return undefined;
  const hasBands = sheet.torqueTable.some(({ bands }) => bands !== undefined);
  const band = hasBands ? [labels.computedBand] : [];
  const heads = [
    labels.step,
    labels.fastener,
    labels.torque,
    ...band,
    labels.direction,
    labels.toolsUsed,
    labels.actual,
  ];
  const rows = sheet.torqueTable.map((row) => torqueRowHtml(row, hasBands, context));
  const note = hasBands ? el('p', {}, escapeHtml(labels.computedBandNote)) : undefined;
  return section('torque-table', labels.torqueTable, table('torques', heads, rows), note);
}

function torqueRowHtml(row: TorqueRow, hasBands: boolean, { labels }: HtmlContext): (Html | Html[])[] {
  const condition = conditionHtml(row.condition, labels);
  const angle = row.angle === undefined ? '' : ` ${labels.thenTurn} ${row.angle}`;
  const value =
    row.primary === undefined
      ? [el('strong', {}, escapeHtml(labels.torqueBlank))]
      : [el('strong', { class: 'quantity' }, escapeHtml(row.primary)), el('strong', {}, escapeHtml(angle))];
  const second = row.secondary === undefined ? [] : [el('p', {}, escapeHtml(`(${row.secondary})`))];
  return [
    stepLink(row.step, row.stepId),
    [escapeHtml(row.fastener), ...(condition === undefined ? [] : [condition])],
    [...value, ...second],
    ...(hasBands ? [(row.bands ?? []).flatMap(bandHtml)] : []),
    turnWords(row.turn, labels),
    escapeHtml(row.tools.join(', ')),
    el('span', { class: 'blank' }),
  ];
}

/** Set lightly beside the bold torque, so that nobody sets the wrench by it. */
function bandHtml(band: ComputedBand): Html[] {
  const when = band.when === undefined ? [] : [el('div', {}, escapeHtml(band.when))];
  if (band.kind === 'none') return [...when, el('div', {}, escapeHtml(`– (${band.why})`))];
  return [
    ...when,
    el('p', {}, escapeHtml(band.primary)),
    el('p', {}, escapeHtml(`(${band.secondary})`)),
    el('div', {}, el('small', {}, escapeHtml(band.of))),
  ];
}

function recordTableHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.recordTable.length === 0) return undefined;
  const heads = [labels.step, labels.measurement, labels.limits, labels.actual];
  const rows = sheet.recordTable.map((row) => [
    stepLink(row.step, row.stepId),
    escapeHtml(row.what),
    el('span', { class: 'quantity' }, escapeHtml(row.limits ?? labels.recordOnly)),
    blanksHtml(row),
  ]);
  return section('record-table', labels.recordTable, table('records', heads, rows));
}

function blanksHtml(row: RecordRow): Html[] {
  return Array.from({ length: Math.max(1, row.rows.length) * Math.max(1, row.places.length) }, () =>
    el('span', { class: 'blank' }, el('span', {}, escapeHtml(row.unit))),
  );
}

function concessionsHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.concessions.length === 0) return undefined;
  const heads = [labels.step, labels.rule, labels.because, labels.by, labels.until];
  const rows = sheet.concessions.map((concession) => [
    placeHtml(concession.at, labels),
    el('code', {}, escapeHtml(concession.rule)),
    escapeHtml(concession.because),
    escapeHtml(concession.by),
    escapeHtml(concession.until),
  ]);
  return section('concessions', labels.concessions, table('concession-list', heads, rows));
}

function installationHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.atInstallation.length === 0) return undefined;
  const items = sheet.atInstallation.map((text) => el('li', {}, tickBox(labels.done), el('span', {}, proseHtml(text))));
  return section('installation', labels.atInstallation, el('ul', { class: 'ticks' }, ...items));
}

function revisionsHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.revisions.length === 0) return undefined;
  const rows = sheet.revisions.map((line) => [escapeHtml(line.revision), escapeHtml(line.date), escapeHtml(line.what)]);
  return section(
    'revisions',
    labels.revisions,
    table('revision-list', [labels.revision, labels.date, labels.change], rows),
  );
}

export function footerHtml({ sheet, labels }: HtmlContext): Html {
  const end = el('strong', {}, escapeHtml(`${labels.end}. `));
  return el('footer', {}, el('p', {}, end, escapeHtml(footLabel(labels, sheet.header))));
}
