import { expect, test } from 'vitest';
import { inHead } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'document-not-found';

test.each([
  ['../families/pellow-k2.family.yaml', 'No file is at'],
  ['../kits/pellow-k1.kit.yaml', 'is named as a kit; here belongs a family, named *.family.yaml'],
  ['../families/pellow-k1.yaml', 'is named like none of our documents'],
  ['../../elsewhere/pellow-k1.family.yaml', 'leads out of the folder'],
  ['/families/pellow-k1.family.yaml', 'is no path from this document'],
  ['https://example.com/pellow-k1.family.yaml', 'is no path from this document'],
  ['C:\\families\\pellow-k1.family.yaml', 'is no path from this document'],
])('the family at %s', async (path, message) => {
  const found = await formFindings(inHead(`family: ${path}`));
  expect(found.map((finding) => finding.rule)).toEqual([RULE]);
  expect(found[0]?.message).toContain(message);
});

test('backslashes become slashes', async () => {
  const mended = await fixed(inHead('stores: ..\\stores\\bay-1.stores.yaml'), RULE);
  expect(mended.files[mended.at]).toContain('stores: ../stores/bay-1.stores.yaml\n');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('each entry of a list is told by itself', async () => {
  const kits = 'kit: [../kits/pellow-k1.kit.yaml, ../kits/none.kit.yaml]';
  expect((await reported(inHead(kits), RULE)).map((one) => one.split(':')[0])).toEqual(['../kits/none.kit.yaml']);
});
