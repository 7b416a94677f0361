import type { Shape } from '../../model/shape';
import type { Item, Node, Pair } from '../../syntax/node';
import { readItem } from '../../syntax/readItem';
import { ItemPrinter } from './itemPrinter';
import { indented, type Line } from './line';
import { commentsOf, isSameTree } from './sameMeaning';
import { shapeBelow, shapeOfItems } from './shapeBelow';

/** What an item is in its document: an entry of a map, the first of them behind a dash, or an entry of a list. */
export type ItemPlace = 'pair' | 'list-item';

/** An item as it is to be written, and how many of its lines that stands for; comments below may be about what comes next. */
export interface FormattedItem {
  readonly lines: readonly Line[];
  readonly height: number;
}

interface Remembered {
  readonly shape: Shape | undefined;
  readonly place: ItemPlace;
  readonly formatted: FormattedItem | undefined;
}

const remembered = new WeakMap<Item, Remembered>();

/**
 * The lines of an item, formatted; `container` is the shape of the map or list that it is an entry of. Undefined where the
 * item is to stay as it is: it is broken, or what was written would not read as the same.
 */
export function formatItem(item: Item, place: ItemPlace, container: Shape | undefined): FormattedItem | undefined {
  const entry = entryOf(item, place);
  if (entry === undefined || item.problems.length > 0) return undefined;
  const shape = isPair(entry) ? shapeBelow(container, entry.key.text) : shapeOfItems(container);
  const known = remembered.get(item);
  if (known?.shape === shape && known?.place === place) return known.formatted;
  const result = formatted(item, entry, place, shape);
  remembered.set(item, { shape, place, formatted: result });
  return result;
}

/** The only entry of an item. */
function entryOf({ root }: Item, place: ItemPlace): Node | Pair | undefined {
  const only = root?.kind === 'list' && !root.flow && root.items.length === 1 ? root.items[0] : undefined;
  if (place === 'list-item') return only;
  const map = only ?? root;
  return map?.kind === 'map' && !map.flow && map.pairs.length === 1 ? map.pairs[0] : undefined;
}

function formatted(
  item: Item,
  entry: Node | Pair,
  place: ItemPlace,
  shape: Shape | undefined,
): FormattedItem | undefined {
  const printer = new ItemPrinter(item);
  const lines = isPair(entry) ? printer.pair(entry, shape) : printer.listItem(entry, shape);
  const before = item.text.slice(0, printer.written);
  if (!printer.sound || !(isUnchanged(before, lines) || isProven(before, entry, lines, place, shape))) return undefined;
  return { lines, height: before.split('\n').length };
}

/** Most items are as they should be, but for where they stand, and need no proof. */
function isUnchanged(before: string, lines: readonly Line[]): boolean {
  const indent = /^ */.exec(before)?.[0].length ?? 0;
  const text = indented(lines, indent).map((line) => line.text);
  return text.join('\n') === before.replaceAll('\r\n', '\n');
}

/** Reads what was written, and compares it with what was read. */
function isProven(
  before: string,
  entry: Node | Pair,
  lines: readonly Line[],
  place: ItemPlace,
  shape: Shape | undefined,
): boolean {
  const text = lines.map((line) => line.text).join('\n');
  const after = readItem(text);
  const other = entryOf(after, place);
  if (other === undefined || after.problems.length > 0) return false;
  const isSame =
    isPair(entry) && isPair(other)
      ? entry.key.text === other.key.text && isSameTree(entry.value, other.value, shape)
      : !isPair(entry) && !isPair(other) && isSameTree(entry, other, shape);
  return isSame && commentsOf(before).join('\n') === commentsOf(text).join('\n');
}

function isPair(entry: Node | Pair): entry is Pair {
  return 'key' in entry;
}
