import { expect, test } from 'vitest';
import { EXAMPLE_FAMILY } from '../../../server/src/core/rules/exampleDocuments';
import { inKit, withFiles } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'kit-line-superseded';
const KIT = 'kits/pellow-k1.kit.yaml';

test('a line that names its successor is turned round by the fix', async () => {
  const example = inKit('- { item: 10, part: cover-seal, number: "0040104", quantity: 1, superseded-by: "0040114" }');
  expect(await reported(example, RULE)).toEqual([
    '"0040104": The number 0040104 is superseded by 0040114; write 0040114',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[KIT]).toContain('number: "0040114", quantity: 1, replaces: "0040104" }');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a line whose number another line replaces is reported, and that other line is not', async () => {
  const example = inKit(
    '- { item: 10, part: cover-seal, number: PK-104, quantity: 1 }\n- { item: 11, part: cover-seal, number: PK-114, quantity: 1, replaces: [PK-94, PK-104] }',
  );
  expect(await reported(example, RULE)).toEqual(['PK-104: The number PK-104 is superseded by PK-114; write PK-114']);
});

test('a number that the family has kept is mended in the family', async () => {
  const family = EXAMPLE_FAMILY.replace('name: cover seal,', 'name: cover seal, number: { k1-a: PK-94, k1-b: PK-99 },');
  const example = withFiles(inKit('- { item: 10, part: cover-seal, number: PK-104, quantity: 1, replaces: PK-94 }'), {
    'families/pellow-k1.family.yaml': family,
  });
  expect(await reported(example, RULE)).toEqual([
    'PK-94: PK-104 replaces PK-94, but the family still gives the cover seal the number PK-94; write PK-104 there',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files['families/pellow-k1.family.yaml']).toContain('number: { k1-a: PK-104, k1-b: PK-99 }');
  expect(await reported(mended, RULE)).toEqual([]);
});
