import type { HtmlBlock, HtmlPiece } from './htmlPieces';
import { tableBlock } from './htmlTables';
import { conditionHtml, el, escapeHtml, type Html, type HtmlContext, headCell } from './htmlText';
import { turnWords } from './htmlTurns';
import type { ComputedBand, TorqueRow } from './sheet';

/** Every torque once more, with a blank for each piece and for the number of the tool. */
export function torqueTableBlocks(key: string, context: HtmlContext): HtmlBlock[] {
  const { sheet, labels } = context;
  const hasBands = sheet.torqueTable.some(({ bands }) => bands !== undefined);
  const band = hasBands ? [labels.computedBand] : [];
  const heads = [labels.step, labels.fastenerAndDirection, labels.torque, ...band, labels.toolsUsed, labels.actual];
  const rows = sheet.torqueTable.map((row) => context.memo.remembered(row, () => rowPiece(row, hasBands, context)));
  const cells = heads.map((head) => headCell(head));
  const note = { key: `${key} note`, html: el('p', {}, escapeHtml(labels.computedBandNote)) };
  return [tableBlock('torques', key, cells, rows), ...(hasBands ? [note] : [])];
}

/** Where one row has bands, all have. */
function rowPiece(row: TorqueRow, hasBands: boolean, context: HtmlContext): HtmlPiece {
  const cells = torqueRowCells(row, hasBands, context).map((cell) => el('td', {}, cell));
  return { key: `torque row of ${row.stepId}`, html: el('tr', {}, ...cells) };
}

function torqueRowCells(row: TorqueRow, hasBands: boolean, { labels }: HtmlContext): (Html | Html[])[] {
  const condition = conditionHtml(row.condition, labels);
  const angle = row.angle === undefined ? '' : ` ${labels.thenTurn} ${row.angle}`;
  const value =
    row.primary === undefined
      ? [el('strong', {}, escapeHtml(labels.torqueBlank))]
      : [el('strong', { class: 'quantity' }, escapeHtml(row.primary)), el('strong', {}, escapeHtml(angle))];
  const second = row.secondary === undefined ? [] : [el('p', {}, escapeHtml(`(${row.secondary})`))];
  return [
    el('a', { href: `#step-${row.stepId}` }, escapeHtml(String(row.step))),
    [
      el('p', {}, escapeHtml(row.fastener)),
      ...(condition === undefined ? [] : [condition]),
      el('p', {}, turnWords(row.turn, labels)),
    ],
    [...value, ...second],
    ...(hasBands ? [(row.bands ?? []).flatMap(bandHtml)] : []),
    [
      el('div', {}, escapeHtml(row.tools.join(', '))),
      el('div', { class: 'blank-line' }, el('span', {}, escapeHtml(labels.toolNumber)), el('span', { class: 'blank' })),
    ],
    pieceBlanks(row.pieces ?? 1).map((label) =>
      el('div', { class: 'blank-line' }, el('span', {}, escapeHtml(label)), el('span', { class: 'blank' })),
    ),
  ];
}

/** The labels of the blanks: one for each piece, as long as there are few enough to be told apart. */
export function pieceBlanks(pieces: number): string[] {
  if (pieces < 2 || pieces > MOST_PIECES) return [''];
  return Array.from({ length: pieces }, (_, index) => String(index + 1));
}

const MOST_PIECES = 6;

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
