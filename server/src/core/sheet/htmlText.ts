import { base64, utf8Bytes } from '../text/base64';
import type { HtmlMemo } from './htmlMemo';
import type { Labels } from './labels';
import { printableText } from './printableText';
import type { Condition, Prose, Run, Sheet } from './sheet';

export interface HtmlOptions {
  /** `preview` carries findings and places in the source; `file` carries neither, for it may leave the house. */
  mode: 'preview' | 'file';
  /** Where a preview says where its steps stand in the source; by default in the markup of each step. */
  sources?: 'inMarkup' | 'apart';
  /** Nonce of the content security policy that the style (and the preview's script) run under. */
  cspNonce?: string;
  /** Address of a script that the preview wants at the end of the body. */
  previewScript?: string;
  /** Address of a picture file, or nothing where it is not to be had; the words are then shown in its place. */
  figureUrl?: (name: string) => string | undefined;
}

/** What every part of the printer needs to know. */
export interface HtmlContext {
  sheet: Sheet;
  labels: Labels;
  options: HtmlOptions;
  memo: HtmlMemo;
}

/** Markup that is ready to print. A brand of its own, so that unescaped text cannot be mistaken for it. */
export type Html = string & { readonly html: unique symbol };

type Child = Html | readonly Html[] | undefined;

const replacements: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text as markup: nothing in it can open a tag or end an attribute. */
export function escapeHtml(text: string): Html {
  const printable = printableText(text);
  if (!/[&<>"']/u.test(printable)) return printable as Html;
  return printable.replace(/[&<>"']/gu, (character) => replacements[character] ?? character) as Html;
}

/** Trusted markup of our own, such as a symbol. Never call it with text from a document. */
export function ownMarkup(markup: string): Html {
  return markup as Html;
}

export function join(children: readonly Child[]): Html {
  // Added piece by piece: an array joined at every level would copy the whole sheet once for each level.
  let markup = '';
  for (const child of children) {
    if (typeof child === 'string') markup += child;
    else if (child !== undefined) for (const each of child) markup += each;
  }
  return markup as Html;
}

const voidElements = new Set(['img', 'meta']);

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element. An attribute that is undefined is left out; the others are escaped. */
export function el(name: string, attributes: Attributes, ...children: Child[]): Html {
  const written = writtenAttributes(attributes);
  if (voidElements.has(name)) return `<${name}${written}>` as Html;
  return `<${name}${written}>${join(children)}</${name}>` as Html;
}

/** The element with more attributes in its start tag. */
export function withAttributes(element: Html, attributes: Attributes): Html {
  // What could end the tag before is escaped inside it.
  const end = element.indexOf('>');
  return `${element.slice(0, end)}${writtenAttributes(attributes)}${element.slice(end)}` as Html;
}

function writtenAttributes(attributes: Attributes): string {
  let written = '';
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) written += ` ${key}="${escapeHtml(String(value))}"`;
  }
  return written;
}

export function proseHtml(prose: Prose): Html {
  return join(prose.map(runHtml));
}

function runHtml(run: Run): Html {
  const { lang } = run;
  const text = escapeHtml(run.text);
  switch (run.kind) {
    case 'text':
      return lang === undefined ? text : el('span', { lang }, text);
    case 'strong':
      return el('strong', { lang }, text);
    case 'quantity':
      return el('strong', { class: 'quantity', lang }, text);
    case 'stepLink':
      return el('a', { href: `#step-${run.step}`, lang }, text);
    case 'part':
    case 'tool':
    case 'consumable':
      return el('span', { class: run.kind, lang }, text);
  }
}

/** A box to tick by hand. It is drawn, not an input, because the sheet is a record on paper; it has a name to read. */
export function tickBox(name: string, extra = ''): Html {
  return el('span', { class: `tick ${extra}`.trim(), role: 'img', 'aria-label': `☐ ${name}` });
}

export function conditionHtml(condition: Condition | undefined, labels: Labels): Html | undefined {
  if (condition === undefined) return undefined;
  const box = condition.kind === 'outcome' ? tickBox(labels.tickIfApplies) : undefined;
  return el('p', { class: 'condition' }, box, el('strong', {}, escapeHtml(condition.text)));
}

/** A section with a heading, or nothing when there is nothing to put in it. */
export function section(name: string, title: string, ...children: Child[]): Html {
  return el(
    'section',
    { class: name, 'aria-labelledby': `${name}-title` },
    el('h2', { id: `${name}-title` }, escapeHtml(title)),
    ...children,
  );
}

/** The head of a column. One without words is no head: nobody could be told what it is of. */
export function headCell(head: string, name?: string): Html {
  return head === '' ? el('td', { class: name }) : el('th', { scope: 'col', class: name }, escapeHtml(head));
}

/** A table with column heads; each cell is markup already. */
export function table(name: string, heads: readonly string[], rows: readonly (readonly Child[])[]): Html {
  const headCells = heads.map((head) => headCell(head));
  const bodyRows = rows.map((cells) => el('tr', {}, ...cells.map((cell) => el('td', {}, cell))));
  return el(
    'div',
    // What may be wider than the page can be moved by keys.
    { class: 'table-frame', tabindex: 0 },
    el('table', { class: name }, el('thead', {}, el('tr', {}, ...headCells)), el('tbody', {}, ...bodyRows)),
  );
}

/** Addresses of the drawings last printed: a preview is printed at every key, and its drawings stay the same. */
const dataUrls = new Map<string, string>();
const MOST_DATA_URLS = 64;

/** A drawing as an image, so that nothing in it can run or reach outside. */
export function svgDataUrl(svg: string): string {
  const known = dataUrls.get(svg);
  if (known !== undefined) return known;
  const url = `data:image/svg+xml;base64,${base64(utf8Bytes(withNamespace(svg)))}`;
  if (dataUrls.size >= MOST_DATA_URLS) dataUrls.clear();
  dataUrls.set(svg, url);
  return url;
}

// A drawing without its namespace is shown inside a page but not as an image.
function withNamespace(svg: string): string {
  return /<svg[^>]*\sxmlns\s*=/u.test(svg) ? svg : svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"');
}
