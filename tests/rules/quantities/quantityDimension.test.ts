import { expect, test } from 'vitest';
import { inFamily, inStep, inStores } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'quantity-dimension';

function torque(text: string) {
  return inStep(`- tighten: cap-nut\n  torque: ${text}`);
}

test('a unit of another dimension is underlined alone', async () => {
  expect(await reported(torque('4.6 mm'), RULE)).toEqual([
    'mm: mm is a unit of length; a torque is written in N·m, lbf·ft or lbf·in',
  ]);
});

test('a unit that is none gets the nearest ones', async () => {
  const example = torque('41 ± 3 lbf·im');
  expect((await reported(example, RULE))[0]).toMatch(/^lbf·im: There is no unit lbf·im; did you mean .*lbf·in/);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('torque: 41 ± 3 lbf·in\n');
});

test('a decimal comma that can be read in one way only is mended unseen', async () => {
  const example = torque('4,6 ± 0,3 N·m');
  expect(await reported(example, RULE)).toEqual([
    '4,6 ± 0,3: Two numbers in 4,6 ± 0,3 have a comma; write 4.6 ± 0.3, with decimal points',
  ]);
  const { findings } = await checkExample(example);
  const safeties = findings.filter((one) => one.rule === RULE).map((one) => one.fixes()[0]?.safety);
  expect(safeties).toEqual(['safe']);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('torque: 4.6 ± 0.3 N·m\n');
  expect(await reported(torque('4.6 ± 0,3 N·m'), RULE)).toEqual([
    '0,3: The number 0,3 has a comma; write 0.3, with a decimal point',
  ]);
});

test('the commas of a value and of the one in brackets are one slip', async () => {
  const mended = await fixed(torque('4,6 ± 0,3 N·m (40,7 ± 2,7 lbf·in)'), RULE);
  expect(mended.files[mended.at]).toContain('torque: 4.6 ± 0.3 N·m (40.7 ± 2.7 lbf·in)\n');
});

test('a bracket that is not closed is closed', async () => {
  const example = torque('4.6 ± 0.3 N·m (41 ± 3 lbf·in');
  expect(await reported(example, RULE)).toEqual([
    '(41 ± 3 lbf·in: The bracket that opens here is not closed; write ) behind the second value',
  ]);
  expect(await reported(await fixed(example, RULE), RULE)).toEqual([]);
});

test('a unit that takes the place of ° is set off by a space', async () => {
  const mended = await fixed(torque('60°'), RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('torque: 60 lbf·in\n');
});

test('a comma that may part thousands is asked about', async () => {
  const example = inFamily('max-speed: 150,000 rpm');
  expect(await offered(example, RULE)).toEqual(['Write 150.000', 'Write 150 000']);
});

test('a range the wrong way round is turned', async () => {
  const mended = await fixed(inFamily('dimensions:\n  bore: 8.03..8.02 mm'), RULE);
  expect(mended.files[mended.at]).toContain('bore: 8.02..8.03 mm\n');
});

test('words behind a value, no number at all, and two units in one value', async () => {
  expect(await reported(torque('4.6 N·m when dry'), RULE)).toEqual([
    'when dry: "when dry" is no part of the value; leave it out, or write it as a note',
  ]);
  expect(await reported(torque('as the maker says'), RULE)).toEqual([
    'as the maker says: "as the maker says" is no value; write a number and its unit',
  ]);
  expect(await reported(torque('41 lbf·in ± 0.3 N·m'), RULE)).toHaveLength(1);
});

test('a missing unit is reported here unless it is that of a torque', async () => {
  expect(await reported(inStores('tools:\n  socket-8: { name: 8 mm socket, kind: socket, size: 8 }'), RULE)).toEqual([
    '8: The value 8 has no unit; write mm, in or µm',
  ]);
  expect(await reported(torque('45'), RULE)).toEqual([]);
});

test('a word stands under its own key only', async () => {
  expect(await reported(torque('record-only'), RULE)).toEqual([
    'record-only: The word record-only stands under accept only; write a number and its unit here',
  ]);
  expect(await reported(inStep('- measure: end-play\n  accept: record-only'), RULE)).toEqual([]);
  expect(await reported(inStep('- wait: cure\n  of: threadlocker'), RULE)).toEqual([]);
});

test('a half-typed value does not stop the checks', async () => {
  for (const text of ['', '4.', '4.6 ±', '4.6 N·m (', '..', '≤', '4.6 N·m + ']) {
    expect(await checkExample(torque(text))).toHaveProperty('findings');
  }
});

test('where any value may stand, a force and a mass are read as what they are', async () => {
  for (const accept of ['≤ 20 N', '12 ± 1 kg', '3 ± 1 lb', '5..6 bar', '0.4..0.6 V']) {
    const example = inStep(`- measure: end-play\n  accept: ${accept}`);
    const { findings } = await checkExample(example);
    expect(findings.filter((one) => one.rule === RULE || one.rule.startsWith('unit-'))).toEqual([]);
  }
});

test('the range of a torque wrench is a torque, and a reading is of its own dimension', async () => {
  const wrench = 'tools:\n  wrench: { name: wrench, kind: torque-wrench, range: 10..50 lb }';
  expect(await reported(inStores(wrench), RULE)).toEqual([
    'lb: lb is a unit of mass; a torque is written in N·m, lbf·ft or lbf·in',
  ]);
  const reading = 'readings:\n  gap: { name: gap, quantity: length, accept: 2..3 bar }';
  expect(await reported(inFamily(reading), RULE)).toHaveLength(1);
  expect(await reported(inFamily(reading.replace('bar', 'mm')), RULE)).toEqual([]);
});
