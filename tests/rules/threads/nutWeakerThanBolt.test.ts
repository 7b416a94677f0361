import { expect, test } from 'vitest';
import { type Example, inFamily } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'nut-weaker-than-bolt';

function pair(nut: string, stud: string, from = 'nut'): Example {
  const mates = (id: string) => `mates-with: ${id}, `;
  return inFamily(
    `parts:\n  long-stud: { name: long stud, kind: stud, sits-on: core, ${from === 'nut' ? '' : mates('stud-nut')}thread: M8×1.25, property-class: ${stud} }\n  stud-nut: { name: stud nut, kind: nut, sits-on: core, ${from === 'nut' ? mates('long-stud') : ''}thread: M8×1.25, property-class: ${nut} }`,
  );
}

test('a nut below its bolt is told at its class, and the fix writes the lowest that is enough', async () => {
  const example = pair('8', '10.9');
  expect(await reported(example, RULE)).toEqual([
    '8: The stud nut of class 8 is weaker than the long stud of class 10.9 that it is screwed to; a bolt of class 10.9 needs a nut of class 10 or higher',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('property-class: 10 }');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('whichever of the two names the other', async () => {
  expect(await reported(pair('8', '10.9', 'stud'), RULE)).toHaveLength(1);
});

test('only on the builds on which they meet', async () => {
  const found = await reported(pair('8', '{ k1-a: 8.8, k1-b: 12.9 }'), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/needs a nut of class 12 or higher \(K1-B\)$/);
});

test.each([
  ['8', '8.8'],
  ['10', '8.8'],
  ['A4-80', 'A4-80'],
  ['04', '8.8'],
  ['soft', '8.8'],
])('a nut of %s on %s is not told', async (nut, stud) => {
  expect(await reported(pair(nut, stud), RULE)).toEqual([]);
});
