import { expect, test } from 'vitest';
import { type Example, inFamily, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-above-proof';

function nut(keys: string): Example {
  return inFamily(`parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, ${keys} }`);
}

test('newton metres written for pound inches would burst the thread, and the fix writes pound inches', async () => {
  const example = nut('thread: M5, property-class: 8, torque: 45 ± 3 N·m');
  expect(await reported(example, RULE)).toEqual([
    '45 ± 3 N·m: The torque 45 ± 3 N·m would burst the M5 thread of the cap nut; in lbf·in it would be right',
  ]);
  expect(await offered(example, RULE)).toEqual(['Write lbf·in', 'Write kgf·cm']);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('torque: 45 ± 3 lbf·in');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('where no unit explains it, the torque at proof load is named', async () => {
  expect(await reported(nut('thread: M5×0.8, property-class: 8, torque: 11 ± 1 N·m'), RULE)).toEqual([
    '11 ± 1 N·m: The torque 11 ± 1 N·m would overstretch the M5×0.8 thread of the cap nut: with class 8 the proof load is reached at 10.4 N·m (92 lbf·in), even dry; correct the torque, the thread or the class',
  ]);
});

test('without a class it is told above what any class takes', async () => {
  expect(await reported(nut('thread: M5×0.8, torque: 17 ± 1 N·m'), RULE)).toEqual([]);
  expect(await reported(nut('thread: M5×0.8, torque: 20 ± 1 N·m'), RULE)).toEqual([
    '20 ± 1 N·m: The torque 20 ± 1 N·m would overstretch the M5×0.8 thread of the cap nut; in lbf·in it would be right',
  ]);
});

test('only the builds with the thin thread are named', async () => {
  const found = await reported(
    nut('thread: { k1-a: M8×1, k1-b: M5×0.8 }, property-class: 8, torque: 20 ± 1 N·m'),
    RULE,
  );
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/\(K1-B\)$/);
});

test('in an instruction, the thread in the family is shown', async () => {
  const bare =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, thread: M5×0.8, property-class: 8 }';
  const { findings } = await checkExample(withFamily(inStep('- tighten: cap-nut\n  torque: 45 ± 3 N·m'), bare));
  const finding = findings.find(({ rule }) => rule === RULE);
  expect(finding?.step).toBe('only-step');
  expect(finding?.related[0]?.uri).toMatch(/\.family\.yaml$/);
  expect(finding?.working()[0]?.title).toBe('Torque of the cap nut');
});
