/**
 * A reduced ordered binary decision diagram (R. E. Bryant, "Graph-based algorithms for Boolean function manipulation",
 * 1986). Every function has exactly one node, so two functions are equal when their numbers are, and what a function
 * does not look at costs nothing.
 *
 * A variable is its level; levels are tested in rising order. No operation throws on a function of this diagram.
 */
export type DiagramNode = number;

export const NEVER: DiagramNode = 0;
export const ALWAYS: DiagramNode = 1;

/** Pairs of node numbers are packed into one exact double, which allows 2^26 nodes: far beyond what memory would hold. */
const PAIR = 0x4000000;

/** Constants are tested last, below every variable. */
const BELOW_ALL = Number.MAX_SAFE_INTEGER;

export class DecisionDiagram {
  private readonly levels: number[] = [BELOW_ALL, BELOW_ALL];
  private readonly lows: DiagramNode[] = [NEVER, ALWAYS];
  private readonly highs: DiagramNode[] = [NEVER, ALWAYS];
  private readonly negations: DiagramNode[] = [ALWAYS, NEVER];
  private readonly unique = new Map<number, Map<number, DiagramNode>>();
  private readonly conjunctions = new Map<number, DiagramNode>();
  private readonly disjunctions = new Map<number, DiagramNode>();
  private readonly simplifications = new Map<number, DiagramNode>();
  private steps = 0;

  /** How many nodes were ever made, the two constants included. Tests hold it down, since times vary by machine. */
  get nodeCount(): number {
    return this.levels.length;
  }

  /** How many recursive steps were really done, that is, not answered from memory. */
  get operationCount(): number {
    return this.steps;
  }

  level(f: DiagramNode): number {
    return this.levels[f] ?? BELOW_ALL;
  }

  low(f: DiagramNode): DiagramNode {
    return this.lows[f] ?? NEVER;
  }

  high(f: DiagramNode): DiagramNode {
    return this.highs[f] ?? NEVER;
  }

  /** The function that is true where the variable of this level is. */
  variable(level: number): DiagramNode {
    return this.node(level, NEVER, ALWAYS);
  }

  private node(level: number, low: DiagramNode, high: DiagramNode): DiagramNode {
    if (low === high) return low;
    let table = this.unique.get(level);
    if (table === undefined) {
      table = new Map();
      this.unique.set(level, table);
    }
    const key = low * PAIR + high;
    const known = table.get(key);
    if (known !== undefined) return known;
    const made = this.levels.length;
    this.levels.push(level);
    this.lows.push(low);
    this.highs.push(high);
    table.set(key, made);
    return made;
  }

  not(f: DiagramNode): DiagramNode {
    const known = this.negations[f];
    if (known !== undefined) return known;
    this.steps += 1;
    const made = this.node(this.level(f), this.not(this.low(f)), this.not(this.high(f)));
    this.negations[f] = made;
    this.negations[made] = f;
    return made;
  }

  and(f: DiagramNode, g: DiagramNode): DiagramNode {
    return this.join(f, g, NEVER, this.conjunctions);
  }

  or(f: DiagramNode, g: DiagramNode): DiagramNode {
    return this.join(f, g, ALWAYS, this.disjunctions);
  }

  /** "And" where one NEVER decides, "or" where one ALWAYS does; otherwise the two are the same work. */
  private join(f: DiagramNode, g: DiagramNode, decides: DiagramNode, memory: Map<number, DiagramNode>): DiagramNode {
    if (f === decides || g === decides || this.negations[f] === g) return decides;
    if (f === g || g === NEVER || g === ALWAYS) return f;
    if (f === NEVER || f === ALWAYS) return g;
    const key = f < g ? f * PAIR + g : g * PAIR + f;
    const known = memory.get(key);
    if (known !== undefined) return known;
    this.steps += 1;
    const top = Math.min(this.level(f), this.level(g));
    const low = this.join(this.branch(f, top, false), this.branch(g, top, false), decides, memory);
    const high = this.join(this.branch(f, top, true), this.branch(g, top, true), decides, memory);
    const made = this.node(top, low, high);
    memory.set(key, made);
    return made;
  }

  minus(f: DiagramNode, g: DiagramNode): DiagramNode {
    return this.and(f, this.not(g));
  }

  /** The function that is `g` where `f` holds and `h` elsewhere. */
  ifThenElse(f: DiagramNode, g: DiagramNode, h: DiagramNode): DiagramNode {
    return this.or(this.and(f, g), this.and(this.not(f), h));
  }

  /** Whether `g` holds wherever `f` does. */
  implies(f: DiagramNode, g: DiagramNode): boolean {
    return this.minus(f, g) === NEVER;
  }

  all(functions: Iterable<DiagramNode>): DiagramNode {
    return this.fromBelow(functions).reduce((result, f) => this.and(result, f), ALWAYS);
  }

