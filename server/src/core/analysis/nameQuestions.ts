/**
 * What was asked of the ids that a procedure declares itself, and what the answers were: what was concluded from them
 * stays true as long as the same questions are answered alike.
 */
export class NameQuestions {
  readonly #found = new Map<string, { readonly kind: string; readonly id: string; readonly answer: string }>();
  /** All ids were gone through, as when something near to a misspelt one is looked for. */
  all = false;
  /** It mattered which texts cannot be read. */
  torn = false;

  found(kind: string, id: string, answer: string): void {
    this.#found.set(`${kind}/${id}`, { kind, id, answer });
  }

  get isEmpty(): boolean {
    return this.#found.size === 0 && !this.all && !this.torn;
  }

  /** Whether each single question is answered as it was. */
  holds(ask: (kind: string, id: string) => string): boolean {
    for (const { kind, id, answer } of this.#found.values()) if (ask(kind, id) !== answer) return false;
    return true;
  }
}
