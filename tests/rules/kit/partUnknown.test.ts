import { expect, test } from 'vitest';
import { inFamily, inKit, inStep, withFiles } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'part-unknown';

test('an unknown part is reported in procedure, kit and family, and the fix writes the nearest id', async () => {
  expect(await reported(inStep('- install: cover-seals'), RULE)).toEqual([
    'cover-seals: The family has no part cover-seals; did you mean "cover-seal"?',
  ]);
  const line = '- { item: 10, part: seal-cover, number: PK-104, quantity: 1 }';
  expect(await reported(inKit(line), RULE)).toEqual([
    'seal-cover: The family has no part seal-cover; did you mean "cover-seal"?',
  ]);
  const family = inFamily('parts:\n  lid: { name: lid, sits-on: cor }');
  expect(await reported(family, RULE)).toEqual(['cor: The family has no part cor; did you mean "core"?']);
  expect((await fixed(family, RULE)).files['families/pellow-k1.family.yaml']).toContain('sits-on: core }');
});

test('nothing is said where the family cannot be read', async () => {
  const example = withFiles(inStep('- install: cover-seals'), { 'families/pellow-k1.family.yaml': '' });
  expect(await reported(example, RULE)).toEqual([]);
});

test('ids that stand in one are parted', async () => {
  const example = inStep('- install: cover, cover-seal');
  expect(await reported(example, 'part-unknown')).toEqual([
    'cover, cover-seal: cover and cover-seal stand in one; write them as a list, with a comma between them',
  ]);
  const mended = await fixed(example, 'part-unknown');
  expect(mended.files[mended.at]).toContain('- install: [cover, cover-seal]\n');
  const missing = await fixed(inStep('- loosen: cap-nut\n  with: [socket-8 socket-10]'), 'tool-unknown');
  expect(missing.files[missing.at]).toContain('with: [socket-8, socket-10]\n');
});

test('a name in place of an id is led to the id', async () => {
  const mended = await fixed(inStep('- remove: Cap nut'), 'part-unknown', 'Write cap-nut');
  expect(mended.files[mended.at]).toContain('- remove: cap-nut\n');
});