  any(functions: Iterable<DiagramNode>): DiagramNode {
    return this.fromBelow(functions).reduce((result, f) => this.or(result, f), NEVER);
  }

  /** Joined from the lowest levels up, each function only adds to the top of what was made before. */
  private fromBelow(functions: Iterable<DiagramNode>): DiagramNode[] {
    return [...functions].sort((f, g) => this.level(g) - this.level(f));
  }

  private branch(f: DiagramNode, level: number, side: boolean): DiagramNode {
    if (this.level(f) !== level) return f;
    return side ? this.high(f) : this.low(f);
  }

  /** `f` with the variable of one level held at a value. */
  restrict(f: DiagramNode, level: number, value: boolean): DiagramNode {
    const variable = this.variable(level);
    return this.simplify(f, value ? variable : this.not(variable));
  }

  /**
   * A function that agrees with `f` wherever `care` holds and is small elsewhere: the `restrict` operator of
   * O. Coudert and J. C. Madre (1990). It drops what `care` already decides.
   */
  simplify(f: DiagramNode, care: DiagramNode): DiagramNode {
    if (care === ALWAYS || f === NEVER || f === ALWAYS) return f;
    if (care === NEVER) return NEVER;
    const key = f * PAIR + care;
    const known = this.simplifications.get(key);
    if (known !== undefined) return known;
    this.steps += 1;
    const made = this.simplifyAtTop(f, care);
    this.simplifications.set(key, made);
    return made;
  }

  private simplifyAtTop(f: DiagramNode, care: DiagramNode): DiagramNode {
    const top = Math.min(this.level(f), this.level(care));
    const careLow = this.branch(care, top, false);
    const careHigh = this.branch(care, top, true);
    if (careLow === NEVER) return this.simplify(this.branch(f, top, true), careHigh);
    if (careHigh === NEVER) return this.simplify(this.branch(f, top, false), careLow);
    if (this.level(f) !== top) return this.simplify(f, this.or(careLow, careHigh));
    return this.node(top, this.simplify(this.low(f), careLow), this.simplify(this.high(f), careHigh));
  }

  /** Where `f` holds for some setting of the variables that `forgotten` names. */
  exists(f: DiagramNode, forgotten: (level: number) => boolean): DiagramNode {
    const done = new Map<DiagramNode, DiagramNode>();
    const visit = (node: DiagramNode): DiagramNode => {
      if (node === NEVER || node === ALWAYS) return node;
      const known = done.get(node);
      if (known !== undefined) return known;
      this.steps += 1;
      const low = visit(this.low(node));
      const high = visit(this.high(node));
      const level = this.level(node);
      const made = forgotten(level) ? this.or(low, high) : this.node(level, low, high);
      done.set(node, made);
      return made;
    };
    return visit(f);
  }

  /** The nodes of `f` that test a variable. */
  reachable(f: DiagramNode): Set<DiagramNode> {
    const seen = new Set<DiagramNode>();
    const visit = (node: DiagramNode): void => {
      if (node === NEVER || node === ALWAYS || seen.has(node)) return;
      seen.add(node);
      visit(this.low(node));
      visit(this.high(node));
    };
    visit(f);
    return seen;
  }

  /** The levels that `f` really looks at, in rising order. */
  support(f: DiagramNode): number[] {
    const levels = new Set<number>();
    for (const node of this.reachable(f)) levels.add(this.level(node));
    return [...levels].sort((a, b) => a - b);
  }

  /** In how many settings of exactly these variables `f` holds. They must include all that `f` looks at. */
  count(f: DiagramNode, levels: readonly number[]): number {
    const sorted = [...new Set(levels)].sort((a, b) => a - b);
    const rank = new Map(sorted.map((level, index) => [level, index]));
    const rankOf = (node: DiagramNode): number => rank.get(this.level(node)) ?? sorted.length;
    const done = new Map<DiagramNode, number>();
    const visit = (node: DiagramNode): number => {
      if (node === NEVER || node === ALWAYS) return node;
      const known = done.get(node);
      if (known !== undefined) return known;
      const below = rankOf(node) + 1;
      const total = [this.low(node), this.high(node)].reduce(
        (sum, next) => sum + visit(next) * 2 ** (rankOf(next) - below),
        0,
      );
      done.set(node, total);
      return total;
    };
    return visit(f) * 2 ** rankOf(f);
  }

  /** One partial setting under which `f` holds whatever the other variables are; undefined where it never holds. */
  pickCube(f: DiagramNode): Map<number, boolean> | undefined {
    if (f === NEVER) return undefined;
    const cube = new Map<number, boolean>();
    for (let node = f; node !== ALWAYS; ) {
      const side = this.low(node) === NEVER;
      cube.set(this.level(node), side);
      node = side ? this.high(node) : this.low(node);
    }
    return cube;
  }
}
