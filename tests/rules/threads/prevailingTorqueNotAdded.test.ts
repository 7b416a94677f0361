import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { type Example, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'prevailing-torque-not-added';

function locking(step: string, keys = 'prevailing-torque: 0.6..1.6 N·m, torque: 4.6 ± 0.3 N·m', more = ''): Example {
  const nut = `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, ${keys} }`;
  return withFamily(inStep(step), `${nut}${more}`);
}

const READING =
  '\nreadings:\n  run-down: { name: run-down torque, quantity: torque }\n  play: { name: play, quantity: length }';

test('a torque without the prevailing one is told, and a reading of a torque is offered', async () => {
  const example = locking('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m', undefined, READING);
  expect(await reported(example, RULE)).toEqual([
    'cap-nut: The cap nut is a locking fastener that takes 0.6..1.6 N·m before it seats, and the torque leaves that out; measure it and add it with "plus"',
  ]);
  expect(await offered(example, RULE)).toEqual(['Write plus: run-down']);
  const mended = await fixed(example, RULE);
  expect(mended.files[EXAMPLE_PATHS.procedure]).toMatch(/torque: 4\.6 ± 0\.3 N·m\n +plus: run-down\n/);
  expect(await reported(mended, RULE)).toEqual([]);
});

test('the torque of the family counts where the step states none, and so does the last of several passes', async () => {
  expect(await reported(locking('- tighten: cap-nut'), RULE)).toHaveLength(1);
  expect(await reported(locking('- tighten: cap-nut\n  passes: [2 N·m, 4.6 ± 0.3 N·m]'), RULE)).toHaveLength(1);
});

test('on the builds whose nut locks', async () => {
  const keys = 'prevailing-torque: { k1-b: 1 N·m }, torque: 4.6 ± 0.3 N·m';
  expect((await reported(locking('- tighten: cap-nut', keys), RULE))[0]).toMatch(/\(K1-B\)$/);
  expect(await reported(locking('- tighten: cap-nut\n  when: k1-a', keys), RULE)).toEqual([]);
});

test('nothing is said without a torque, without a lock, or where it is added', async () => {
  expect(await reported(locking('- tighten: cap-nut', 'prevailing-torque: 1 N·m'), RULE)).toEqual([]);
  expect(await reported(locking('- tighten: cap-nut', 'torque: 4.6 ± 0.3 N·m'), RULE)).toEqual([]);
  expect(await reported(locking('- tighten: cap-nut\n  plus: run-down', undefined, READING), RULE)).toEqual([]);
  expect(await reported(locking('- tighten: no-such'), RULE)).toEqual([]);
});
