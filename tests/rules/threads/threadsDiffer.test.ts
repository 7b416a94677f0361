import { expect, test } from 'vitest';
import { type Example, inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'threads-differ';

function pair(nut: string, shaft: string): Example {
  return inFamily(
    `parts:\n  spindle: { name: spindle, kind: shaft, sits-on: core, ${shaft} }\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, mates-with: spindle, ${nut} }`,
  );
}

test('another pitch is told at the nut, with the place of the other thread, and either can be written', async () => {
  const example = pair('thread: M5×0.8', 'thread: M5×0.5');
  expect(await reported(example, RULE)).toEqual([
    'M5×0.8: The thread M5×0.8 of the cap nut cannot be screwed to the M5×0.5 of the spindle: they differ in pitch; correct whichever is wrong',
  ]);
  const { findings } = await checkExample(example);
  expect(findings.find(({ rule }) => rule === RULE)?.related[0]?.message).toBe(
    'The thread of the spindle is M5×0.5 here',
  );
  expect(await offered(example, RULE)).toEqual([
    'Write M5×0.5, as the spindle has',
    'Write M5×0.8 at the spindle, as the cap nut has',
  ]);
  const mended = await fixed(example, RULE, 'Write M5×0.8 at the spindle, as the cap nut has');
  expect(mended.files[mended.at]).toContain('kind: shaft, sits-on: core, thread: M5×0.8 }');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('metric on inch is told as another system', async () => {
  expect((await reported(pair('thread: M6×1', 'thread: 1/4-28 UNF'), RULE))[0]).toContain(
    'they differ in system, diameter and pitch',
  );
});

test('only the builds on which they meet are named', async () => {
  const example = pair('thread: { k1-a: M5×0.8, k1-b: M6×1 }', 'thread: M5×0.8');
  const found = await reported(example, RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/^M6×1: .*\(K1-B\)$/);
  const apart = pair('when: k1-a, thread: M5×0.8', 'when: k1-b, thread: M6×1');
  expect(await reported(apart, RULE)).toEqual([]);
});

test('a marked hand beside a designation without a mark is told', async () => {
  expect(await reported(pair('thread: M8×1-LH, hand: left', 'thread: M8×1'), RULE)).toEqual([
    'M8×1-LH: The thread M8×1-LH of the cap nut is left-hand, and that of the spindle that it is screwed to is right-hand; correct whichever is wrong',
  ]);
});

test.each([
  ['one size, written two ways', 'thread: M5', 'thread: M5x0.8-6g'],
  ['an inch size, written two ways', 'thread: 1/4-28', 'thread: 1/4 UNF-2A'],
  ['a hand beside the designations', 'thread: M8×1, hand: left', 'thread: M8×1'],
  ['a mark on one and the hand of the other', 'thread: M8×1-LH', 'thread: M8×1, hand: left'],
  ['two stated hands, which are told elsewhere', 'thread: M8×1-LH, hand: left', 'thread: M8×1, hand: right'],
  ['a thread that cannot be read', 'thread: M8×', 'thread: M6×1'],
  ['a thread of another system', 'thread: G1/4', 'thread: M6×1'],
  ['no thread on the other side', 'thread: M8×1', 'serial: true'],
])('%s is not told', async (_, nut, shaft) => {
  expect(await reported(pair(nut, shaft), RULE)).toEqual([]);
});

test('two parts that name each other are told once; an unknown one not at all', async () => {
  const both = pair('thread: M5×0.8', 'thread: M5×0.5, mates-with: cap-nut');
  expect(await reported(both, RULE)).toHaveLength(1);
  const unknown = inFamily('parts:\n  cap-nut: { name: cap nut, sits-on: core, mates-with: no-such, thread: M5×0.8 }');
  expect(await reported(unknown, RULE)).toEqual([]);
});
