import type { HtmlBlock, HtmlGroup } from '../core/sheet/htmlPieces';
import type { PageBlock, PagePart } from './protocol';

/** The blocks of a page as a change of those that its reader has; each with its markup where there are none. */
export function changedParts(next: readonly HtmlBlock[], old: readonly HtmlBlock[] | undefined): PagePart[] {
  return new PageChange(old ?? []).parts(next, old ?? []);
}

class PageChange {
  #pieces: ReadonlyMap<string, string> | undefined;

  constructor(readonly page: readonly HtmlBlock[]) {}

  /** The parts of an element that the reader has with others; those that stay as they are go as stretches. */
  parts(next: readonly HtmlBlock[], old: readonly HtmlBlock[]): PagePart[] {
    const parts: PagePart[] = [];
    let places: ReadonlyMap<string, number> | undefined;
    let at = 0;
    for (const block of next) {
      if (old[at]?.key !== block.key) {
        places ??= new Map(old.map(({ key }, place) => [key, place]));
        at = places.get(block.key) ?? old.length;
      }
      const changed = this.#changed(block, old[at]);
      if (changed === undefined) keep(parts, at);
      else parts.push(changed);
      at += 1;
    }
    return parts;
  }

  /** Undefined for a block that is as it was. */
  #changed(block: HtmlBlock, old: HtmlBlock | undefined): PageBlock | undefined {
    if (block === old) return undefined;
    const { key } = block;
    if (!('html' in block)) return this.#changedGroup(block, old);
    if (old !== undefined && 'html' in old && old.html === block.html) return undefined;
    // A step may have come from another phase.
    return old === undefined && this.#markup(key) === block.html ? { key } : { key, html: block.html };
  }

  #changedGroup({ key, element, attributes, parts }: HtmlGroup, old: HtmlBlock | undefined): PageBlock | undefined {
    const before = old !== undefined && 'parts' in old && old.element === element ? old : undefined;
    const changed = this.parts(parts, before?.parts ?? []);
    const isSame =
      before !== undefined && areAll(changed, before.parts.length) && areSame(attributes, before.attributes);
    return isSame ? undefined : { key, element, attributes, parts: changed };
  }

  #markup(key: string): string | undefined {
    this.#pieces ??= new Map(piecesIn(this.page));
    return this.#pieces.get(key);
  }
}

function keep(parts: PagePart[], place: number): void {
  const last = parts.at(-1);
  if (last !== undefined && 'kept' in last && last.from + last.kept === place) {
    parts[parts.length - 1] = { kept: last.kept + 1, from: last.from };
  } else parts.push({ kept: 1, from: place });
}

/** Whether the parts are all those that were there, in their order. */
function areAll(parts: readonly PagePart[], count: number): boolean {
  const [only] = parts;
  if (only === undefined || parts.length > 1) return count === 0 && only === undefined;
  return 'kept' in only && only.from === 0 && only.kept === count;
}

function areSame(some: HtmlGroup['attributes'], others: HtmlGroup['attributes']): boolean {
  const names = Object.keys(some);
  return names.length === Object.keys(others).length && names.every((name) => some[name] === others[name]);
}

function* piecesIn(blocks: readonly HtmlBlock[]): Generator<[key: string, html: string]> {
  for (const block of blocks) {
    if ('html' in block) yield [block.key, block.html];
    else yield* piecesIn(block.parts);
  }
}
