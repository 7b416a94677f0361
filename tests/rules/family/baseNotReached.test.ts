import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'base-not-reached';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);

test('a part that sits on nothing at all', async () => {
  expect(await reported(parts('pipe: { name: pipe }'), RULE)).toEqual([
    'pipe: The pipe sits on nothing; say with sits-on what carries it, straight or through other parts on the core',
  ]);
  expect(await reported(parts('pipe: { name: pipe, temporary: true }'), RULE)).toEqual([]);
});

test('a part whose carriers are missing on some build, but not what sits on it in turn', async () => {
  const example = parts(
    'pipe: { name: pipe, when: big-wheel, sits-on: core }',
    'elbow: { name: elbow, when: k1-a, sits-on: pipe }',
    'elbow-seal: { name: elbow seal, when: k1-a, sits-on: elbow }',
  );
  expect(await reported(example, RULE)).toEqual([
    'pipe: The elbow sits on nothing where there is no pipe; name what carries it there, or say with when which builds have it (K1-A, without the big wheel)',
  ]);
});

test('one of several carriers is enough, and what takes the place of a carrier too', async () => {
  const example = parts(
    'pipe: { name: pipe, when: k1-a, sits-on: core }',
    'hose: { name: hose, when: k1-b, sits-on: core }',
    'elbow: { name: elbow, sits-on: [pipe, hose] }',
    'big-cover: { name: big cover, when: big-wheel, instead-of: cover, sits-on: core }',
    'badge: { name: badge, sits-on: cover }',
  );
  expect(await reported(example, RULE)).toEqual([]);
});

test('nothing is said where a carrier is unknown, half typed or no base is known', async () => {
  expect(await reported(parts('pipe: { name: pipe, sits-on: hoose }'), RULE)).toEqual([]);
  expect(await reported(parts('pipe:', '  name: pipe', '  sits-on:'), RULE)).toEqual([]);
  expect(await reported(inFamily('base: cores\nparts:\n  pipe: { name: pipe }'), RULE)).toEqual([]);
});

test('no pieces on a build are no part there', async () => {
  const example = parts(
    'stay: { name: stay, sits-on: core, quantity: { k1-a: 2, otherwise: 0 } }',
    'clip: { name: clip, sits-on: stay }',
  );
  expect(await reported(example, RULE)).toEqual([
    'stay: The clip sits on nothing where there is no stay; name what carries it there, or say with when which builds have it (K1-B)',
  ]);
});
