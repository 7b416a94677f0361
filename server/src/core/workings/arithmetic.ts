/**
 * Works out an expression as it stands in a line of a calculation: numbers, π, + − · / √ ² ³ and brackets, as
 * `π/4·(5 − 0.9382·0.8)²`. Undefined where it holds anything else.
 */
export function evaluate(expression: string): number | undefined {
  const tokens = expression.match(TOKEN) ?? [];
  if (tokens.join('') !== expression.replace(/\s+/g, '')) return undefined;
  const reader = new Reader(tokens);
  const value = reader.sum();
  return reader.isAtEnd && Number.isFinite(value) ? value : undefined;
}

const TOKEN = /\d+(?:\.\d+)?(?:e[+-]?\d+)?|[π√()²³+−·/]/g;

/** Reads by precedence; what does not fit makes the value NaN, which never compares equal to anything. */
class Reader {
  #at = 0;

  constructor(readonly tokens: readonly string[]) {}

  get isAtEnd(): boolean {
    return this.#at === this.tokens.length;
  }

  sum(): number {
    let value = this.#product();
    for (;;) {
      if (this.#took('+')) value += this.#product();
      else if (this.#took('−')) value -= this.#product();
      else return value;
    }
  }

  #product(): number {
    let value = this.#signed();
    for (;;) {
      if (this.#took('·')) value *= this.#signed();
      else if (this.#took('/')) value /= this.#signed();
      // As in 2π, where the sign of multiplication is left out.
      else if (this.tokens[this.#at] === 'π') value *= this.#signed();
      else return value;
    }
  }

  #signed(): number {
    if (this.#took('−')) return -this.#signed();
    if (this.#took('√')) return Math.sqrt(this.#power());
    return this.#power();
  }

  #power(): number {
    let value = this.#single();
    for (;;) {
      if (this.#took('²')) value **= 2;
      else if (this.#took('³')) value **= 3;
      else return value;
    }
  }

  #single(): number {
    if (this.#took('π')) return Math.PI;
    if (this.#took('(')) {
      const value = this.sum();
      return this.#took(')') ? value : Number.NaN;
    }
    const token = this.tokens[this.#at];
    if (token === undefined || !/^\d/.test(token)) return Number.NaN;
    this.#at++;
    return Number(token);
  }

  #took(token: string): boolean {
    if (this.tokens[this.#at] !== token) return false;
    this.#at++;
    return true;
  }
}
