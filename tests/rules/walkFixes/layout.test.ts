import { expect, test } from 'vitest';
import { EXAMPLE_HEAD, EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { type Example, inProcedure, inStep, withFiles } from '../../../server/src/core/rules/examples';
import { fixed } from '../../support/checkText';
import { mended, offered } from './mended';

const { procedure } = EXAMPLE_PATHS;
const SEAL = '- remove: [cover-screw, cover]\n- install: cover\n- say: Look.';

/** The text of a procedure whose instructions stand in a list that is written in a way of its own. */
function written(list: string): Example {
  return inProcedure(
    list,
    `${EXAMPLE_HEAD}phases:\n  - phase: Assemble\n    steps:\n      - step: only-step\n        title: Do the work\n        do:${list}`,
  );
}

test('line ends stay what they are', async () => {
  const example = inStep(SEAL);
  const windows = withFiles(example, { [procedure]: (example.files[procedure] ?? '').replaceAll('\n', '\r\n') });
  const text = (await fixed(windows, 'seal-not-renewed')).files[procedure] ?? '';
  expect(text).toContain('- remove: cover-seal\r\n          - install: cover-seal\r\n          - install: cover\r\n');
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
});

test('the dash and what stands behind it keep their distance', async () => {
  const changed = await fixed(
    written('\n        -   remove: [cover-screw, cover]\n        -   install: cover\n'),
    'seal-not-renewed',
  );
  expect(changed.files[procedure]).toContain(
    '\n        -   remove: cover-seal\n        -   install: cover-seal\n        -   install: cover\n',
  );
});

test('remarks stay with the instruction that they are about', async () => {
  const steps =
    '- remove: [cover-screw, cover] # by hand\n\n# Close the unit.\n# Slowly.\n- install: cover # the right way round\n  # mind the pin\n- say: Look.';
  expect(await mended(inStep(steps), 'seal-not-renewed')).toBe(
    '- remove: [cover-screw, cover] # by hand\n\n- remove: cover-seal\n- install: cover-seal\n# Close the unit.\n# Slowly.\n- install: cover # the right way round\n  # mind the pin\n- say: Look.',
  );
  expect(
    await mended(inStep('- loosen: cover-screw\n  with: socket-10\n  # half a turn\n- say: Look.'), 'left-loose'),
  ).toBe(
    '- loosen: cover-screw\n  with: socket-10\n  # half a turn\n- tighten: cover-screw\n  with: [torque-wrench-10, socket-10]\n- say: Look.',
  );
});

test('a last line without an end gets one', async () => {
  const changed = await fixed(written('\n          - loosen: cover-screw\n            with: socket-10'), 'left-loose');
  expect(changed.files[procedure]).toMatch(
    /with: socket-10\n {10}- tighten: cover-screw\n {12}with: \[torque-wrench-10, socket-10\]$/,
  );
});

test('an instruction in braces is an entry as any other', async () => {
  expect(await mended(inStep('- { remove: [cover-screw, cover] }\n- { install: cover }'), 'seal-not-renewed')).toBe(
    '- { remove: [cover-screw, cover] }\n- remove: cover-seal\n- install: cover-seal\n- { install: cover }',
  );
});

test('a list on one line is left to a person', async () => {
  expect(
    await offered(written(' [ { remove: [cover-screw, cover] }, { install: cover } ]\n'), 'seal-not-renewed'),
  ).toEqual([]);
});

test('a text that cannot be read whole gets no fix that would leave it worse', async () => {
  expect(await offered(inStep(`${SEAL}\n- tighten: cover-screw\n  torque: "9`), 'seal-not-renewed')).toEqual([]);
});
