import { stepsLabel } from './filledLabels';
import type { CellText, Form, FormBlock, FormBox, FormCell, FormTable } from './forms/form';
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
import { torqueTableHtml } from './htmlTorqueTable';
import type { StepPlace } from './sheet';

/** A form as a section of the page; it is the same text as on paper, in the same order. */
export function formHtml(form: Form, context: HtmlContext): Html {
  const { name, title, page, blocks } = form;
  return el(
    'section',
    { class: `form ${name} page-${page}`, 'aria-labelledby': `${name}-title` },
    el('h2', { id: `${name}-title` }, escapeHtml(title)),
    ...blocks.map((block) => blockHtml(block, context)),
  );
}

function blockHtml(block: FormBlock, context: HtmlContext): Html {
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
    case 'torques':
      return torqueTableHtml(context);
    case 'table':
      return tableHtml(block, context);
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

function tableHtml({ name, columns, rows, height }: FormTable, context: HtmlContext): Html {
  const heads = columns.map(({ head, width }) => headCell(head, `col-${width}`));
  const body = rows.map((cells) => el('tr', {}, ...cells.map((cell) => cellHtml(cell, context))));
  return el(
    'div',
    { class: 'table-frame', tabindex: 0 },
    el(
      'table',
      { class: `form-table ${height} ${name}` },
      el('thead', {}, el('tr', {}, ...heads)),
      el('tbody', {}, ...body),
    ),
  );
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
