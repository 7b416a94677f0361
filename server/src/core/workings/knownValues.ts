import type { CalculationStep } from '../standards/calculation';

/** A value of a calculation: unrounded, and as it is shown. */
export interface KnownValue {
  readonly value: number;
  readonly shown: string;
}

/** What a calculation has come to so far: for each symbol every value that it had, the last one counts. */
export class KnownValues {
  readonly #values = new Map<string, KnownValue[]>();
  readonly #signs: (1 | -1)[] = [];

  /** A step `+x` or `−x` is a term of a sum over x. */
  add({ symbol, value }: CalculationStep, shown: string): void {
    const [, sign, bare = symbol] = /^([+−])(.+)$/.exec(symbol) ?? [];
    if (sign !== undefined) this.#signs.push(sign === '+' ? 1 : -1);
    this.#values.set(bare, [...(this.#values.get(bare) ?? []), { value, shown }]);
  }

  all(symbol: string): readonly KnownValue[] {
    return this.#values.get(symbol) ?? [];
  }

  latest(symbol: string): KnownValue | undefined {
    return this.#values.get(symbol)?.at(-1);
  }

  /** The signs of the terms of a sum, in order. */
  get signs(): readonly (1 | -1)[] {
    return this.#signs;
  }
}
