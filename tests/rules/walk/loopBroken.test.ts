import { expect, test } from 'vitest';
import { shown, workOfSteps } from './shown';

const RULE = 'loop-broken';
const step = (id: string, ...entries: string[]): string =>
  [`- step: ${id}`, `  title: ${id}`, '  do:', ...entries.map((entry) => `    - ${entry}`)].join('\n');
const check = (target: string): string =>
  `check: free-turn\n      if-not: { go-to: ${target}, at-most: 2, then: Ask the office. }`;
const open = step('open', 'remove: [cover-screw, cover]');
const work = (...steps: string[]): string => steps.join('\n');
const WAY = ' (when "The wheel turns freely" does not hold)';

test('a step that takes off what is off by then, told at the check with the place that led to it', async () => {
  expect(await shown(workOfSteps(work(open, step('turn', check('open')))), RULE)).toEqual([
    `5 check: Step "open" cannot be carried out again from here: the cover screw is off by then; go back to another step, or say what to do first${WAY}`,
    '-> 1 cover-screw: The cover screw is taken off here',
  ]);
});

test('what the way back puts right first is carried out again as it stands', async () => {
  const back =
    'check: free-turn\n      if-not:\n        go-to: open\n        at-most: 2\n        then: Ask the office.\n        do:\n          - install: [cover, cover-screw]';
  const seal = 'remove: cover-seal';
  const found = await shown(workOfSteps(work(open, step('turn', back))), RULE);
  expect(found).toEqual([]);
  expect(
    await shown(workOfSteps(work(step('open', 'remove: [cover-screw, cover]', seal), step('turn', back))), RULE),
  ).toHaveLength(2);
});

test('the step of the check itself, and one that only measures, can be done again', async () => {
  expect(await shown(workOfSteps(work(open, step('turn', check('turn')))), RULE)).toEqual([]);
  const adjust = step('set', 'loosen: cap-nut', 'tighten: cap-nut');
  expect(await shown(workOfSteps(work(open, adjust, step('turn', check('set')))), RULE)).toEqual([]);
});

test('a fastener that is used once cannot go through twice', async () => {
  const nut =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always }';
  const fit = step('fit', 'loosen: cap-nut', 'remove: cap-nut', 'install: cap-nut', 'tighten: cap-nut');
  expect(await shown(workOfSteps(work(open, fit, step('turn', check('fit'))), nut), RULE)).toEqual([]);
  const half = work(
    open,
    step('strip', 'remove: cap-nut', 'install: cap-nut'),
    step('fit', 'tighten: cap-nut', 'loosen: cap-nut'),
  );
  const found = await shown(workOfSteps(work(half, step('turn', check('fit'))), nut), RULE);
  expect(found[0]).toContain('the cap nut would be tightened a second time');
});

test('one loop is told once, whatever fails the second time round', async () => {
  const whole = step('open', 'remove: cover-screw', 'remove: cover', 'remove: cap-nut');
  expect(await shown(workOfSteps(work(whole, step('turn', check('open')))), RULE)).toHaveLength(2);
});

test('a step that comes later is no way back', async () => {
  const steps = work(open, step('turn', check('close')), step('close', 'install: cover'));
  expect(await shown(workOfSteps(steps), RULE)).toEqual([
    `5 check: Step "close" does not come before this one; go back to an earlier step${WAY}`,
  ]);
});

test('a step that is nowhere is told as an unknown id, and half-typed work is no failure', async () => {
  expect(await shown(workOfSteps(work(open, step('turn', check('opne')))), RULE)).toEqual([]);
  const torn = work(open, step('turn', 'install: cov', check('open')));
  expect(await shown(workOfSteps(torn), RULE)).toEqual([]);
});

test('the builds on which it goes back', async () => {
  const steps = work(open, step('turn', `${check('open')}\n      when: k1-b`));
  expect((await shown(workOfSteps(steps), RULE))[0]).toMatch(/\(K1-B, when "The wheel turns freely" does not hold\)$/);
});
