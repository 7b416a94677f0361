import type { KeptLines } from './keptLines';
import type { Item } from './node';
import { readItem } from './readItem';
import type { Reading } from './readingMemo';

/** Where the items of a reading come from. It is asked in the order in which they stand, and gives no item twice. */
export interface ItemSource {
  /** The item that covers just these lines, if it is known without looking at their text. */
  at(first: number, end: number): Item | undefined;
  /** The item of a text: a known one, or one that is read now. */
  of(text: string): Item;
}

/** Where nothing was read before. */
export const NO_ITEMS: ItemSource = { at: () => undefined, of: readItem };

/** Items that are known by their text alone. */
export class ItemsByText implements ItemSource {
  #byText: Map<string, Item[]> | undefined;

  constructor(readonly known: () => readonly Item[]) {}

  at(): Item | undefined {
    return undefined;
  }

  of(text: string): Item {
    this.#byText ??= byText(this.known());
    return this.#byText.get(text)?.shift() ?? readItem(ownCopy(text));
  }
}

function byText(items: readonly Item[]): Map<string, Item[]> {
  const known = new Map<string, Item[]>();
  for (const item of items) {
    const same = known.get(item.text);
    if (same === undefined) known.set(item.text, [item]);
    else same.push(item);
  }
  return known;
}

/** The items of the last reading: those on lines that are the same by their place, the others by their text. */
export class ItemsInPlace implements ItemSource {
  readonly #before: Reading;
  readonly #head: number;
  /** Behind how many lines those at the end are the same, now and before. */
  readonly #tail: number;
  readonly #tailBefore: number;
  readonly #touched = new ItemsByText(() => this.#touchedItems());
  #next = 0;

  constructor(before: Reading, { lines, head, tail }: KeptLines) {
    this.#before = before;
    this.#head = head;
    this.#tail = lines.starts.length - tail;
    this.#tailBefore = before.lines.starts.length - tail;
  }

  at(first: number, end: number): Item | undefined {
    const isBehind = first >= this.#tail;
    if (!isBehind && end > this.#head) return undefined;
    const shift = isBehind ? this.#tail - this.#tailBefore : 0;
    const { items, firsts, ends } = this.#before;
    while (this.#next < firsts.length && (firsts[this.#next] ?? 0) < first - shift) this.#next++;
    const isSame = firsts[this.#next] === first - shift && ends[this.#next] === end - shift;
    return isSame ? items[this.#next] : undefined;
  }

  of(text: string): Item {
    return this.#touched.of(text);
  }

  /** The items that no place gives any more. */
  #touchedItems(): Item[] {
    const { items, firsts, ends } = this.#before;
    return items.filter((_, i) => (ends[i] ?? 0) > this.#head && (firsts[i] ?? 0) < this.#tailBefore);
  }
}

/**
 * A stretch of a text keeps the whole text in memory. Items outlive the text that they were read from, and each key that
 * is pressed gives another text; so an item that is read after an edit gets a text of its own.
 */
function ownCopy(text: string): string {
  return ` ${text}`.slice(1);
}
