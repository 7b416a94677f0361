import type { Item } from './node';
import { readItem } from './readItem';

/**
 * Remembers the items of the last reading of one document by their text. Where the same text stands twice in a
 * document, each place has its own item, so that an item always has one place.
 */
export class ReadingMemo {
  #last: KnownItems = new Map();

  /** A memo that remembers the items of a document, so that another text of it is read without reading them again. */
  static holding(items: readonly Item[]): ReadingMemo {
    const memo = new ReadingMemo();
    for (const item of items) add(memo.#last, item.text, item, memo.#last.get(item.text));
    return memo;
  }

  startReading(): { read(text: string): Item; finish(): void } {
    const last = this.#last;
    const now: KnownItems = new Map();
    return {
      read: (text) => {
        const known = now.get(text);
        const item = itemAt(last.get(text), countOf(known)) ?? readItem(text);
        add(now, text, item, known);
        return item;
      },
      finish: () => {
        this.#last = now;
      },
    };
  }
}

/** Items by their text. Nearly every text stands once, and then needs no list. */
type KnownItems = Map<string, Item | Item[]>;

function countOf(known: Item | Item[] | undefined): number {
  if (known === undefined) return 0;
  return Array.isArray(known) ? known.length : 1;
}

function itemAt(known: Item | Item[] | undefined, place: number): Item | undefined {
  if (Array.isArray(known)) return known[place];
  return place === 0 ? known : undefined;
}

function add(items: KnownItems, text: string, item: Item, known: Item | Item[] | undefined): void {
  if (Array.isArray(known)) known.push(item);
  else items.set(text, known === undefined ? item : [known, item]);
}
