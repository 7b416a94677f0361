import { expect, test } from 'vitest';
import { limitWorkingsOf } from '../../server/src/core/workings/limitWorking';
import { familyWith, rowsOf } from './familyWith';

const STACK = `dimensions:
  bore: { k1-a: 8.024..8.030 mm, k1-b: 8.124..8.130 mm }
  journal: 0.3145..0.3148 in
limits:
  clearance: { name: journal clearance, accept: { k1-a: 0.028..0.042 mm, k1-b: ≤ 0.15 mm }, from: [+bore, -journal] }`;

test('a limit shows its sum even where nothing is wrong, for each build', async () => {
  const workings = limitWorkingsOf(await familyWith(STACK), 'clearance');
  expect(workings.map(({ title, builds }) => `${title}, ${builds}`)).toEqual([
    'Stack-up of the journal clearance, K1-A',
    'Stack-up of the journal clearance, K1-B',
  ]);
  expect(rowsOf(workings[0])).toEqual([
    '+ bore: 8.024..8.030 mm',
    '− journal: 0.3145..0.3148 in',
    'middle of the tolerances: 0.035 mm',
    'worst case: 0.028 to 0.042 mm',
    'root sum square: 0.03 to 0.04 mm',
    'accepted: 0.028..0.042 mm',
  ]);
  expect(workings[0]?.steps.map(({ symbol }) => symbol).slice(-4)).toEqual(['X', 'X_m', 'T', 'T_s']);
  expect(workings[0]?.missing).toEqual([]);
});

test('what only the worst case exceeds is shown, though it is not reported', async () => {
  const family = await familyWith(STACK.replace('0.028..0.042 mm,', '0.029..0.041 mm,'));
  expect(rowsOf(limitWorkingsOf(family, 'clearance')[0]).slice(-2)).toEqual([
    'worst case below what is accepted: by 0.0009 mm',
    'worst case above what is accepted: by 0.0007 mm',
  ]);
});

test('a limit without dimensions shows what is accepted, and says what is missing', async () => {
  const family = await familyWith(
    'limits:\n  play: { name: play, accept: { k1-a: 0.1..0.2 mm, otherwise: ≤ 0.3 mm } }',
  );
  const [working] = limitWorkingsOf(family, 'play');
  expect(rowsOf(working)).toEqual(['accepted, K1-A: 0.1..0.2 mm', 'accepted, K1-B: ≤ 0.3 mm']);
  expect(working?.missing).toEqual(['the dimensions that it results from']);
});

test('an unknown dimension, and one that is limited on one side, are named as missing', async () => {
  const limit = (from: string) => `limits:\n  play: { name: play, accept: ≤ 1 mm, from: ${from} }`;
  const unknown = await familyWith(limit('[+bore]'));
  expect(limitWorkingsOf(unknown, 'play')[0]?.missing).toEqual(['the dimension bore']);
  const open = await familyWith(`dimensions:\n  bore: ≤ 8 mm\n${limit('[+bore]')}`);
  expect(limitWorkingsOf(open, 'play')[0]?.missing).toEqual([
    'dimensions with a lowest and a highest value on one build',
  ]);
  expect(limitWorkingsOf(open, 'no-such-limit')).toEqual([]);
});
