import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { checkExample, fixed, reported } from '../../support/checkText';
import { stacked } from './stackRules';

const RULE = 'limit-disagrees-with-stack';
const BORE = 'bore: 8.024..8.030 mm';
const JOURNAL = 'journal: 7.988..7.996 mm';
const limit = (accept: string, from = '[+bore, -journal]') =>
  `{ name: journal clearance, accept: ${accept}, from: ${from} }`;

test('a limit that parts in the middle of their tolerances miss is told with both sums', async () => {
  expect(await reported(stacked([BORE, JOURNAL], limit('0.05..0.09 mm')), RULE)).toEqual([
    '0.05..0.09 mm: The journal clearance comes to 0.035 mm from its dimensions (worst case 0.028 to 0.042 mm, root sum square 0.03 to 0.04 mm), and 0.05..0.09 mm is accepted; mend the limit or the dimension that is wrong',
  ]);
});

test('the order of the list and the unit of each value make no difference', async () => {
  const inches = 'bore: 0.31591..0.31614 in';
  for (const from of ['[+bore, -journal]', '[-journal, bore]']) {
    expect(await reported(stacked([inches, JOURNAL], limit('0.028..0.042 mm', from)), RULE)).toEqual([]);
    expect(await reported(stacked([inches, JOURNAL], limit('≥ 0.002 in', from)), RULE)).toEqual([
      '≥ 0.002 in: The journal clearance comes to 0.0014 in (0.035 mm) from its dimensions (worst case 0.0011 to 0.0017 in (0.028 to 0.042 mm), root sum square 0.0012 to 0.0016 in (0.03 to 0.04 mm)), and ≥ 0.002 in is accepted; mend the limit or the dimension that is wrong',
    ]);
  }
});

test('swapped signs are told as such, and turned round', async () => {
  const wrong = stacked([BORE, JOURNAL], limit('0.028..0.042 mm', '[-bore, +journal]'));
  expect(await reported(wrong, RULE)).toEqual([
    '0.028..0.042 mm: The journal clearance comes to −0.035 mm from its dimensions, and 0.028..0.042 mm is accepted; the signs are the other way round',
  ]);
  const mended = await fixed(wrong, RULE);
  expect(mended.files[EXAMPLE_PATHS.family]).toContain('from: [+bore, -journal]');
  expect(await reported(mended, RULE)).toEqual([]);
  const unsigned = await fixed(stacked([BORE, JOURNAL], limit('0.028..0.042 mm', '[journal, -bore]')), RULE);
  expect(unsigned.files[EXAMPLE_PATHS.family]).toContain('from: [-journal, +bore]');
});

test('each build has its own stack', async () => {
  const bore = 'bore: { k1-a: 8.024..8.030 mm, k1-b: 8.124..8.130 mm }';
  const found = await reported(stacked([bore, JOURNAL], limit('0.028..0.042 mm')), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain('comes to 0.135 mm');
  expect(found[0]).toMatch(/\(K1-B\)$/);
  const byBuild = limit('{ k1-a: 0.028..0.042 mm, otherwise: 0.128..0.142 mm }');
  expect(await reported(stacked([bore, JOURNAL], byBuild), RULE)).toEqual([]);
});

test('a limit to one side is held against as well', async () => {
  expect(await reported(stacked([BORE, JOURNAL], limit('≤ 0.05 mm')), RULE)).toEqual([]);
  expect(await reported(stacked([BORE, JOURNAL], limit('≤ 0.03 mm')), RULE)).toHaveLength(1);
});

test('the finding carries the sum, line by line', async () => {
  const { findings } = await checkExample(stacked([BORE, JOURNAL], limit('0.05..0.09 mm')));
  const [working] = findings.find((one) => one.rule === RULE)?.working() ?? [];
  expect(working?.rows.map(({ label, text }) => `${label}: ${text}`)).toEqual([
    '+ bore: 8.024..8.030 mm',
    '− journal: 7.988..7.996 mm',
    'middle of the tolerances: 0.035 mm',
    'worst case: 0.028 to 0.042 mm',
    'root sum square: 0.03 to 0.04 mm',
    'accepted: 0.05..0.09 mm',
    'worst case below what is accepted: by 0.022 mm',
  ]);
  expect(working?.steps.at(-1)).toMatchObject({ symbol: 'T_s', value: 0.005 });
});

test('what cannot be read or is not stated concludes nothing', async () => {
  for (const one of [
    limit('0.05 mm'),
    limit('5 N·m'),
    limit('0.05..0.09 mm', '[+bore, -jurnal]'),
    limit('0.05..0.09 mm', '[]'),
    limit('0.05..0.09 mm', ''),
    limit('', '[+bore, -journal]'),
  ]) {
    expect(await reported(stacked([BORE, JOURNAL], one), RULE)).toEqual([]);
  }
  for (const dimension of ['journal: ≤ 7.996 mm', 'journal: 7.9', 'journal: { k1-z: 7.9 mm }', 'journal:']) {
    expect(await reported(stacked([BORE, dimension], limit('0.05..0.09 mm')), RULE)).toEqual([]);
  }
});
