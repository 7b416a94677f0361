import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'groove-out-of-band';
const ring = (inside: string, diameter: string, width = '2.6 mm') =>
  inFamily(
    `parts:\n  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, section: 1.78 ± 0.08 mm, inside-diameter: ${inside}, groove: { depth: 1.27..1.40 mm, width: ${width}, diameter: ${diameter}, motion: static } }`,
  );

test('a ring that is too small for its groove is told', async () => {
  expect(await reported(ring('14.00 mm', '14.6 mm'), RULE)).toEqual([]);
  expect(await reported(ring('14.00 ± 0.18 mm', '14.8 mm'), RULE)).toEqual([
    '14.8 mm: The cover seal is stretched by 4.4 % to 7.1 % in its groove, and at most 5 % is recommended; it is the wrong size, or the diameter of the groove is wrong',
  ]);
  expect(await reported(ring('14.00 mm', '14.8 mm'), RULE)).toHaveLength(1);
});

test('a groove around the ring, as in a bore, stretches nothing', async () => {
  expect(await reported(ring('13.94 mm', '17.5 mm'), RULE)).toEqual([]);
  expect(await reported(ring('13.94 mm', '16.0 mm'), RULE)).toHaveLength(1);
});

test('a groove without room is told', async () => {
  expect(await reported(ring('53.70 mm', '54.5 mm', '2.2 mm'), RULE)).toEqual([
    '2.2 mm: The cover seal fills 74 % to 97 % of its groove, and at most 85 % is recommended; mend the width or the depth of the groove, or the section',
  ]);
});

test('what is not stated concludes nothing', async () => {
  expect(await reported(ring('', '57 mm', ''), RULE)).toEqual([]);
  expect(await reported(ring('≤ 50 mm', '57 mm', '2'), RULE)).toEqual([]);
});
