import { expect, test } from 'vitest';
import { inStep, withFiles } from '../../../server/src/core/rules/examples';
import { kitForOtherFamily } from '../../../server/src/core/rules/kit/kitForOtherFamily';
import { checkExample, reported } from '../../support/checkText';

test('the path of the kit is reported, and nothing else about that kit', async () => {
  const example = kitForOtherFamily.doc.wrong;
  expect(await reported(example, 'kit-for-other-family')).toEqual([
    '../kits/pellow-k1.kit.yaml: The kit K-PK2 is for the family pellow-k2, but this procedure is for pellow-k1; name a kit of pellow-k1',
  ]);
  const { findings } = await checkExample(example);
  expect(findings.filter((one) => one.rule.startsWith('kit-') || one.rule === 'part-not-in-kit')).toHaveLength(1);
});

test('a kit whose family cannot be read is no kit of another family', async () => {
  const kit = 'witnessmark: 1\nkit: K-PK1\nfamily: ../families/gone.family.yaml\nlines: []\n';
  const example = withFiles(inStep('- remove: cover'), { 'kits/pellow-k1.kit.yaml': kit });
  expect(await reported(example, 'kit-for-other-family')).toEqual([]);
});
