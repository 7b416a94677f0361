import { el, escapeHtml, type Html, type HtmlContext, headCell } from './htmlText';
import type { Reading, Sum, SumTerm } from './sheet';

/** The blanks of a measurement. The limits head the column of names, so that a single reading takes two short lines. */
export function readingHtml(reading: Reading, { labels }: HtmlContext): Html {
  const rounds = reading.rounds ?? 1;
  const limits = reading.limits === undefined ? labels.recordOnly : `${labels.limits}: ${reading.limits}`;
  const places = reading.places.length === 0 ? [labels.reading] : reading.places;
  const rows = reading.rows.length === 0 ? [reading.name] : reading.rows;
  const corner = el('th', { scope: 'col', colspan: rounds > 1 ? 2 : undefined }, escapeHtml(limits));
  const heads = places.map((head) => headCell(head));
  const blanks = places.map(() => el('td', { class: 'to-fill' }, escapeHtml(reading.unit)));
  const body = rows.flatMap((row) =>
    Array.from({ length: rounds }, (_, round) =>
      el('tr', {}, round === 0 ? nameCell(row, rounds) : undefined, roundCell(round, rounds), ...blanks),
    ),
  );
  return tableHtml('reading', [corner, ...heads], body);
}

function nameCell(name: string, rounds: number): Html {
  return el('th', { scope: 'rowgroup', rowspan: rounds > 1 ? rounds : undefined }, escapeHtml(name));
}

function roundCell(round: number, rounds: number): Html | undefined {
  return rounds > 1 ? el('th', { scope: 'row', class: 'round' }, escapeHtml(String(round + 1))) : undefined;
}

function tableHtml(name: string, heads: readonly Html[], body: readonly Html[]): Html {
  return el('div', { class: name }, el('table', {}, el('thead', {}, el('tr', {}, ...heads)), el('tbody', {}, ...body)));
}

/** A sum with a blank for each term: what was measured goes in, what comes out is held against its limits. */
export function sumHtml({ terms, result, rounds }: Sum, { labels }: HtmlContext): Html {
  const sign = (mark: string): Html => el('td', { class: 'sign' }, escapeHtml(mark));
  const signed = (term: SumTerm, index: number, cell: Html): Html[] =>
    index === 0 && term.sign === '+' ? [cell] : [sign(term.sign), cell];
  const limits = result.limits === undefined ? '' : `${labels.limits}: ${result.limits}`;
  const heads = [
    ...(rounds > 1 ? [el('td', { class: 'round' })] : []),
    ...terms.flatMap((term, index) => signed(term, index, headCell(term.name))),
    sign('='),
    el('th', { scope: 'col' }, escapeHtml(result.name), ...(limits === '' ? [] : [el('p', {}, escapeHtml(limits))])),
  ];
  const cells = [
    ...terms.flatMap((term, index) => signed(term, index, amountHtml(term))),
    sign('='),
    el('td', { class: 'to-fill' }, escapeHtml(result.unit)),
  ];
  const body = Array.from({ length: rounds }, (_, round) => el('tr', {}, roundCell(round, rounds), ...cells));
  return tableHtml('reading sum', heads, body);
}

function amountHtml({ amount }: SumTerm): Html {
  if (amount.kind === 'blank') return el('td', { class: 'to-fill' }, escapeHtml(amount.unit));
  return el('td', { class: 'stated' }, el('strong', { class: 'quantity' }, escapeHtml(amount.text)));
}
