import { describe, expect, test } from 'vitest';
import { inStep, withFamily, withStores } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'angle-tool-missing';
const DISC = `tools:
  angle-disc: { name: angle disc, kind: angle-gauge, resolution: 1° }
  odd: { name: odd tool, kind: other }`;
const NUT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, angle: { k1-b: 60 ± 5° } }';

const found = (keys: string, family?: string): Promise<string[]> => {
  const example = withStores(inStep(`- tighten: cap-nut\n  ${keys}`), DISC);
  return reported(family === undefined ? example : withFamily(example, family), RULE);
};

test('the angle may stand alone, behind the torque, or in the family', async () => {
  const message = 'cap-nut: The cap nut is turned on by 60° ± 5°, but no angle gauge is named; add angle-disc';
  expect(await found('angle: 60 ± 5°\n  with: socket-8')).toEqual([message]);
  expect(await found('torque: 4.6 ± 0.3 N·m + 60 ± 5°\n  with: socket-8')).toEqual([message]);
  expect(await found('with: socket-8', NUT)).toEqual([`${message} (K1-B)`]);
});

test('the fix names it', async () => {
  const mended = await fixed(withStores(inStep('- tighten: cap-nut\n  angle: 60 ± 5°\n  with: socket-8'), DISC), RULE);
  expect(mended.files[mended.at]).toContain('with: [socket-8, angle-disc]');
});

describe('nothing is reported', () => {
  test.each([
    ['with an angle gauge', 'angle: 60 ± 5°\n  with: [socket-8, angle-disc]'],
    ['with a tool of no particular kind', 'angle: 60 ± 5°\n  with: [socket-8, odd]'],
    ['with a tool that no stores have', 'angle: 60 ± 5°\n  with: [socket-8, angle-dics]'],
    ['for a torque alone', 'torque: 4.6 ± 0.3 N·m\n  with: socket-8'],
  ])('%s', async (_, keys) => {
    expect(await found(keys)).toEqual([]);
  });

  test('where the instruction brings it to the torque alone, and a later one turns it on', async () => {
    expect(await found('torque: 4.6 ± 0.3 N·m\n  with: socket-8', NUT)).toEqual([]);
  });
});
