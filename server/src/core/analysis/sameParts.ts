/** Few procedures are worked on at a time; each is found again after a key as long as it is among the last. */
const MOST = 6;

interface Known<Value> {
  readonly parts: readonly unknown[];
  readonly value: Value;
}

/**
 * What rests on several things, each of which keeps its identity: made once and then the same object as long as all of
 * them are the same objects.
 */
export class SameParts<Value> {
  readonly #recent: Known<Value>[] = [];

  of(parts: readonly unknown[], make: () => Value): Value {
    const at = this.#recent.findIndex((one) => areSame(one.parts, parts));
    const known = this.#recent[at] ?? { parts, value: make() };
    if (at >= 0) this.#recent.splice(at, 1);
    this.#recent.unshift(known);
    this.#recent.length = Math.min(this.#recent.length, MOST);
    return known.value;
  }
}

export function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  return some.length === others.length && some.every((part, i) => part === others[i]);
}
