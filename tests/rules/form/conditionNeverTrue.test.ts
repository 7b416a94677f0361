import { expect, test } from 'vitest';
import { asStep, inFamily, inHead, inKit, inStep } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'condition-never-true';
const step = (condition: string, inside = '') =>
  asStep(`title: Fit the cover\n${condition}\ndo:\n  - install: cover\n    ${inside}`);

test('two variants at once, or a variant with an option that it cannot have', async () => {
  expect((await reported(step('when: { all: [k1-a, k1-b] }'), RULE))[0]).toMatch(/^\{ all: .*\}: No build or outcome/);
  expect(await reported(step('when: { all: [k1-b, big-wheel] }'), RULE)).toHaveLength(1);
  expect(await reported(step('when: [k1-a, k1-b]'), RULE)).toEqual([]);
});

test('an unless that always holds is the one to blame', async () => {
  expect((await reported(step('when: k1-a\nunless: [k1-a, big-wheel]'), RULE))[0]).toMatch(
    /^\[k1-a, big-wheel\]: Every build that is left/,
  );
});

test('an instruction is judged within its step, and is not told where the step is told', async () => {
  expect((await reported(step('when: k1-a', 'when: k1-b'), RULE))[0]).toMatch(/^k1-b: None of the builds/);
  expect(await reported(step('when: { all: [k1-a, k1-b] }', 'when: k1-b'), RULE)).toHaveLength(1);
});

test('an outcome that is found only on other builds', async () => {
  expect(
    await reported(inStep('- install: cover\n  when: { all: [wheel=renewed, wheel=re-used] }'), RULE),
  ).toHaveLength(1);
  expect(await reported(inStep('- install: cover\n  when: wheel=renewed'), RULE)).toEqual([]);
});

test('a procedure is judged by the builds that it covers', async () => {
  const head = 'covers: { variants: [k1-a], options: [big-wheel] }';
  const [message] = await reported(inHead(head, '- install: cover\n  when: k1-b'), RULE);
  expect(message).toMatch(/^k1-b: No build that this procedure covers/);
  expect(await reported(inHead(head, '- install: cover\n  when: big-wheel'), RULE)).toEqual([]);
});

test('a name that nothing has, or that the procedure fails to cover by a slip, is told alone', async () => {
  expect((await formFindings(step('when: { all: [k1-a, k1-c] }'))).map((one) => one.rule)).toEqual(['id-unknown']);
  const slip = inHead('covers: { variants: [k1-a, k1-bb] }', '- install: cover\n  when: k1-b');
  expect((await formFindings(slip)).map((one) => one.rule)).toEqual(['id-unknown']);
});

test('a kit line and a value by build within what they are for', async () => {
  expect(
    await reported(
      inKit('- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: { all: [k1-a, k1-b] } }'),
      RULE,
    ),
  ).toHaveLength(1);
  const lid = (hand: string) => inFamily(`parts:\n  lid: { name: lid, sits-on: core, when: k1-a, quantity: ${hand} }`);
  expect((await reported(lid('{ k1-a: 1, k1-b: 2 }'), RULE))[0]).toMatch(/^k1-b: "k1-b" holds on none of the builds/);
  expect(await reported(lid('{ big-wheel: 1, otherwise: 2 }'), RULE)).toEqual([]);
});

test('an option that cannot exist is told by a rule of its own, and not again where it is used', async () => {
  const family = inFamily(
    'options:\n  big-wheel: { name: big wheel, variants: [k1-a], needs: [big-cover] }\n  big-cover: { name: big cover, variants: [k1-b] }\nparts:\n  lid: { name: lid, sits-on: core, when: big-wheel }',
  );
  expect(await reported(family, RULE)).toEqual([]);
  expect(await reported(family, 'need-never-met')).toHaveLength(1);
});
