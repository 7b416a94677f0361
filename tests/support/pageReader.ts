import type { PageBlock, PagePart, PagePatch } from '../../server/src/lsp/protocol';

type Group = Extract<PageBlock, { readonly parts: readonly PagePart[] }>;

/** Somebody who has a page and puts each change of it into place. What the change takes for known must be there. */
export class PageReader {
  version: number | undefined;
  sources: readonly number[] = [];
  readonly #pieces = new Map<string, string>();
  readonly #groups = new Map<string, Pick<Group, 'element' | 'attributes'>>();
  #orders = new Map<string, readonly string[]>();

  take({ version, since, blocks, sources }: PagePatch): void {
    if (since !== undefined && since !== this.version) throw new Error(`no version ${since}`);
    this.version = version;
    this.#place('', blocks);
    const { same, between, moved, by } = sources;
    const behind = this.sources.slice(this.sources.length - moved).map((offset) => offset + by);
    this.sources = [...this.sources.slice(0, same), ...between, ...behind];
  }

  /** The markup of the whole body. */
  body(group = ''): string {
    return (this.#orders.get(group) ?? []).map((key) => this.#markup(key)).join('');
  }

  #place(group: string, parts: readonly PagePart[]): void {
    const before = this.#orders.get(group) ?? [];
    const after = parts.flatMap((part) => {
      if (!('kept' in part)) return [this.#put(part)];
      const kept = before.slice(part.from, part.from + part.kept);
      if (kept.length !== part.kept) throw new Error(`${group} has no ${part.from} to ${part.from + part.kept}`);
      return kept;
    });
    this.#orders.set(group, after);
  }

  #put(block: PageBlock): string {
    const isGroup = 'parts' in block;
    if (isGroup ? this.#pieces.has(block.key) : this.#groups.has(block.key))
      throw new Error(`two kinds of ${block.key}`);
    if (isGroup) {
      this.#groups.set(block.key, block);
      this.#place(block.key, block.parts);
    } else if (block.html !== undefined) this.#pieces.set(block.key, block.html);
    return block.key;
  }

  #markup(key: string): string {
    const group = this.#groups.get(key);
    if (group === undefined) return this.#pieces.get(key) ?? `(no ${key})`;
    const attributes = Object.entries(group.attributes).map(([name, value]) => ` ${name}="${value}"`);
    return `<${group.element}${attributes.join('')}>${this.body(key)}</${group.element}>`;
  }
}

/** The keys of what a change brings the markup of. */
export function broughtBy(parts: readonly PagePart[]): string[] {
  return parts.flatMap((part) => {
    if ('kept' in part) return [];
    if ('parts' in part) return broughtBy(part.parts);
    return part.html === undefined ? [] : [part.key];
  });
}
