import { expect, test } from 'vitest';
import { EXAMPLE_HEAD, EXAMPLE_PATHS, EXAMPLE_STORES } from '../../../server/src/core/rules/exampleDocuments';
import { type Example, inStep, withFamily, withFiles } from '../../../server/src/core/rules/examples';
import { mended, offered } from './mended';

/** A cap nut that something must be done to before it is fitted. */
function nut(before: string, steps: string, more = ''): Example {
  return withFamily(
    inStep(steps),
    `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [${before}]${more} }`,
  );
}

/** The example with other consumables in stores and list, by id. */
function withConsumables(example: Example, consumables: Readonly<Record<string, string>>): Example {
  const lines = Object.entries(consumables).map(([id, kind]) => `  ${id}: { name: ${id}, kind: ${kind} }\n`);
  const procedure = example.files[EXAMPLE_PATHS.procedure] ?? '';
  return withFiles(example, {
    [EXAMPLE_PATHS.stores]: EXAMPLE_STORES.slice(0, EXAMPLE_STORES.indexOf('consumables:')).concat(
      `consumables:\n${lines.join('')}`,
    ),
    [EXAMPLE_PATHS.procedure]: procedure.replace(
      'consumables: [threadlocker, degreaser]',
      `consumables: [${Object.keys(consumables).join(', ')}]`,
    ),
  });
}

const OFF = '- remove: [cover-screw, cover, cap-nut]';

test('a part is cleaned right before it is fitted, with the one cleaner that is listed', async () => {
  expect(
    await mended(nut('clean', `${OFF}\n- install: cap-nut`), 'not-cleaned', 'Clean the cap nut before it is fitted'),
  ).toBe(`${OFF}\n- clean: cap-nut\n  using: degreaser\n- install: cap-nut`);
});

test('with two cleaners, or one that would spoil the part, nothing is said of it', async () => {
  const two = withConsumables(nut('clean', `${OFF}\n- install: cap-nut`), { degreaser: 'solvent', wash: 'cleaner' });
  expect(await mended(two, 'not-cleaned')).toBe(`${OFF}\n- clean: cap-nut\n- install: cap-nut`);
  const spoilt = nut('clean', `${OFF}\n- install: cap-nut`, ', never-clean-with: [solvent]');
  expect(await mended(spoilt, 'not-cleaned')).toBe(`${OFF}\n- clean: cap-nut\n- install: cap-nut`);
});

test('a part is cleaned before what is put on it, which would be wiped off again', async () => {
  const steps = `${OFF}\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut`;
  expect(await mended(nut('clean, threadlock', steps), 'not-cleaned')).toBe(
    `${OFF}\n- clean: cap-nut\n  using: degreaser\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut`,
  );
});

test('a blasted part is cleaned as well', async () => {
  const steps = `${OFF}\n- clean: cap-nut\n  by: blast\n- install: cap-nut`;
  expect(await mended(nut('inspect', steps), 'not-cleaned')).toBe(
    `${OFF}\n- clean: cap-nut\n  by: blast\n- clean: cap-nut\n  using: degreaser\n- install: cap-nut`,
  );
});

test('a new instruction has the conditions of the one that it is for', async () => {
  const steps = `${OFF}\n- install: cap-nut\n  unless: big-wheel # the other nut\n- install: cap-nut\n  when: big-wheel`;
  expect(await mended(nut('inspect', steps), 'not-inspected')).toBe(
    `${OFF}\n- inspect: cap-nut\n  unless: big-wheel\n- install: cap-nut\n  unless: big-wheel # the other nut\n- install: cap-nut\n  when: big-wheel`,
  );
});

test('threadlocker goes on without an amount, which nobody but the writer knows', async () => {
  expect(await mended(nut('threadlock', `${OFF}\n- install: cap-nut`), 'not-threadlocked')).toBe(
    `${OFF}\n- apply: threadlocker\n  to: cap-nut\n- install: cap-nut`,
  );
});

test('threadlocker is renewed before a fastener that was loosened is tightened', async () => {
  const locked = `${OFF}\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10\n- loosen: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10`;
  expect(
    await mended(nut('threadlock', locked), 'not-threadlocked', 'Take off the cap nut and put threadlocker on it'),
  ).toContain(
    '- loosen: cap-nut\n- remove: cap-nut\n- apply: threadlocker\n  to: cap-nut\n- install: cap-nut\n- tighten: cap-nut',
  );
});

test('what a part is lubricated with must be certain', async () => {
  const dry = nut('lubricate', `${OFF}\n- install: cap-nut`);
  expect(await offered(dry, 'not-lubricated')).toEqual([]);
  const oil = { 'assembly-oil': 'oil' };
  expect(await mended(withConsumables(dry, oil), 'not-lubricated')).toBe(
    `${OFF}\n- apply: assembly-oil\n  to: cap-nut\n- install: cap-nut`,
  );
  const both = { ...oil, paste: 'anti-seize' };
  expect(await offered(withConsumables(dry, both), 'not-lubricated')).toEqual([]);
});

test('anti-seize is for threads, so that a seal gets the oil', async () => {
  const seal = withFamily(
    inStep('- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal'),
    'parts:\n  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, seals: cover, behind: [cover], renew: always, before-fitting: [lubricate] }',
  );
  expect(
    await mended(withConsumables(seal, { 'assembly-oil': 'oil', paste: 'anti-seize' }), 'not-lubricated'),
  ).toContain('- apply: assembly-oil\n  to: cover-seal\n- install: cover-seal');
});

test('an oiled thread is cleaned before threadlocker is put on it', async () => {
  const steps = `${OFF}\n- apply: assembly-oil\n  to: cap-nut\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop`;
  const oiled = withConsumables(inStep(steps), {
    threadlocker: 'threadlocker',
    'assembly-oil': 'oil',
    degreaser: 'solvent',
  });
  expect(await mended(oiled, 'threadlocker-on-oil', 'Clean the cap nut before threadlocker is put on it')).toContain(
    '- clean: cap-nut\n  using: degreaser\n- apply: threadlocker',
  );
});

test('the head of the examples lists what these tests replace', () => {
  expect(EXAMPLE_HEAD).toContain('consumables: [threadlocker, degreaser]');
});
