import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALWAYS, DecisionDiagram, type DiagramNode, NEVER } from '../../server/src/core/builds/decisionDiagram';

const LEVELS = [0, 1, 2, 3];
const SETTINGS = Array.from({ length: 2 ** LEVELS.length }, (_, bits) =>
  LEVELS.map((level) => ((bits >> level) & 1) === 1),
);

/** Builds the function that holds in exactly the settings whose bit is set. */
function fromTable(diagram: DecisionDiagram, table: number): DiagramNode {
  const rows = SETTINGS.filter((_, row) => ((table >> row) & 1) === 1);
  const literal = (value: boolean, level: number) =>
    value ? diagram.variable(level) : diagram.not(diagram.variable(level));
  return diagram.any(rows.map((row) => diagram.all(row.map(literal))));
}

function holds(diagram: DecisionDiagram, f: DiagramNode, setting: readonly boolean[]): boolean {
  let node = f;
  while (node !== NEVER && node !== ALWAYS) {
    node = setting[diagram.level(node)] === true ? diagram.high(node) : diagram.low(node);
  }
  return node === ALWAYS;
}

function tableOf(diagram: DecisionDiagram, f: DiagramNode): number {
  return SETTINGS.reduce((table, setting, row) => (holds(diagram, f, setting) ? table | (1 << row) : table), 0);
}

const table = fc.integer({ min: 0, max: 2 ** SETTINGS.length - 1 });

function check(property: (p: number, q: number, r: number) => void): void {
  const seed = Math.floor(Math.random() * 2 ** 31);
  console.info(`decision diagram: seed ${seed}`);
  fc.assert(fc.property(table, table, table, property), { seed, numRuns: 200 });
}

describe('decision diagram', () => {
  test('one function has one node, however it was put together', () => {
    const diagram = new DecisionDiagram();
    const [a, b] = [diagram.variable(0), diagram.variable(1)];
    expect(diagram.not(diagram.and(a, b))).toBe(diagram.or(diagram.not(b), diagram.not(a)));
    expect(diagram.and(a, diagram.not(a))).toBe(NEVER);
    expect(diagram.ifThenElse(a, b, b)).toBe(b);
  });

  test('operations agree with truth tables', () => {
    check((p, q, r) => {
      const diagram = new DecisionDiagram();
      const [f, g, h] = [fromTable(diagram, p), fromTable(diagram, q), fromTable(diagram, r)];
      const full = 2 ** SETTINGS.length - 1;
      expect(tableOf(diagram, diagram.and(f, g))).toBe(p & q);
      expect(tableOf(diagram, diagram.or(f, g))).toBe(p | q);
      expect(tableOf(diagram, diagram.not(f))).toBe(full & ~p);
      expect(tableOf(diagram, diagram.minus(f, g))).toBe(p & ~q);
      expect(tableOf(diagram, diagram.ifThenElse(f, g, h))).toBe((p & q) | (full & ~p & r));
      expect(diagram.implies(f, g)).toBe((p & ~q) === 0);
    });
  });

  test('a simplified function agrees where it matters and looks at nothing new', () => {
    check((p, q) => {
      const diagram = new DecisionDiagram();
      const [f, care] = [fromTable(diagram, p), fromTable(diagram, q)];
      expect(diagram.and(diagram.simplify(f, care), care)).toBe(diagram.and(f, care));
      expect(diagram.support(f)).toEqual(expect.arrayContaining(diagram.support(diagram.simplify(f, care))));
    });
  });

  test('restricting, forgetting, counting and picking agree with truth tables', () => {
    check((p) => {
      const diagram = new DecisionDiagram();
      const f = fromTable(diagram, p);
      const [off, on] = [diagram.restrict(f, 2, false), diagram.restrict(f, 2, true)];
      expect(diagram.ifThenElse(diagram.variable(2), on, off)).toBe(f);
      expect(diagram.support(diagram.or(on, off))).not.toContain(2);
      expect(diagram.exists(f, (level) => level === 2)).toBe(diagram.or(on, off));
      expect(diagram.count(f, LEVELS)).toBe(SETTINGS.filter((_, row) => ((p >> row) & 1) === 1).length);
      const cube = diagram.pickCube(f);
      const filled = LEVELS.map((level) => cube?.get(level) ?? false);
      expect(holds(diagram, f, filled)).toBe(cube !== undefined);
    });
  });

  test('counts over variables that the function does not look at', () => {
    const diagram = new DecisionDiagram();
    expect(diagram.count(ALWAYS, [3, 5])).toBe(4);
    expect(diagram.count(diagram.variable(5), [1, 5, 9])).toBe(4);
    expect(diagram.count(NEVER, [1])).toBe(0);
  });
});
