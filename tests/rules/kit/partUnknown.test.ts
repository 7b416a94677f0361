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
