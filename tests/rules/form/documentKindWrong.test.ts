import { expect, test } from 'vitest';
import { EXAMPLE_FAMILY, EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { wholeDocument } from '../../../server/src/core/rules/examples';
import { formFindings } from './formFindings';

const asKit = (text: string) => formFindings(wholeDocument(EXAMPLE_PATHS.kit, text));

test('a family in a file that is named as a kit costs one finding', async () => {
  const found = await asKit(EXAMPLE_FAMILY);
  expect(found.map((finding) => finding.rule)).toEqual(['document-kind-wrong']);
  expect(found[0]?.message).toContain(
    'belongs to a family, but the name of this file makes it a kit; name the file *.family.yaml',
  );
});

test('an empty document and one that is a list are told how a kit starts', async () => {
  for (const text of ['', '\n\n', '# to be written\n', '- a\n- b\n', 'a kit\n']) {
    const found = await asKit(text);
    expect(found.map((finding) => finding.rule)).toEqual(['document-kind-wrong']);
    expect(found[0]?.message).toContain('witnessmark: 1');
  }
});

test('a kit with one key too many is still a kit', async () => {
  const found = await asKit(
    'witnessmark: 1\nkit: K-1\nfamily: ../families/pellow-k1.family.yaml\ntitle: x\nlines: []\n',
  );
  expect(found.map((finding) => finding.rule)).not.toContain('document-kind-wrong');
});
