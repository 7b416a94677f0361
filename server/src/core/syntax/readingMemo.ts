import type { DocumentText } from '../text/documentText';
import { type ItemSource, ItemsInPlace, NO_ITEMS } from './itemSource';
import { type KeptLines, linesAfter } from './keptLines';
import { type Lines, linesOf } from './lines';
import type { Item } from './node';

/** One reading of a text: its items in the order in which they stand, and the lines that each covers. */
export interface Reading {
  readonly text: DocumentText;
  readonly lines: Lines;
  readonly items: readonly Item[];
  /** The first line of each item. */
  readonly firsts: readonly number[];
  /** The line behind the last one of each item. */
  readonly ends: readonly number[];
}

/**
 * Remembers the last reading of one document, so that the next one looks only at what an edit has touched. An item whose
 * lines are all the same stays the same object, wherever they moved; so does one that was moved within the edit.
 * Where the same text stands twice in a document, each place has its own item, so that an item always has one place.
 */
export class ReadingMemo {
  #last: Reading | undefined;

  /** A memo that remembers a reading, so that another text of the same document is read from what differs. */
  static of(reading: Reading): ReadingMemo {
    const memo = new ReadingMemo();
    memo.#last = reading;
    return memo;
  }

  /** The lines of the text that is read next, and the items that it may take over. */
  startReading(text: DocumentText): { readonly lines: Lines; readonly source: ItemSource } {
    const last = this.#last;
    if (last !== undefined) {
      const kept: KeptLines = linesAfter(last, text);
      return { lines: kept.lines, source: new ItemsInPlace(last, kept) };
    }
    return { lines: linesOf(text), source: NO_ITEMS };
  }

  finishReading(reading: Reading): void {
    this.#last = reading;
  }
}
