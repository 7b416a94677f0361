import { expect, test } from 'vitest';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../../../server/src/core/rules/exampleDocuments';
import { inStep, withFamily, withFiles } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'heat-too-high';
const STANDS = 'parts:\n  wheel: { name: wheel, sits-on: core, max-temperature: 150 °C }';
const heat = (until: string, part = 'wheel') => `- heat: ${part}\n  until: ${until}`;

test('the high end of the temperature counts', async () => {
  expect(await reported(withFamily(inStep(heat('145 ± 10 °C')), STANDS), RULE)).toEqual([
    '145 ± 10 °C: The wheel is heated to 155 °C, and stands 150 °C at most; lower the temperature',
  ]);
  expect(await reported(withFamily(inStep(heat('140 ± 10 °C')), STANDS), RULE)).toEqual([]);
  expect(await reported(withFamily(inStep(heat('310 °F')), STANDS), RULE)).toEqual([
    '310 °F: The wheel is heated to 310 °F (155 °C), and stands 150 °C at most; lower the temperature',
  ]);
});

test('a temperature without an upper end is told for a part that has a limit', async () => {
  expect(await reported(withFamily(inStep(heat('≥ 110 °C')), STANDS), RULE)).toEqual([
    '≥ 110 °C: How hot the wheel may get is not stated, and the wheel stands 150 °C at most; write a range or a tolerance',
  ]);
  expect(await reported(inStep(heat('≥ 110 °C')), RULE)).toEqual([]);
});

const SEAL =
  'parts:\n  cover-seal: { name: cover seal, kind: o-ring, sits-on: cover, seals: cover, behind: [cover], renew: always, max-temperature: 120 °C }';

test('a seal in place on a heated part gets as hot, and one that is off does not', async () => {
  const [message] = await reported(withFamily(inStep(heat('140 °C', 'cover')), SEAL), RULE);
  expect(message).toBe(
    '140 °C: The cover is heated to 140 °C with the cover seal, which stands 120 °C at most; heat it without, or lower the temperature',
  );
  const off = '- remove: [cover-screw, cover]\n- remove: cover-seal\n';
  expect(await reported(withFamily(inStep(`${off}${heat('140 °C', 'cover')}`), SEAL), RULE)).toEqual([]);
});

test('a seal that is fitted to a hot part is told at the heat, with the place where they meet', async () => {
  const steps = `- remove: [cover-screw, cover]\n- remove: cover-seal\n${heat('140 °C', 'cover')}\n- install: cover-seal`;
  const example = withFamily(inStep(steps), SEAL);
  expect(await reported(example, RULE)).toHaveLength(1);
  const { findings } = await checkExample(example);
  const found = findings.find((one) => one.rule === RULE);
  expect(found?.related[0]?.message).toBe('They come together here');
  const cooled = steps.replace('- install', '- wait: 20 min\n- install');
  expect(await reported(withFamily(inStep(cooled), SEAL), RULE)).toEqual([]);
});

const stores = EXAMPLE_STORES.replace('cure: 24 h', 'cure: 24 h, max-temperature: 120 °C');

test('threadlocker that was put on before stands what the stores say', async () => {
  const steps = (between: string) =>
    `- remove: [cover-screw, cover]\n- remove: cap-nut\n- apply: threadlocker\n  to: cap-nut\n${between}- install: cap-nut\n- heat: wheel\n  until: 140 °C`;
  const held = (between = '') => withFiles(inStep(steps(between)), { [EXAMPLE_PATHS.stores]: stores });
  expect(await reported(held(), RULE)).toEqual([
    '140 °C: The wheel is heated to 140 °C with the threadlocker on the cap nut, which stands 120 °C at most; heat it without, or lower the temperature',
  ]);
  expect(await reported(held('- clean: cap-nut\n'), RULE)).toEqual([]);
});

test('a limit by build is told for its build', async () => {
  const byBuild = STANDS.replace('150 °C', '{ k1-a: 130 °C, otherwise: 180 °C }');
  expect(await reported(withFamily(inStep(heat('150 °C')), byBuild), RULE)).toEqual([
    '150 °C: The wheel is heated to 150 °C, and stands 130 °C at most; lower the temperature (K1-A)',
  ]);
});

test('half-typed temperatures conclude nothing', async () => {
  for (const until of ['', '140', 'hot', '140 N·m']) {
    expect(await reported(withFamily(inStep(heat(until)), STANDS), RULE)).toEqual([]);
  }
});

test('a heating that is done over again after a wrong result is told once', async () => {
  const again = `${heat('160 °C')}\n- measure: end-play\n  if-not: { go-to: only-step, at-most: 2 }`;
  expect(await reported(withFamily(inStep(again), STANDS), RULE)).toHaveLength(1);
  const other = `- measure: end-play\n  if-not: { do: [{ heat: wheel, until: 160 °C }] }`;
  const [message, ...more] = await reported(withFamily(inStep(other), STANDS), RULE);
  expect(more).toEqual([]);
  expect(message).toContain('stands 150 °C at most; lower the temperature');
});

test('each part that one instruction heats is looked at', async () => {
  const both = `${STANDS}\n  cover: { name: cover, sits-on: core, max-temperature: 140 °C }`;
  expect(await reported(withFamily(inStep(heat('160 °C', '[wheel, cover]')), both), RULE)).toHaveLength(2);
});
