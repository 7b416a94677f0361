import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, reported } from '../../support/checkText';

const RULE = 'part-never-with';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);
const BAFFLE = 'baffle: { name: baffle, when: k1-b, sits-on: core }';

test('a fastener, a cover and a sealed part that are never there with it', async () => {
  const example = parts(
    'liner: { name: liner, when: k1-a, sits-on: core, fastened-by: [baffle], behind: [baffle], seals: [baffle] }',
    BAFFLE,
  );
  const found = await reported(example, RULE);
  expect(found).toEqual(
    ['be fastened by', 'be behind', 'seal'].map(
      (say) =>
        `baffle: The liner is said to ${say} the baffle, but no build has both; mend the condition of one, or take this out`,
    ),
  );
  const { findings } = await checkExample(example);
  expect(findings[0]?.related.map((one) => one.message)).toEqual([
    'Which builds have the liner',
    'Which builds have the baffle',
  ]);
});

test('the fix takes it out of its list', async () => {
  const example = parts('liner: { name: liner, when: k1-a, sits-on: core, behind: [baffle, cover] }', BAFFLE);
  expect((await fixed(example, RULE)).files[example.at]).toContain('sits-on: core, behind: [cover] }');
});

test('a carrier is told where another one carries the part; else that nothing does', async () => {
  const two = parts('liner: { name: liner, when: k1-a, sits-on: [core, baffle] }', BAFFLE);
  expect(await reported(two, RULE)).toHaveLength(1);
  const none = parts('liner: { name: liner, when: k1-a, sits-on: baffle }', BAFFLE);
  expect(await reported(none, RULE)).toEqual([]);
  expect(await reported(none, 'base-not-reached')).toHaveLength(1);
});

test('one build with both is enough, and so is a build with what takes its place', async () => {
  const fastener = parts(
    'liner: { name: liner, sits-on: core, fastened-by: [liner-pin] }',
    'liner-pin: { name: liner pin, kind: pin, when: k1-b, sits-on: core }',
  );
  expect(await reported(fastener, RULE)).toEqual([]);
  const replaced = parts(
    'big-cover: { name: big cover, when: big-wheel, instead-of: cover, sits-on: core }',
    'big-nut: { name: big nut, when: big-wheel, sits-on: core, behind: [cover] }',
    'nose: { name: nose, unless: big-wheel, sits-on: core, behind: [cover, big-cover] }',
  );
  expect(await reported(replaced, RULE)).toEqual([]);
});

test('a part that no build has tells nothing of what it names', async () => {
  expect(
    await reported(
      parts('liner: { name: liner, when: { all: [k1-a, k1-b] }, sits-on: core, behind: [baffle] }', BAFFLE),
      RULE,
    ),
  ).toEqual([]);
});
