import { expect, test } from 'vitest';
import { type Example, inFamily } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'stainless-threads-dry';

function pair(nut: string, stud: string): Example {
  return inFamily(
    `parts:\n  long-stud: { name: long stud, kind: stud, sits-on: core, thread: M8×1.25, ${stud} }\n  stud-nut: { name: stud nut, kind: nut, sits-on: core, mates-with: long-stud, thread: M8×1.25, ${nut} }`,
  );
}

test('stainless on stainless is told at the nut, and the fix states that it is lubricated', async () => {
  const example = pair('property-class: A4-80', 'property-class: A2-70');
  expect(await reported(example, RULE)).toEqual([
    'A4-80: The stud nut of A4-80 and the long stud of A2-70 are both stainless and gall when they are tightened dry; state that one of them is lubricated before it is fitted',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('thread: M8×1.25, before-fitting: [lubricate], property-class: A4-80 }');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a list that stands already is left to its writer', async () => {
  const example = pair('property-class: A4-80, before-fitting: [clean]', 'property-class: A2-70');
  expect(await reported(example, RULE)).toHaveLength(1);
  expect(await offered(example, RULE)).toEqual([]);
});

test('only on the builds on which both are stainless', async () => {
  const found = await reported(pair('property-class: { k1-a: A2-70, k1-b: 8 }', 'property-class: A2-70'), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/\(K1-A\)$/);
});

test.each([
  ['property-class: A4-80, before-fitting: [clean, lubricate]', 'property-class: A4-80'],
  ['property-class: A4-80', 'property-class: A4-80, before-fitting: [lubricate]'],
  ['property-class: A4-80, before-fitting: [threadlock]', 'property-class: A4-80'],
  ['property-class: 8', 'property-class: A4-80'],
  ['property-class: A4-80', 'serial: true'],
])('%s on %s is not told', async (nut, stud) => {
  expect(await reported(pair(nut, stud), RULE)).toEqual([]);
});
