import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'part-in-no-build';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);

test('a part that another one replaces on every build that could have it', async () => {
  const always = parts('big-cover: { name: big cover, sits-on: core, instead-of: cover }');
  expect(await reported(always, RULE)).toEqual([
    'cover: The big cover takes the place of the cover on every build, so that no unit has the cover; say with when which builds have the big cover',
  ]);
  const some = parts(
    'pipe: { name: pipe, when: k1-b, sits-on: core }',
    'hose: { name: hose, unless: big-wheel, sits-on: core, instead-of: pipe }',
  );
  expect(await reported(some, RULE)).toEqual([expect.stringContaining('so that no unit has the pipe')]);
});

test('two that only together take its place everywhere are both shown', async () => {
  const example = parts(
    'pipe: { name: pipe, sits-on: core }',
    'hose-a: { name: long hose, when: k1-a, sits-on: core, instead-of: pipe }',
    'hose-b: { name: short hose, when: k1-b, sits-on: core, instead-of: pipe }',
  );
  const { findings } = await checkExample(example);
  const [finding] = findings.filter((one) => one.rule === RULE);
  expect(finding?.related.map((one) => one.message)).toEqual([
    'The pipe is declared here',
    'The long hose takes its place on others',
  ]);
});

test('parts that take each other’s place where both would be are in neither', async () => {
  const pair = (when: string) =>
    parts(
      `pipe: { name: pipe, sits-on: core, instead-of: hose${when} }`,
      'hose: { name: hose, when: k1-a, sits-on: core, instead-of: pipe }',
    );
  expect(await reported(pair(''), RULE)).toEqual([
    "pipe: The pipe and the hose take each other's place, so that these builds have neither; take this out of one of them (K1-A)",
  ]);
  expect(await reported(pair(', when: k1-b'), RULE)).toEqual([]);
});

test('a replacer with a condition, and a condition that is never met, tell nothing here', async () => {
  expect(
    await reported(parts('big-cover: { name: big cover, when: big-wheel, sits-on: core, instead-of: cover }'), RULE),
  ).toEqual([]);
  const never = parts(
    'pipe: { name: pipe, when: { all: [k1-a, k1-b] }, sits-on: core }',
    'hose: { name: hose, sits-on: core, instead-of: pipe }',
  );
  expect(await reported(never, RULE)).toEqual([]);
});
