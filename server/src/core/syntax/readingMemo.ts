import type { Item } from './node';
import { readItem } from './readItem';

/**
 * Remembers the items of the last reading of one document by their text. Where the same text stands twice in a
 * document, each place has its own item, so that an item always has one place.
 */
export class ReadingMemo {
  #last: ReadonlyMap<string, readonly Item[]> = new Map();

  /** A memo that remembers the items of a document, so that another text of it is read without reading them again. */
  static holding(items: readonly Item[]): ReadingMemo {
    const memo = new ReadingMemo();
    const known = new Map<string, Item[]>();
    for (const item of items) known.set(item.text, [...(known.get(item.text) ?? []), item]);
    memo.#last = known;
    return memo;
  }

  startReading(): { read(text: string): Item; finish(): void } {
    const last = this.#last;
    const now = new Map<string, Item[]>();
    return {
      read: (text) => {
        const known = now.get(text) ?? [];
        const item = last.get(text)?.[known.length] ?? readItem(text);
        now.set(text, [...known, item]);
        return item;
      },
      finish: () => {
        this.#last = now;
      },
    };
  }
}
