import { el, type Html, join } from './htmlText';

/** A piece of the page that is shown or replaced as a whole. */
export interface HtmlPiece {
  /** One and the same from one printing to the next as long as it is about the same thing; no two pieces share one. */
  readonly key: string;
  readonly html: Html;
}

/** An element that holds pieces and groups. */
export interface HtmlGroup {
  readonly key: string;
  readonly element: 'main' | 'section' | 'div' | 'table' | 'tbody';
  readonly attributes: Readonly<Record<string, string>>;
  readonly parts: readonly HtmlBlock[];
}

/** What is a piece never becomes a group under the same key. */
export type HtmlBlock = HtmlPiece | HtmlGroup;

export function blockHtml(block: HtmlBlock): Html {
  if ('html' in block) return block.html;
  return el(block.element, block.attributes, join(block.parts.map(blockHtml)));
}

/** A piece for each part that there is; what it is called within its group is read off its start tag. */
export function piecesOf(parts: readonly (Html | undefined)[], group: string): HtmlPiece[] {
  return parts.flatMap((html) => (html === undefined ? [] : [{ key: `${group} ${nameOf(html)}`, html }]));
}

/** The element with its id, or else that of its heading, or else its class. */
function nameOf(html: Html): string {
  const tag = html.slice(0, html.indexOf('>'));
  const element = /^<([a-z0-9]+)/u.exec(tag)?.[1] ?? '';
  const said = /\s(?:id|aria-labelledby|class)="([^"]*)"/u.exec(tag)?.[1] ?? '';
  return `${element} ${said}`.trim();
}

/** The same blocks, each with a key of its own: text that is only half written may have two steps of one id. */
export function withOwnKeys(blocks: readonly HtmlBlock[], given = new Map<string, number>()): HtmlBlock[] {
  return blocks.map((block) => {
    const key = unused(block.key, given);
    given.set(key, 1);
    if ('html' in block) return key === block.key ? block : { ...block, key };
    return { ...block, key, parts: withOwnKeys(block.parts, given) };
  });
}

/** With each key goes how many of them there are. */
function unused(key: string, given: Map<string, number>): string {
  let number = given.get(key);
  if (number === undefined) return key;
  do number += 1;
  while (given.has(`${key} ${number}`));
  given.set(key, number);
  return `${key} ${number}`;
}
