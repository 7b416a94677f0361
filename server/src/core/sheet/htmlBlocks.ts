import { backHtml, footerHtml } from './htmlBack';
import { frontHtml, headerHtml } from './htmlFront';
import { findingsHtml, type NamedPart, phaseId, phaseParts } from './htmlSteps';
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
  let firstStep = 0;
  const phases = sheet.phases.map((phase, index): HtmlGroup => {
    const id = phaseId(index + 1);
    const place = { number: index + 1, firstStep };
    firstStep += phase.steps.length;
    return {
      key: id,
      element: 'section',
      attributes: { class: 'phase', 'aria-labelledby': id },
      parts: keys.named(phaseParts(phase, place, context), id),
    };
  });
  const parts = [
    ...keys.tagged([findings, ...frontHtml(context)], 'front'),
    ...phases,
    ...keys.tagged(backHtml(context), 'back'),
  ];
  return [
    { key: 'header', html: headerHtml(context) },
    { key: 'main', element: 'main', attributes: {}, parts },
    { key: 'footer', html: footerHtml(context) },
  ];
}

export function blockHtml(block: HtmlBlock): Html {
  if ('html' in block) return block.html;
  return el(block.element, block.attributes, join(block.parts.map(blockHtml)));
}

/** Gives every piece a key of its own: text that is only half written may have two steps of one id. */
class Keys {
  readonly #given = new Set<string>();

  named(parts: readonly NamedPart[], group: string): HtmlPiece[] {
    return parts.flatMap(({ name, html }) => (html === undefined ? [] : [{ key: this.#unused(name, group), html }]));
  }

  /** Parts that are known by what their start tags say. */
  tagged(parts: readonly (Html | undefined)[], group: string): HtmlPiece[] {
    return this.named(
      parts.map((html) => ({ name: html === undefined ? '' : nameOf(html), html })),
      group,
    );
  }

  #unused(name: string, group: string): string {
    // A step that moves to another phase stays the same step.
    const whole = name.startsWith('step ') ? name : `${group} ${name}`;
    let key = whole;
    for (let number = 2; this.#given.has(key); number += 1) key = `${whole} ${number}`;
    this.#given.add(key);
    return key;
  }
}

/** The element with its id, or else that of its heading, or else its class. */
function nameOf(html: Html): string {
  const tag = html.slice(0, html.indexOf('>'));
  const element = /^<([a-z0-9]+)/u.exec(tag)?.[1] ?? '';
  const said = /\s(?:id|aria-labelledby|class)="([^"]*)"/u.exec(tag)?.[1] ?? '';
  return `${element} ${said}`.trim();
}
