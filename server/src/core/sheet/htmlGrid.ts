import { pictureHtml } from './htmlFigures';
import { el, escapeHtml, type Html, type HtmlContext, tickBox } from './htmlText';
import { fillLabel, type Labels } from './labels';
import type { GridRow, PieceBand, PieceGrid } from './sheet';

/** A box for each piece in each pass, beside a picture of the order where one is stated. */
export function gridHtml(grid: PieceGrid, context: HtmlContext): Html {
  const { rows, bands, picture } = grid;
  return el(
    'div',
    { class: 'piece-grid' },
    el('div', { class: 'grid-tables' }, ...bands.map((band) => bandHtml(band, rows, context.labels))),
    picture &&
      el(
        'figure',
        { class: 'order-picture' },
        pictureHtml(picture, context),
        el('figcaption', {}, escapeHtml(context.labels.orderKey)),
      ),
  );
}

function bandHtml(band: PieceBand, rows: readonly GridRow[], labels: Labels): Html {
  const names = band.kind === 'ordered' ? band.pieces : Array.from({ length: band.count }, () => '');
  const body = rows.map((row) => {
    const head = rowLabel(row, labels);
    const boxes = names.map((name) => el('td', {}, tickBox(`${head} ${name}`.trim())));
    return el('tr', {}, rowHead(head), ...boxes);
  });
  const heads = band.kind === 'ordered' ? el('thead', {}, ...orderHeads(band, labels)) : undefined;
  return el('table', {}, heads, el('tbody', {}, ...body));
}

/** When each is turned, and below it which one it is. */
function orderHeads({ first, pieces }: PieceBand & { kind: 'ordered' }, labels: Labels): Html[] {
  const turns = pieces.map((_, index) => el('span', { class: 'turn-number' }, escapeHtml(String(first + index))));
  const names = pieces.map((name) => escapeHtml(name));
  const row = (label: string, cells: readonly Html[]): Html =>
    el(
      'tr',
      {},
      rowHead(label),
      ...cells.map((cell) => (cell === '' ? el('td', {}) : el('th', { scope: 'col' }, cell))),
    );
  return [row(labels.order, turns), row(labels.piece, names)];
}

function rowHead(words: string): Html {
  return el('th', { scope: 'row' }, escapeHtml(words));
}

function rowLabel(row: GridRow, labels: Labels): string {
  switch (row.kind) {
    case 'pass':
      return fillLabel(labels.pass, { number: row.number });
    case 'final':
      return labels.finalPass;
    case 'only':
      return labels.tightened;
    case 'torque':
      return labels.torque;
    case 'angle':
      return row.angle === undefined ? labels.thenTurn : `${labels.thenTurn} ${row.angle}`;
  }
}
