import type { Keys, Shape } from '../model/shape';
import { type MapNode, type Node, pairOf } from '../syntax/node';
import { byBuildSlot } from './byBuildSlot';
import { conditionSlot } from './conditionSlot';
import { judgeScalar, meansSame } from './judge';
import { keyClass } from './keyClasses';
import { quantitySlot } from './quantitySlot';
import { type Compared, Slot, type Values } from './slot';
import { proseSlot, textsSlot } from './textSlots';
import type { TwoDocuments } from './twoSides';

/** Compares two values of one definition key by key, and tells what differs. */
export function objectChanges(two: TwoDocuments, values: Values, compared: Compared): void {
  for (const key of keysOf(values, compared)) {
    const shape = compared.keys[key]?.shape;
    const slot = new Slot(two, values, compared, key, nodeAt(values.before, key), nodeAt(values.after, key));
    if (shape !== undefined) compareSlot(slot, shape);
  }
}

function keysOf(values: Values, { keys, without }: Compared): string[] {
  const written = [values.after, values.before].flatMap(
    (value) => mapOf(value)?.pairs.map(({ key }) => key.text) ?? [],
  );
  return [...new Set(written)].filter((key) => key in keys && without?.has(key) !== true);
}

function mapOf(value: Readonly<Record<string, unknown>>): MapNode | undefined {
  const node = value.node as Node | undefined;
  return node?.kind === 'map' ? node : undefined;
}

function nodeAt(value: Readonly<Record<string, unknown>>, key: string): Node | undefined {
  const map = mapOf(value);
  return map === undefined ? undefined : pairOf(map, key)?.value;
}

function compareSlot(slot: Slot, shape: Shape): void {
  const { before, after, two } = slot;
  if (before === undefined && after === undefined) return;
  const both = before !== undefined && after !== undefined;
  if (both && meansSame(before, after, shape, two.renamed)) return;
  const compare = comparerOf(shape, both);
  if (compare === undefined) slot.tellGone(before, after);
  else compare(slot);
}

/** How two values of a shape are compared; where one is missing, only some have more to say than that it came or went. */
function comparerOf(shape: Shape, both: boolean): ((slot: Slot) => void) | undefined {
  if (shape.as === 'by-build') return byBuildSlot;
  if (shape.as === 'condition') return conditionSlot;
  if (shape.as === 'prose' && shape.many) return textsSlot;
  if (!both) return undefined;
  if (shape.as === 'prose') return proseSlot;
  if (shape.as === 'scalar' && shape.scalar.is === 'quantity') return quantitySlot;
  if (shape.as === 'object' && !shape.many) return (slot) => innerSlot(slot, shape.keys);
  if (shape.as === 'list' && shape.items.as === 'instruction') return instructionsSlot;
  return (slot) => wholeSlot(slot, shape);
}

function wholeSlot(slot: Slot, shape: Shape): void {
  const { before, after, def, key, two } = slot;
  if (before !== undefined && after !== undefined)
    slot.tell(judgeScalar(def, key, [before, after], shape, two.renamed));
}

/** A map inside, such as a fit or what to do when a limit fails; a shorthand has no keys and is compared whole. */
function innerSlot(slot: Slot, keys: Keys): void {
  const { before, after } = slot.typed;
  const both = { before: (before ?? {}) as Values['before'], after: (after ?? {}) as Values['after'] };
  if (mapOf(both.before) === undefined || mapOf(both.after) === undefined)
    slot.tell({ class: keyClass(slot.def, slot.key) ?? 'fits' });
  else objectChanges(slot.two, both, { ...slot.compared, keys, without: new Set() });
}

function instructionsSlot(slot: Slot): void {
  const { before, after } = slot.typed;
  if (Array.isArray(before) && Array.isArray(after)) slot.compared.instructions?.({ before, after });
}
