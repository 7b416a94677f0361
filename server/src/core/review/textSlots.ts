import type { Prose } from '../model/values';
import { judgeText, meansSame } from './judge';
import { keyClass } from './keyClasses';
import { matchSequence, wordLikeness } from './matchSequence';
import { meaningOf } from './meaning';
import type { Slot } from './slot';

/** One text, with its translations. */
export function proseSlot(slot: Slot): void {
  const { typed, two, def, key } = slot;
  const text = (value: unknown) => meaningOf((value as Prose | undefined)?.scalar, undefined, two.renamed);
  const [before, after] = [text(typed.before), text(typed.after)];
  if (before === after) slot.tell({ class: 'says', note: 'only a translation differs' });
  else slot.tell(judgeText(key, keyClass(def, key) ?? 'says', before, after));
}

/** Texts that stand in a list, each with the one that it was. */
export function textsSlot(slot: Slot): void {
  const { typed, two, def, key } = slot;
  const { pairs, removed, added } = matchSequence(textsOf(typed.before), textsOf(typed.after), {
    identity: (one) => meaningOf(one.node, undefined),
    likeness: (a, b) => wordLikeness(a.text, b.text),
    least: 0.5,
  });
  for (const { before, after } of pairs) {
    if (meansSame(before.node, after.node, undefined, two.renamed)) continue;
    slot.tell(judgeText(key, keyClass(def, key) ?? 'says', before.text, after.text), before.node, after.node);
  }
  for (const one of removed) slot.tellGone(one.node, undefined);
  for (const one of added) slot.tellGone(undefined, one.node);
}

function textsOf(value: unknown): Prose[] {
  return Array.isArray(value) ? (value as Prose[]) : [];
}
