import { countWhile } from '../text/countWhile';
import type { Item } from './node';

/** Where each item of a reading stands. Most readings are asked for few places, if any, so items are found on demand. */
export class Places {
  #byItem: Map<Item, number> | undefined;

  /**
   * @param items in the order in which they stand
   * @param firsts the first line of each
   * @param starts where lines start
   * @param others items that stand between them, each with its offset
   */
  constructor(
    readonly items: readonly Item[],
    readonly firsts: readonly number[],
    readonly starts: Int32Array,
    readonly others: { readonly items: readonly Item[]; readonly bases: readonly number[] },
  ) {}

  holds(item: Item): boolean {
    return this.#bases.has(item);
  }

  baseOf(item: Item): number {
    return this.#bases.get(item) ?? 0;
  }

  itemAt(offset: number): { item: Item; offset: number } | undefined {
    return (
      within(this.items[this.#lastUpTo(offset)], this.#base(this.#lastUpTo(offset)), offset) ??
      this.others.items
        .map((item, i) => within(item, this.others.bases[i] ?? 0, offset))
        .find((one) => one !== undefined)
    );
  }

  /** The last item that starts at an offset or before it. */
  #lastUpTo(offset: number): number {
    return Math.max(0, countWhile(this.items.length, (index) => this.#base(index) <= offset) - 1);
  }

  #base(index: number): number {
    return this.starts[this.firsts[index] ?? 0] ?? 0;
  }

  get #bases(): ReadonlyMap<Item, number> {
    if (this.#byItem !== undefined) return this.#byItem;
    const bases = new Map<Item, number>();
    for (let i = 0; i < this.items.length; i++) bases.set(this.items[i] as Item, this.#base(i));
    this.others.items.forEach((item, i) => {
      bases.set(item, this.others.bases[i] ?? 0);
    });
    this.#byItem = bases;
    return bases;
  }
}

function within(item: Item | undefined, base: number, offset: number): { item: Item; offset: number } | undefined {
  const isWithin = item !== undefined && offset >= base && offset <= base + item.text.length;
  return isWithin ? { item, offset: offset - base } : undefined;
}
