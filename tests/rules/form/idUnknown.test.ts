import { expect, test } from 'vitest';
import {
  asStep,
  type Example,
  inFamily,
  inHead,
  inKit,
  inStep,
  wholeDocument,
  withFamily,
} from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'id-unknown';

test('a limit, a step, a check and a figure that nobody declares', async () => {
  const example = asStep(
    'title: Measure\nfigure: sektion\ndo:\n  - measure: endplay\n    with: dial-gauge\n    if-not: { go-to: first-step }\n  - check: free-turns',
  );
  expect(await reported(example, RULE)).toEqual([
    'sektion: No figure has the id "sektion"; write one that is declared under "figures", or declare it there',
    'endplay: No limit or reading has the id "endplay"; did you mean "end-play"?',
    'first-step: No step has the id "first-step"; write the id of a step of this procedure',
    'free-turns: No check has the id "free-turns"; did you mean "free-turn"?',
  ]);
});

test('a reading of the procedure counts beside those of the family', async () => {
  const head = 'readings:\n  bore-read: { name: bore as read, quantity: length }';
  expect(await reported(inHead(head, '- measure: bore-read\n  with: dial-gauge'), RULE)).toEqual([]);
});

test('names of conditions and keys of values by build, with the value that was meant', async () => {
  const family = 'identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }';
  const at = (condition: string): Example => withFamily(inStep(`- install: cover\n  when: ${condition}`), family);
  expect(await reported(at('k1-c'), RULE)).toEqual([
    'k1-c: No variant, option or outcome is called "k1-c"; did you mean "k1-a" or "k1-b"?',
  ]);
  expect(await reported(at('nut-hand=lefft'), RULE)).toEqual([
    'nut-hand=lefft: "nut-hand" is never found to be "lefft"; write left or right behind the equals sign',
  ]);
  expect(await offered(at('nut-hand=lefft'), RULE)).toEqual(['Write nut-hand=left']);
  expect(await reported(at('nut-hand=left'), RULE)).toEqual([]);
  expect((await reported(at('cap-nut=renewed'), RULE))[0]).toContain('The cap nut is not renewed on condition');
  expect(await reported(at('wheel=renewed'), RULE)).toEqual([]);
  const torque = inStep('- tighten: cap-nut\n  torque: { k1-a: 4.6 ± 0.3 N·m, k1-bb: 4.6 ± 0.3 N·m }');
  expect(await reported(torque, RULE)).toHaveLength(1);
});

test('a mention is looked for among everything, and the fix keeps the signs around it', async () => {
  const example = inStep('- say: Look at the <cap-nutt> with the <dial-gauge>.');
  expect(await reported(example, RULE)).toEqual(['<cap-nutt>: "<cap-nutt>" names nothing; did you mean "<cap-nut>"?']);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('Look at the <cap-nut> with');
});

test('nothing is said where the family cannot be read', async () => {
  const example = inHead(
    'family: ../families/none.family.yaml',
    '- measure: endplay\n  when: k1-c\n  say: See <cap-nutt>.',
  );
  expect(await reported(example, RULE)).toEqual([]);
});

test('a kit line, an option and a settings document are looked at as well', async () => {
  const line = inKit('- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: big-whel }');
  expect(await offered(line, RULE)).toEqual(['Write big-wheel']);
  expect(await reported(inFamily('options:\n  big-wheel: { name: big wheel, needs: [big-cover] }'), RULE)).toHaveLength(
    1,
  );
  const settings = wholeDocument('witnessmark.yaml', 'witnessmark: 1\nseverities:\n  torque-unit-mising: off\n');
  expect(await offered(settings, RULE)).toContain('Write torque-unit-missing');
});

test('parts, tools and consumables have rules of their own', async () => {
  expect(await formFindings(inStep('- install: covers\n  with: socket-9\n  using: oil'))).toEqual([]);
});

test.each([
  ['k1-a or k1-b', '[k1-a, k1-b]'],
  ['k1-a and big-wheel', '{ all: [k1-a, big-wheel] }'],
  ['not k1-a', '{ none: [k1-a] }'],
])('the condition in words %s', async (words, written) => {
  const example = inStep(`- install: cover\n  when: ${words}`);
  expect(await reported(example, 'id-unknown')).toEqual([
    `${words}: "${words}" is a condition in words; write ${written}`,
  ]);
  const mended = await fixed(example, 'id-unknown');
  expect(mended.files[mended.at]).toContain(`when: ${written}\n`);
  expect(await reported(mended, 'id-unknown')).toEqual([]);
});
