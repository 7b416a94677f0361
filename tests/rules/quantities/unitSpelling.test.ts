import { expect, test } from 'vitest';
import { inFamily, inStep } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, reported } from '../../support/checkText';

const RULE = 'unit-spelling';

/** Spellings of the trade with the symbol that stands for each. */
test.each([
  ['in-lb', 'lbf·in'],
  ['inch pounds', 'lbf·in'],
  ['ft lbs', 'lbf·ft'],
  ['foot pounds', 'lbf·ft'],
  ['Nm', 'N·m'],
  ['newton metres', 'N·m'],
  ['oz-in', 'ozf·in'],
])('%s becomes %s', async (spelling, symbol) => {
  const example = inStep(`- tighten: cap-nut\n  torque: 41 ± 3 ${spelling}`);
  expect(await reported(example, RULE)).toEqual([
    `${spelling}: The standard symbol for ${spelling} is ${symbol}; write that`,
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain(`torque: 41 ± 3 ${symbol}\n`);
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a missing space is added, and one before a degree sign taken away', async () => {
  const torque = await fixed(inStep('- tighten: cap-nut\n  torque: 4.6N·m'), RULE);
  expect(torque.files[torque.at]).toContain('torque: 4.6 N·m\n');
  const angle = await fixed(inStep('- tighten: cap-nut\n  torque: 4.6 N·m\n  angle: 90 °'), RULE);
  expect(angle.files[angle.at]).toContain('angle: 90°\n');
});

test('a spelling that could mean something else is not mended unseen', async () => {
  const safety = async (unit: string) => {
    const { findings } = await checkExample(inStep(`- tighten: cap-nut\n  torque: 4.6 ${unit}`));
    return findings.filter((one) => one.rule === RULE).flatMap((one) => one.fixes().map((fix) => fix.safety));
  };
  expect(await safety('Nm')).toEqual(['safe']);
  expect(await safety('kgm')).toEqual(['suggestion']);
});

test('in a sentence only a torque is put right', async () => {
  expect(await reported(inStep('- Wait 5 minutes.'), RULE)).toEqual([]);
  const mended = await fixed(inStep('- "Tighten the cap nut to 41 inch pounds."'), RULE);
  expect(mended.files[mended.at]).toContain('- "Tighten the cap nut to 41 lbf·in."\n');
});

test('values by build and the second value are looked at', async () => {
  const example = inFamily('dimensions:\n  bore: { k1-a: 8.02..8.03mm, k1-b: 8.02..8.03 mm (0.3157..0.3161 inch) }');
  expect(await reported(example, RULE)).toHaveLength(2);
});
