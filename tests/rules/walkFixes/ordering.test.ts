import { expect, test } from 'vitest';
import { EXAMPLE_HEAD } from '../../../server/src/core/rules/exampleDocuments';
import { type Example, inProcedure, inStep } from '../../../server/src/core/rules/examples';
import { fixed } from '../../support/checkText';
import { mended, offered } from './mended';

/** Steps of one phase, each with its instructions. */
function inSteps(...steps: readonly string[]): Example {
  const text = steps
    .map(
      (one, i) =>
        `      - step: step-${i + 1}\n        title: Step ${i + 1}\n        do:\n${one.replaceAll(/^/gm, '          ')}\n`,
    )
    .join('');
  return inProcedure(steps.join('\n'), `${EXAMPLE_HEAD}phases:\n  - phase: Assemble\n    steps:\n${text}`);
}

/** The ids of the steps in their order. */
function order({ files, at }: Example): string {
  return [...(files[at] ?? '').matchAll(/- step: (\S+)/g)].map(([, id]) => id).join(' ');
}

test('what was fitted too early goes on later', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal, cap-nut]\n- install: cover-seal\n# mind the mark\n- install: cover\n  orient: mark up\n- install: cap-nut';
  expect(await mended(inStep(steps), 'fitted-while-blocked', 'Move the fitting of the cover behind the cap nut')).toBe(
    '- remove: [cover-screw, cover, cover-seal, cap-nut]\n- install: cover-seal\n- install: cap-nut\n# mind the mark\n- install: cover\n  orient: mark up',
  );
});

test('a list names the part first', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal, cap-nut]\n- install: cover-seal\n- install: [cover, cap-nut]';
  expect(await mended(inStep(steps), 'fitted-while-blocked', 'Fit the cap nut before the cover')).toContain(
    '- install: [cap-nut, cover]',
  );
});

test('a step whose order alone is wrong moves as a whole', async () => {
  const example = inSteps(
    '- remove: [cover-screw, cover, cover-seal, cap-nut]\n- install: cover-seal',
    '- install: cover\n- install: cover-screw\n- tighten: cover-screw\n  with: torque-wrench-10',
    '- install: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10',
  );
  expect(await offered(example, 'fitted-while-blocked')).toEqual([
    'Move step "Step 2" behind step "Step 3"',
    'Move step "Step 3" before step "Step 2"',
  ]);
  const changed = await fixed(example, 'fitted-while-blocked');
  expect(order(changed)).toBe('step-1 step-3 step-2');
  expect(await offered(changed, 'fitted-while-blocked')).toEqual([]);
});

test('what a fastener holds goes on before it', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal\n- install: cover-screw\n- tighten: cover-screw\n  with: torque-wrench-10\n- install: cover';
  expect(await mended(inStep(steps), 'tightened-while-off')).toBe(
    '- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal\n- install: cover\n- install: cover-screw\n- tighten: cover-screw\n  with: torque-wrench-10',
  );
});

test('a fastener that was forgotten is fitted before it is tightened', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover]\n- tighten: cover-screw\n  with: torque-wrench-10';
  expect(await mended(inStep(steps), 'removed-twice', 'Fit the cover screw before this')).toContain(
    '- install: cover-screw\n- tighten: cover-screw',
  );
});

test('what is left off goes on before what covers it', async () => {
  const steps = '- remove: [cover-screw, cover, cover-seal]\n- install: [cover, cover-screw]';
  expect(await mended(inStep(steps), 'left-off', 'Fit the cover seal')).toBe(
    '- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal\n- install: [cover, cover-screw]',
  );
  expect(await offered(inStep('- remove: [cover-screw, cover]'), 'left-off')).toEqual([]);
});

test('a decision moves before what depends on it', async () => {
  const example = inSteps(
    '- remove: [cover-screw, cover]',
    '- say: Balance the rotor.\n  when: wheel=renewed',
    '- inspect: wheel\n  if-not: { replace: wheel }',
  );
  const changed = await fixed(example, 'decided-too-late', 'Move step "Step 3" before step "Step 2"');
  expect(order(changed)).toBe('step-1 step-3 step-2');
  expect(await offered(changed, 'decided-too-late')).toEqual([]);
});
