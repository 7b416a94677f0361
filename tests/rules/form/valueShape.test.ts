import { expect, test } from 'vitest';
import { asStep, inFamily, inHead, inStep } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'value-shape';

test('a sentence that its colon made a map is put in quotes whole', async () => {
  const example = inStep('- Stop here: the shaft breaks');
  expect(await reported(example, RULE)).toHaveLength(1);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('- "Stop here: the shaft breaks"\n');
  expect(await formFindings(mended)).toEqual([]);
});

test('a text that commas cut is told once and put in quotes whole', async () => {
  const example = inStep('- { say: Clean, dry, and oil it, note: x }');
  expect((await formFindings(example)).map((finding) => finding.message)).toEqual([
    'The comma before "dry" cuts the text in two; put the whole text in quotes',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('{ say: "Clean, dry, and oil it", note: x }');
});

test.each([
  ['renew: allways', 'Write always', 'renew: always'],
  ['temporary: yes', 'Write true', 'temporary: true'],
])('%s becomes %s', async (wrong, title, right) => {
  const mended = await fixed(inFamily(`parts:\n  lid: { name: lid, ${wrong} }`), RULE, title);
  expect(mended.files[mended.at]).toContain(right);
});

test('a day in an order that is certain is rewritten, in any other order it is not', async () => {
  const dated = (date: string) => inHead(`revisions: [{ revision: A, date: ${date}, what: first }]`);
  expect(await offered(dated('2026/3/1'), RULE)).toEqual(['Write 2026-03-01']);
  expect(await reported(dated('3/1/2026'), RULE)).toHaveLength(1);
  expect(await offered(dated('3/1/2026'), RULE)).toEqual([]);
  expect(await reported(dated('2026-02-30'), RULE)).toHaveLength(1);
});

test('an id gets small letters and hyphens', async () => {
  expect(await offered(inFamily('parts:\n  Spring_Plate: { name: spring plate }'), RULE)).toEqual([
    'Write spring-plate',
  ]);
});

test('a list where a text belongs, an empty value and an unknown version are told', async () => {
  expect((await reported(asStep('title: [a, b]\ndo:\n  - install: cover'), RULE))[0]).toContain(
    '"title" wants a text, not a list',
  );
  expect((await reported(inStep('- install:'), RULE))[0]).toContain('"install" has no value');
  expect((await reported(inHead('witnessmark: 2'), RULE))[0]).toContain('Version "2"');
});

test('a decimal comma between braces is told as such and mended with a point', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: { k1-a: 4,6 N·m, otherwise: 4.6 ± 0.3 N·m }');
  expect(await reported(example, RULE)).toEqual([
    '4,6 N·m: The comma in "4,6 N·m" cuts the value in two; write a decimal point',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('{ k1-a: 4.6 N·m, otherwise: 4.6 ± 0.3 N·m }');
  const range = inFamily('limits:\n  play: { name: play, accept: 0,04..0,09 mm }');
  const points = await fixed(range, RULE);
  expect(points.files[points.at]).toContain('accept: 0.04..0.09 mm }');
});

test('passes without brackets are told once, as the list that they should be', async () => {
  const example = inStep(
    '- tighten: cap-nut\n  passes: 2.3 ± 0.2 N·m, 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]',
  );
  const { findings } = await checkExample(example);
  expect(findings.map((finding) => finding.rule)).toEqual([RULE]);
  const mended = await fixed(example, RULE);
  expect(await formFindings(mended)).toEqual([]);
  expect(mended.files[mended.at]).toContain('passes: [2.3 ± 0.2 N·m, 4.6 ± 0.3 N·m]\n');
});

test('what a thing cannot do without is not to be taken out', async () => {
  expect(await reported(asStep('title: Work\ndo:'), RULE)).toEqual(['do: "do" has no value; write one']);
  expect(await reported(inStep('- install: cover\n  orient:'), RULE)).toEqual([
    'orient: "orient" has no value; write one, or take the key out',
  ]);
});
