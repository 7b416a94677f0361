import type { QuantityValue } from '../model/values';
import { judgeQuantity } from './judge';
import { keyClass } from './keyClasses';
import type { Slot } from './slot';

/** Compares quantities one by one; passes of another number are another way of tightening. */
export function quantitySlot(slot: Slot): void {
  const [before, after] = [quantitiesOf(slot.typed.before), quantitiesOf(slot.typed.after)];
  if (before.length !== after.length) {
    slot.tell({ class: keyClass(slot.def, slot.key) ?? 'fits' });
    return;
  }
  for (const [index, old] of before.entries()) {
    const now = after[index];
    if (now !== undefined) slot.tell(judgeQuantity(slot.def, slot.key, old, now), old.node, now.node);
  }
}

function quantitiesOf(value: unknown): QuantityValue[] {
  return (Array.isArray(value) ? value : [value]).filter(
    (one): one is QuantityValue => typeof one === 'object' && one !== null && 'reading' in one,
  );
}
