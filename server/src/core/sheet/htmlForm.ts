import { stepsLabel } from './filledLabels';
import type { CellText, Form, FormBlock, FormBox, FormCell, FormTable } from './forms/form';
import type { HtmlBlock, HtmlGroup, HtmlPiece } from './htmlPieces';
import { tableBlock } from './htmlTables';
import {
  conditionHtml,
  el,
  escapeHtml,
  type Html,
  type HtmlContext,
  headCell,
  join,
  proseHtml,
  tickBox,
} from './htmlText';
import { torqueTableBlocks } from './htmlTorqueTable';
import type { StepPlace } from './sheet';

/** A form as a section of the page; it is the same text as on paper, in the same order. */
export function formBlock({ name, title, page, blocks }: Form, group: string, context: HtmlContext): HtmlGroup {
  const key = `${group} section ${name}-title`;
  const heading = { key: `${key} heading`, html: el('h2', { id: `${name}-title` }, escapeHtml(title)) };
  return {
    key,
    element: 'section',
    attributes: { class: `form ${name} page-${page}`, 'aria-labelledby': `${name}-title` },
    parts: [heading, ...blocks.flatMap((block, place) => partsOf(block, `${key} ${block.kind} ${place}`, context))],
  };
}

function partsOf(block: FormBlock, key: string, context: HtmlContext): HtmlBlock[] {
  if (block.kind === 'torques') return torqueTableBlocks(key, context);
  return block.kind === 'table' ? [formTableBlock(block, key, context)] : [{ key, html: blockHtml(block, context) }];
}

type PlainBlock = Exclude<FormBlock, { kind: 'torques' | 'table' }>;

function blockHtml(block: PlainBlock, context: HtmlContext): Html {
  switch (block.kind) {
    case 'heading':
      return el('h3', { class: 'form-heading' }, escapeHtml(block.text));
    case 'note':
      return el('p', {}, escapeHtml(block.text));
    case 'strong':
      return el('p', {}, el('strong', {}, escapeHtml(block.text)));
    case 'boxes':
      return el('div', { class: 'form-boxes' }, ...block.rows.map((row) => boxRow(row, context)));
    case 'lines':
      return el(
        'div',
        { class: 'form-lines' },
        el('p', {}, escapeHtml(block.label)),
        ...Array.from({ length: block.count }, () => el('div', { class: 'form-line' })),
      );
    case 'ticks':
      return el(
        'ul',
        { class: 'ticks' },
        ...block.items.map((text) => el('li', {}, tickBox(context.labels.done), el('span', {}, proseHtml(text)))),
      );
  }
}

function boxRow(boxes: readonly FormBox[], context: HtmlContext): Html {
  return el('div', { class: 'form-row' }, ...boxes.map((box) => boxHtml(box, context)));
}

function boxHtml({ label, text, hint, unit, at, share }: FormBox, { labels }: HtmlContext): Html {
  const words = [escapeHtml(label), ...(hint === undefined ? [] : [escapeHtml(hint)])];
  const steps = at.length === 0 ? [] : [placesHtml(at, (place) => stepsLabel(labels, [place.step]))];
  const said = join(
    [...words, ...steps].flatMap((piece, place) => (place === 0 ? [piece] : [escapeHtml(' · '), piece])),
  );
  return el(
    'div',
    { class: `form-box share-${share}` },
    el('p', { class: 'box-label' }, said),
    text === undefined ? undefined : el('p', {}, escapeHtml(text)),
    unit === undefined ? undefined : el('p', { class: 'box-unit' }, escapeHtml(unit)),
  );
}

function formTableBlock({ name, columns, rows, height }: FormTable, key: string, context: HtmlContext): HtmlGroup {
  const heads = columns.map(({ head, width }) => headCell(head, `col-${width}`));
  const body = rows.map((cells) => context.memo.remembered(cells, () => rowPiece(cells, name, context)));
  return tableBlock(`form-table ${height} ${name}`, key, heads, body);
}

/** A row is known by the one step that it belongs to, where it belongs to one. */
function rowPiece(cells: readonly FormCell[], table: string, context: HtmlContext): HtmlPiece {
  const [places] = cells.flatMap((cell) => (cell.kind === 'steps' ? [cell.at] : []));
  const step = places?.length === 1 ? places[0]?.stepId : undefined;
  const key = step === undefined ? `${table} row` : `${table} row of ${step}`;
  return { key, html: el('tr', {}, ...cells.map((cell) => cellHtml(cell, context))) };
}

function cellHtml(cell: FormCell, { labels }: HtmlContext): Html {
  switch (cell.kind) {
    case 'text':
      return el('td', {}, ...cell.texts.map(lineHtml), conditionHtml(cell.condition, labels));
    case 'steps':
      return el(
        'td',
        {},
        placesHtml(cell.at, ({ step }) => String(step)),
      );
    case 'limits':
      return el('td', {}, el('strong', { class: 'limit' }, escapeHtml(cell.text)));
    case 'blanks':
      return el('td', { class: 'to-write' }, ...cell.blanks.map(blankHtml));
    case 'choices':
      return el('td', {}, el('ul', { class: 'choices' }, ...cell.values.map(choiceHtml)));
    case 'tick':
      return el('td', { class: 'to-tick' }, tickBox(cell.name));
  }
}

function lineHtml({ text, strong, lang }: CellText): Html {
  return el('p', { lang }, strong ? el('strong', {}, escapeHtml(text)) : escapeHtml(text));
}

function blankHtml({ label, unit }: { label: string; unit: string }): Html {
  return el(
    'div',
    { class: 'blank-line' },
    label === '' ? undefined : el('span', {}, escapeHtml(label)),
    el('span', { class: 'blank' }),
    unit === '' ? undefined : el('span', {}, escapeHtml(unit)),
  );
}

function choiceHtml(value: string): Html {
  return el('li', {}, tickBox(value), escapeHtml(value));
}

function placesHtml(at: readonly StepPlace[], words: (place: StepPlace) => string): Html {
  const links = at.map((place) => el('a', { href: `#step-${place.stepId}` }, escapeHtml(words(place))));
  return join(links.flatMap((link, place) => (place === 0 ? [link] : [escapeHtml(', '), link])));
}
