/**
 * What was asked of the ids that a procedure declares itself, and what the answers were: what was concluded from them
 * stays true as long as the same questions are answered alike.
 */
export class NameQuestions {
  /** The answers by kind and id. */
  readonly #found = new Map<string, Map<string, string>>();
  /** All ids were gone through, as when something near to a misspelt one is looked for. */
  all = false;
  /** It mattered which texts cannot be read. */
  torn = false;

  found(kind: string, id: string, answer: string): void {
    const known = this.#found.get(kind);
    if (known === undefined) this.#found.set(kind, new Map([[id, answer]]));
    else known.set(id, answer);
  }

  get isEmpty(): boolean {
    return this.#found.size === 0 && !this.all && !this.torn;
  }

  /** Whether each single question is answered as it was. */
  holds(ask: (kind: string, id: string) => string): boolean {
    for (const [kind, answers] of this.#found) {
      for (const [id, answer] of answers) if (ask(kind, id) !== answer) return false;
    }
    return true;
  }
}
