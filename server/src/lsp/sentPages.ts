import type { Uri } from '../core/analysis/uri';
import type { SheetPage } from '../core/sheet/html';
import type { HtmlBlock } from '../core/sheet/htmlBlocks';
import type { PageBlock, PagePatch } from './protocol';

/** More pages than anybody looks at at once. */
const MOST_PAGES = 8;

interface Sent {
  readonly version: number;
  readonly style: string;
  readonly pieces: ReadonlyMap<string, string>;
}

/** What was sent of each page last, so that only what has changed is sent again. */
export class SentPages {
  readonly #sent = new Map<Uri, Sent>();
  #version = 0;

  /** The page as a change of the one that its reader has, or the whole of it where that is not the one sent last. */
  patch(uri: Uri, page: SheetPage, since: number | undefined): PagePatch {
    const last = this.#sent.get(uri);
    const known = last !== undefined && last.version === since ? last : undefined;
    const pieces = new Map<string, string>();
    const blocks = page.blocks.map((block) => changed(block, known?.pieces, pieces));
    this.#version += 1;
    this.#keep(uri, { version: this.#version, style: page.style, pieces });
    return {
      version: this.#version,
      ...(known === undefined ? {} : { since: known.version }),
      language: page.language,
      bodyClass: page.bodyClass,
      ...(known?.style === page.style ? {} : { style: page.style }),
      blocks,
      sources: page.sources,
    };
  }

  #keep(uri: Uri, sent: Sent): void {
    this.#sent.delete(uri);
    this.#sent.set(uri, sent);
    const [oldest] = this.#sent.keys();
    if (this.#sent.size > MOST_PAGES && oldest !== undefined) this.#sent.delete(oldest);
  }
}

/** Notes every piece in `pieces`; one that the reader has goes without its markup. */
function changed(
  block: HtmlBlock,
  known: ReadonlyMap<string, string> | undefined,
  pieces: Map<string, string>,
): PageBlock {
  const { key } = block;
  if (!('html' in block)) {
    const { element, attributes } = block;
    return { key, element, attributes, parts: block.parts.map((part) => changed(part, known, pieces)) };
  }
  pieces.set(key, block.html);
  return known?.get(key) === block.html ? { key } : { key, html: block.html };
}
