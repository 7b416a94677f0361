import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'heat-too-low';
const SIZES = 'dimensions:\n  hub-bore: 20.000..20.010 mm\n  nose: 20.020..20.030 mm';
const FIT = ', fit: { with: shaft, bore: hub-bore, shaft: nose, clearance: 0.005 mm }';

/** A hub that goes onto a shaft, with the keys of both. */
function hub(steps: string, keys = ', expansion: 22.9', shaft = '', sizes = SIZES, fit = FIT) {
  const parts = `  shaft: { name: shaft, sits-on: core${shaft} }\n  hub: { name: hub, sits-on: shaft${fit}${keys} }`;
  return withFamily(inStep(`- remove: hub\n${steps}`), `parts:\n${parts}\n${sizes}`);
}

const heated = (until: string) => `- heat: hub\n  until: ${until}\n- install: hub`;

test('the tightest case and the clearance wanted decide, at the low end of the temperature', async () => {
  // (0.030 + 0.005) / (22.9e-6 × 20.000) = 76.4 K above 20 °C.
  expect(await reported(hub(heated('95 ± 5 °C')), RULE)).toEqual([
    '95 ± 5 °C: The hub is as cool as 90 °C when it is fitted, and needs 97 °C to go together: up to 0.03 mm of interference and 0.005 mm of clearance, from 20 °C; heat it further',
  ]);
  expect(await reported(hub(heated('102 ± 5 °C')), RULE)).toEqual([]);
});

test('temperatures and lengths may be in other units', async () => {
  const inches = 'dimensions:\n  hub-bore: 0.7874..0.7878 in\n  nose: 20.020..20.030 mm';
  const found = await reported(hub(heated('190 ± 10 °F'), ', expansion: 22.9', '', inches), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain('as cool as 180 °F (82 °C)');
});

test('a fit that slides without heat needs none', async () => {
  const loose = 'dimensions:\n  hub-bore: 20.040..20.050 mm\n  nose: 20.020..20.030 mm';
  expect(await reported(hub(heated('30 °C'), ', expansion: 22.9', '', loose), RULE)).toEqual([]);
});

test('what the part stands is told where the fit needs more', async () => {
  const [message] = await reported(hub(heated('80 °C'), ', expansion: 22.9, max-temperature: 90 °C'), RULE);
  expect(message).toContain('that is above its highest temperature of 90 °C, so cool the other part as well');
});

test('a shaft that is cooled as well takes some of the heat away', async () => {
  // Shaft: 12.3e-6 × 20.030 × 60 K = 0.0148 mm; left 0.0202 mm: 44.1 K.
  const both = (until: string) => `- cool: shaft\n  until: -40 °C\n${heated(until)}`;
  expect(await reported(hub(both('65 °C'), ', expansion: 22.9', ', expansion: 12.3'), RULE)).toEqual([]);
  const [message] = await reported(hub(both('60 °C'), ', expansion: 22.9', ', expansion: 12.3'), RULE);
  expect(message).toContain('needs 65 °C');
  expect(await reported(hub(both('60 °C')), RULE)).toEqual([]);
});

test('a shaft that is cooled alone has to be cold enough', async () => {
  const cooled = (until: string) => `- cool: shaft\n  until: ${until}\n- install: hub`;
  const found = await reported(hub(cooled('-50 °C'), '', ', expansion: 12.3'), RULE);
  // 0.035 / (12.3e-6 × 20.030) = 142.1 K below 20 °C.
  expect(found).toEqual([
    '-50 °C: The shaft is as warm as −50 °C when it is fitted, and needs −123 °C to go together: up to 0.03 mm of interference and 0.005 mm of clearance, from 20 °C; cool it further',
  ]);
  expect(await reported(hub(cooled('-196 °C'), '', ', expansion: 12.3'), RULE)).toEqual([]);
});

test('letting the part cool down is no cooling for a fit, and heat that is gone does not count', async () => {
  expect(await reported(hub('- heat: hub\n  until: 50 °C\n- cool: hub\n  until: 35 °C\n- install: hub'), RULE)).toEqual(
    [],
  );
  expect(await reported(hub('- heat: hub\n  until: 50 °C\n- wait: 30 min\n- install: hub'), RULE)).toEqual([]);
});

test('of two builds only the one with the tight fit is named', async () => {
  const sizes =
    'dimensions:\n  hub-bore: { k1-a: 20.000..20.010 mm, k1-b: 20.035..20.040 mm }\n  nose: 20.020..20.030 mm';
  const [message, ...more] = await reported(hub(heated('80 °C'), ', expansion: 22.9', '', sizes), RULE);
  expect(more).toEqual([]);
  expect(message).toMatch(/\(K1-A\)$/);
});

test('the class of a fit stands for dimensions that are not stated, and the working says so', async () => {
  const fit = ', fit: { with: shaft, class: 20 H7/s6 }';
  const example = hub(heated('90 °C'), ', material: aluminium 2024', '', 'dimensions:\n  other: 1..2 mm', fit);
  const { findings } = await checkExample(example);
  const found = findings.find((one) => one.rule === RULE);
  expect(found?.message).toContain('up to 0.048 mm of interference and no clearance at all');
  const [working] = found?.working() ?? [];
  expect(working?.rows.map(({ text }) => text)).toContain('20..20.021 mm, assumed from ISO 286-1 for 20 H7/s6');
  expect(working?.sources[0]).toBe('ISO 286-1:2010');
  expect(working?.sources[1]).toContain('Callister');
  expect(working?.steps.at(-1)).toMatchObject({ symbol: 't' });
});

test('what is not stated concludes nothing', async () => {
  expect(await reported(hub(heated('40 °C'), ''), RULE)).toEqual([]);
  expect(await reported(hub(heated('40 °C'), ', expansion: 22.9e-6'), RULE)).toEqual([]);
  expect(await reported(hub(heated('40 °C'), ', expansion: 22.9', '', 'dimensions:\n  nose: 20 mm'), RULE)).toEqual([]);
  expect(await reported(hub('- heat: hub\n- install: hub'), RULE)).toEqual([]);
  expect(await reported(hub('- heat: hub\n  until:\n- install: hub'), RULE)).toEqual([]);
});

test('builds are named only where the step serves others as well', async () => {
  const only = (keys: string) => hub(`- heat: hub\n  until: 50 °C${keys}\n- install: hub${keys}`);
  const found = await reported(only('\n  when: k1-b'), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/heat it further$/);
});
