import type { Uri } from '../core/analysis/uri';
import type { SheetPage } from '../core/sheet/html';
import { changedParts } from './pageChange';
import type { PagePatch, SourcesPatch } from './protocol';

/** More pages than anybody looks at at once. */
const MOST_PAGES = 8;

interface Sent {
  readonly version: number;
  readonly page: SheetPage;
}

/** What was sent of each page last, so that only what has changed is sent again. */
export class SentPages {
  readonly #sent = new Map<Uri, Sent>();
  #version = 0;

  /** The page as a change of the one that its reader has, or the whole of it where that is not the one sent last. */
  patch(uri: Uri, page: SheetPage, since: number | undefined): PagePatch {
    const last = this.#sent.get(uri);
    const known = last !== undefined && last.version === since ? last : undefined;
    this.#version += 1;
    this.#keep(uri, { version: this.#version, page });
    return {
      version: this.#version,
      ...(known === undefined ? {} : { since: known.version }),
      language: page.language,
      bodyClass: page.bodyClass,
      ...(known?.page.style === page.style ? {} : { style: page.style }),
      blocks: changedParts(page.blocks, known?.page.blocks),
      sources: movedSources(page.sources, known?.page.sources ?? []),
    };
  }

  #keep(uri: Uri, sent: Sent): void {
    this.#sent.delete(uri);
    this.#sent.set(uri, sent);
    const [oldest] = this.#sent.keys();
    if (this.#sent.size > MOST_PAGES && oldest !== undefined) this.#sent.delete(oldest);
  }
}

/** A key pressed in one step leaves those above where they are, and moves those below by as much. */
function movedSources(next: readonly number[], old: readonly number[]): SourcesPatch {
  const most = Math.min(next.length, old.length);
  let same = 0;
  while (same < most && next[same] === old[same]) same += 1;
  const by = (next.at(-1) ?? 0) - (old.at(-1) ?? 0);
  let moved = 0;
  while (moved < most - same && next.at(-1 - moved) === (old.at(-1 - moved) ?? 0) + by) moved += 1;
  return { same, between: next.slice(same, next.length - moved), moved, by };
}
