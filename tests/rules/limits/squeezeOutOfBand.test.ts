import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'squeeze-out-of-band';
const seal = (keys: string) =>
  inFamily(`parts:\n  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, ${keys} }`);
const ring = (depth: string, motion = ', motion: static', section = '1.78 ± 0.08 mm') =>
  seal(`section: ${section}, groove: { depth: ${depth}${motion} }`);

test('a groove that is too deep is told with the worst squeeze', async () => {
  expect(await reported(ring('1.50..1.65 mm'), RULE)).toEqual([
    '1.50..1.65 mm: The cover seal is squeezed by 2.9 % to 19 %, and 10 to 40 %, static is recommended; the groove is too deep for the section',
  ]);
  expect(await reported(ring('1.27..1.40 mm'), RULE)).toEqual([]);
});

test('a ring that need not touch is told as such', async () => {
  expect(await reported(ring('1.70..1.75 mm'), RULE)).toEqual([
    '1.70..1.75 mm: The cover seal need not touch: its thinnest section is 0.05 mm less than the deepest groove; mend the section or the depth',
  ]);
});

test('where the joint moves, less squeeze is allowed', async () => {
  expect(await reported(ring('1.27..1.40 mm', ', motion: dynamic'), RULE)).toEqual([
    '1.27..1.40 mm: The cover seal is squeezed by 18 % to 32 %, and up to 30 %, dynamic is recommended; the groove is too shallow for the section',
  ]);
  expect(await reported(ring('1.40..1.45 mm', ', motion: dynamic'), RULE)).toEqual([]);
});

test('what is taken for granted is said: that nothing moves, and the tolerance of a standard section', async () => {
  const example = ring('1.50..1.65 mm', '', '1.78 mm');
  const { findings } = await checkExample(example);
  const found = findings.find((one) => one.rule === RULE);
  expect(found?.message).toContain('10 to 40 %, assumed to be static is recommended');
  const [working] = found?.working() ?? [];
  expect(working?.rows[0]).toEqual({ label: 'section', text: '1.7 to 1.86 mm, ± 0.08 mm assumed from ISO 3601-1' });
  expect(working?.missing).toContain('whether the joint moves');
});

test('stretch and fill stand beside it, and inches are understood', async () => {
  const inches = seal(
    'section: 0.070 ± 0.003 in, inside-diameter: 2.614 in, groove: { depth: 0.062..0.065 in, width: 0.100 in, diameter: 2.65 in, motion: static }',
  );
  const [message] = await reported(inches, RULE);
  expect(message).toContain('; it is stretched by 1.4 % and fills 54 % to 68 % of the groove; the groove is too deep');
});

test('what is not stated concludes nothing', async () => {
  for (const keys of ['section: 1.78 mm', 'groove: { depth: 9 mm }', 'section: , groove: { depth: 9 mm }']) {
    expect(await reported(seal(keys), RULE)).toEqual([]);
  }
  for (const depth of ['', '≤ 9 mm', '9', '9 N·m']) expect(await reported(ring(depth), RULE)).toEqual([]);
});
