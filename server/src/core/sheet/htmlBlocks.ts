import { backHtml, footerHtml } from './htmlBack';
import { frontHtml, headerHtml } from './htmlFront';
import { findingsHtml, phaseId, phaseParts } from './htmlSteps';
import { el, type Html, type HtmlContext, join } from './htmlText';

/** A piece of the page that is shown or replaced as a whole. */
export interface HtmlPiece {
  /** One and the same from one printing to the next as long as it is about the same thing; no two pieces share one. */
  readonly key: string;
  readonly html: Html;
}

/** An element that holds pieces and groups. */
export interface HtmlGroup {
  readonly key: string;
  readonly element: 'main' | 'section';
  readonly attributes: Readonly<Record<string, string>>;
  readonly parts: readonly HtmlBlock[];
}

export type HtmlBlock = HtmlPiece | HtmlGroup;

/** The body of the page, piece by piece: a preview replaces only those that have changed. */
export function bodyBlocks(context: HtmlContext): HtmlBlock[] {
  const { sheet, options } = context;
  const keys = new Keys();
  const findings = options.mode === 'preview' ? findingsHtml(sheet.findings, context) : undefined;
  const phases = sheet.phases.map((phase, index): HtmlGroup => {
    const id = phaseId(index + 1);
    return {
      key: keys.unused(`section ${id}`),
      element: 'section',
      attributes: { class: 'phase', 'aria-labelledby': id },
      parts: keys.pieces(phaseParts(phase, index + 1, context)),
    };
  });
  const parts = [...keys.pieces([findings, ...frontHtml(context)]), ...phases, ...keys.pieces(backHtml(context))];
  return [
    ...keys.pieces([headerHtml(context)]),
    { key: 'main', element: 'main', attributes: {}, parts },
    ...keys.pieces([footerHtml(context)]),
  ];
}

export function blockHtml(block: HtmlBlock): Html {
  if ('html' in block) return block.html;
  return el(block.element, block.attributes, join(block.parts.map(blockHtml)));
}

/** Gives every piece a key of its own. */
class Keys {
  readonly #given = new Set<string>();

  pieces(all: readonly (Html | undefined)[]): HtmlPiece[] {
    return all.flatMap((html) => (html === undefined ? [] : [{ key: this.unused(nameOf(html)), html }]));
  }

  /** Text that is only half written may have two steps of one id. */
  unused(name: string): string {
    let key = name;
    for (let number = 2; this.#given.has(key); number += 1) key = `${name} ${number}`;
    this.#given.add(key);
    return key;
  }
}

/** What the start tag says a piece is: its element with its id, or else its heading's, or else its class. */
function nameOf(html: Html): string {
  const tag = /^<[^>]*>/u.exec(html)?.[0] ?? '';
  const element = /^<([a-z0-9]+)/u.exec(tag)?.[1] ?? '';
  const said = /\s(?:id|aria-labelledby|class)="([^"]*)"/u.exec(tag)?.[1] ?? '';
  return `${element} ${said}`.trim();
}
