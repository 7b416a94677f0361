import type { SafeText } from './disarm';
import type { ItemSource } from './itemSource';
import { type Lines, lineEnd } from './lines';
import type { Item } from './node';

/** Gives the items of a reading one after another, in the order in which they stand, and notes which lines they cover. */
export class ItemReader {
  readonly items: Item[] = [];
  readonly firsts: number[] = [];
  readonly ends: number[] = [];

  constructor(
    readonly text: SafeText,
    readonly lines: Lines,
    readonly source: ItemSource,
  ) {}

  /** @param end the line behind the last one */
  read(first: number, end: number): Item {
    const item = this.source.at(first, end) ?? this.source.of(this.#textOf(first, end));
    this.items.push(item);
    this.firsts.push(first);
    this.ends.push(end);
    return item;
  }

  #textOf(first: number, end: number): string {
    return this.text.slice(this.lines.starts[first] ?? 0, lineEnd(this.lines, end - 1));
  }
}
