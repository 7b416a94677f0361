import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'need-never-met';
const options = (...lines: string[]) => inFamily(`options:\n  ${lines.join('\n  ')}`);
const BIG = 'big-wheel: { name: big wheel, variants: [k1-a]';

test('an option that needs what it excludes, whichever of the two says so', async () => {
  const own = options(`${BIG}, needs: [bored], excludes: [bored] }`, 'bored: { name: bored cover }');
  const MESSAGE =
    'bored: No unit can have the big wheel: it needs the bored cover, but the two exclude each other; take out the one that is not so';
  expect(await reported(own, RULE)).toEqual([MESSAGE]);
  const other = options(`${BIG}, needs: [bored] }`, 'bored: { name: bored cover, excludes: [big-wheel] }');
  expect(await reported(other, RULE)).toEqual([MESSAGE]);
  const { findings } = await checkExample(other);
  expect(findings.map((one) => one.rule)).toEqual([RULE]);
  expect(findings[0]?.related.map((one) => one.message)).toEqual(['Here they exclude each other']);
});

test('two needs that exclude each other, one of them through another option', async () => {
  const example = options(
    `${BIG}, needs: [bored, long-nut] }`,
    'bored: { name: bored cover, needs: [insert] }',
    'insert: { name: insert, excludes: [long-nut] }',
    'long-nut: { name: long nut }',
  );
  expect(await reported(example, RULE)).toEqual([
    'bored: No unit can have the big wheel: it needs the long nut and the insert (which the bored cover needs), but these exclude each other; take out the one that is not so',
  ]);
});

test('variants that have none in common', async () => {
  const example = options(
    `${BIG}, needs: [bored] }`,
    'bored: { name: bored cover, needs: [insert] }',
    'insert: { name: insert, variants: [k1-b] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'bored: No unit can have the big wheel: it needs the insert (which the bored cover needs), but the big wheel is for k1-a only and the insert is for k1-b only; name a variant that all of them can have',
  ]);
});

test('three lists of variants of which only any two agree', async () => {
  const example = inFamily(
    `variants:\n  k1-a: { name: K1-A }\n  k1-b: { name: K1-B }\n  k1-c: { name: K1-C }\noptions:\n  big-wheel: { name: big wheel, variants: [k1-a, k1-b], needs: [bored, insert] }\n  bored: { name: bored cover, variants: [k1-b, k1-c] }\n  insert: { name: insert, variants: [k1-a, k1-c] }`,
  );
  expect(await reported(example, RULE)).toEqual([
    'insert: No unit can have the big wheel: it needs the bored cover and the insert, but the big wheel is for k1-a or k1-b only, the bored cover is for k1-b or k1-c only and the insert is for k1-a or k1-c only; name a variant that all of them can have',
  ]);
});

test('an option that fails by what it needs is told there alone, and options that need each other once', async () => {
  const chain = options(
    `${BIG}, needs: [bored] }`,
    'bored: { name: bored cover, needs: [insert], excludes: [insert] }',
    'insert: { name: insert }',
  );
  expect((await reported(chain, RULE)).map((one) => one.slice(0, 44))).toEqual([
    'insert: No unit can have the bored cover: it',
  ]);
  const circle = options(
    `${BIG}, needs: [bored] }`,
    'bored: { name: bored cover, variants: [k1-b], needs: [big-wheel] }',
  );
  expect(await reported(circle, RULE)).toHaveLength(1);
});

test('needs that can be met, and needs of an unknown option, tell nothing', async () => {
  expect(
    await reported(options(`${BIG}, needs: [bored] }`, 'bored: { name: bored cover, needs: [big-wheel] }'), RULE),
  ).toEqual([]);
  expect(await reported(options(`${BIG}, needs: [bord] }`, 'bored: { name: bored cover }'), RULE)).toEqual([]);
});
