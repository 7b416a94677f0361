import { expect, test } from 'vitest';
import { inFamily, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'limit-missing';
const PARTLY = 'limits:\n  end-play: { name: end play, accept: { k1-a: 0.04..0.09 mm } }';
const READING = 'readings:\n  play-read: { name: play as found, quantity: length }';
const DECIDES = '- measure: play-read\n  if-not: { reject: true }';
const MISSING = (name: string) =>
  `What is acceptable for the ${name} is not stated, and the work goes on by it; state it here or in the family`;

test('a limit that one variant lacks is told for that variant, in the step and in the family', async () => {
  const step = withFamily(inStep('- measure: end-play'), PARTLY);
  expect(await reported(step, RULE)).toEqual([`end-play: ${MISSING('end play')} (K1-B)`]);
  expect(await reported(inFamily(PARTLY), RULE)).toEqual([
    'end-play: The limit for the end play has no value for some builds that have it; state one for each (K1-B)',
  ]);
});

test('a step that states it, or that serves other builds only, is right', async () => {
  expect(await reported(withFamily(inStep('- measure: end-play\n  accept: ≤ 0.1 mm'), PARTLY), RULE)).toEqual([]);
  expect(await reported(withFamily(inStep('- measure: end-play\n  when: k1-a'), PARTLY), RULE)).toEqual([]);
  const some = '- measure: end-play\n  accept: { k1-b: ≤ 0.1 mm }';
  expect(await reported(withFamily(inStep(some), PARTLY), RULE)).toEqual([]);
});

test('a reading needs a limit only where something is decided by it', async () => {
  expect(await reported(withFamily(inStep(DECIDES), READING), RULE)).toEqual([
    `play-read: ${MISSING('play as found')}`,
  ]);
  expect(await reported(withFamily(inStep('- measure: play-read'), READING), RULE)).toEqual([]);
  const calculated = DECIDES.replace('measure:', 'calculate:').concat('\n  from: [+0.5 mm]');
  expect(await reported(withFamily(inStep(calculated), READING), RULE)).toEqual([
    `play-read: ${MISSING('play as found')}`,
  ]);
});

test('what is only recorded cannot decide anything', async () => {
  const recorded = '- measure: end-play\n  accept: record-only';
  expect(await reported(inStep(recorded), RULE)).toEqual([]);
  expect(await reported(inStep(`${recorded}\n  if-not: { reject: true }`), RULE)).toEqual([
    'end-play: The end play is only recorded, and if-not says what to do when it is not right; state what is acceptable',
  ]);
});

test('a limit that does not exist on a build of the step has no value there', async () => {
  const limit = 'limits:\n  end-play: { name: end play, accept: ≤ 0.09 mm, when: k1-a }';
  expect(await reported(withFamily(inStep('- measure: end-play'), limit), RULE)).toEqual([
    'end-play: The end play is a limit of other builds, so nobody can say what is acceptable; state it here, or measure it only where it holds (K1-B)',
  ]);
  expect(await reported(inFamily(limit), RULE)).toEqual([]);
});

test('a rotor is balanced to a value or to a grade', async () => {
  const group = (rest: string) => `balance-groups:\n  rotor: { name: rotor, members: [wheel, cap-nut]${rest} }`;
  const balance = (keys = '') => inStep(`- balance: rotor${keys}`);
  expect(await reported(withFamily(balance(), group('')), RULE)).toEqual([
    'rotor: The permissible unbalance of the rotor is not stated, nor its balance grade; state it here or in the family',
  ]);
  expect(await reported(withFamily(balance(), group(', grade: G 6.3')), RULE)).toEqual([]);
  expect(await reported(withFamily(balance('\n  accept: ≤ 0.1 g·mm'), group('')), RULE)).toEqual([]);
});

test('an unknown id, an unknown family and half-typed values are left to others', async () => {
  expect(await reported(inStep('- measure: end-pla\n  if-not: { reject: true }'), RULE)).toEqual([]);
  expect(await reported(inStep('- measure:\n- calculate:\n- balance:'), RULE)).toEqual([]);
  expect(await reported(inFamily('limits:\n  end-play: { name: end play, accept: }'), RULE)).toEqual([]);
});
