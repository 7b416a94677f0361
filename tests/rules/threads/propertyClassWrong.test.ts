import { expect, test } from 'vitest';
import { type Example, inFamily } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'property-class-wrong';

function part(kind: string, written: string): Example {
  return inFamily(`parts:\n  lid-part: { name: lid part, kind: ${kind}, sits-on: core, property-class: ${written} }`);
}

test.each([
  ['"8,8"', '8.8'],
  ['88', '8.8'],
  ['109', '10.9'],
  ['class 10.9', '10.9'],
  ['"A2 - 70"', undefined],
  ['A270', undefined],
])('%s on a bolt is respelled', async (written, meant) => {
  expect(await offered(part('bolt', written), RULE)).toEqual(meant === undefined ? [] : [`Write ${meant}`]);
});

test('a nut with the class of a bolt, and a bolt with that of a nut', async () => {
  expect(await reported(part('nut', '10.9'), RULE)).toEqual([
    '10.9: The lid part is a nut, and 10.9 is a class of bolts; a nut is marked with one number',
  ]);
  expect((await fixed(part('nut', '10.9'), RULE)).files['families/pellow-k1.family.yaml']).toContain(
    'property-class: 10 }',
  );
  expect(await reported(part('screw', '8'), RULE)).toEqual([
    '8: The lid part is no nut, and 8 is a class of nuts; a bolt is marked with two numbers and a point between them',
  ]);
  expect(await offered(part('screw', '8'), RULE)).toEqual(['Write 8.8']);
  expect(await offered(part('stud', '04'), RULE)).toEqual([]);
});

test.each([
  ['bolt', '8.8'],
  ['nut', '10'],
  ['nut', 'A4-80'],
  ['clamp', '8'],
  ['shaft', '10.9'],
  ['bolt', 'Inconel 718'],
  ['bolt', '42CrMo4'],
  ['bolt', '""'],
])('a %s of %s is not told', async (kind, written) => {
  expect(await reported(part(kind, written), RULE)).toEqual([]);
});
