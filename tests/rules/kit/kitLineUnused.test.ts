import { expect, test } from 'vitest';
import { inHead, inStep, withKit } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'kit-line-unused';
const UNUSED = 'but no instruction fits it; fit it, or take it out of the kit';

test('it stands at the path of the kit, and the lines of one part are one finding', async () => {
  const lines =
    '- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: k1-a }\n- { item: 11, part: cover-seal, number: PK-105, quantity: 1, when: k1-b }';
  const example = withKit(inStep('- remove: cover-seal'), lines);
  expect(await reported(example, RULE)).toEqual([
    `../kits/pellow-k1.kit.yaml: The kit holds the cover seal (line 10, number PK-104; line 11, number PK-105), ${UNUSED}`,
  ]);
  const { findings } = await checkExample(example);
  expect(findings.find((one) => one.rule === RULE)?.related).toHaveLength(2);
});

test('the builds of the line count', async () => {
  const line = '- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: k1-b }';
  const step = '- install: cover-seal\n  when: k1-a';
  expect(await reported(withKit(inStep(step), line), RULE)).toEqual([
    `../kits/pellow-k1.kit.yaml: The kit holds the cover seal (line 10, number PK-104), ${UNUSED} (K1-B)`,
  ]);
  const onlyA = inHead('covers: { variants: [k1-a] }', '- remove: cover');
  expect(await reported(withKit(onlyA, line), RULE)).toEqual([]);
});

test('a part that is pressed in, replaced when needed or mentioned is used', async () => {
  for (const step of [
    '- press: cover-seal',
    '- inspect: cover-seal\n  look-for: cuts\n  if-not: { replace: cover-seal }',
    '- Slip the <cover-seal> into its groove.',
  ]) {
    expect(await reported(inStep(step), RULE)).toEqual([]);
  }
});

test('a half-typed instruction may be the one that fits it', async () => {
  for (const step of ['- install:', '- install: cover-', '- instal: cover-seal'])
    expect(await reported(inStep(`- remove: cover\n${step}`), 'kit-line-unused')).toEqual([]);
});
