import { describe, expect, test } from 'vitest';
import { inStep, withFamily, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, offered, reported } from '../../support/checkText';

const RULE = 'gauge-too-coarse';
const TOOLS = `tools:
  coarse-gauge: { name: coarse gauge, kind: gauge, resolution: 0.01 mm, range: 0..10 mm }
  inch-gauge: { name: inch gauge, kind: indicator, resolution: 0.0005 in, range: 0..0.4 in }
  micrometer-25: { name: outside micrometer 0–25 mm, kind: micrometer, resolution: 0.001 mm, range: 0..25 mm }
  micrometer-50: { name: outside micrometer 25–50 mm, kind: micrometer, resolution: 0.001 mm, range: 25..50 mm }
  plain-gauge: { name: plain gauge, kind: gauge }
  pressure-gauge: { name: pressure gauge, kind: pressure-gauge, resolution: 0.1 bar, range: 0..4 bar }
  air-supply: { name: air supply, kind: pressure-source, range: 0..1 bar }
  thermometer: { name: thermometer, kind: thermometer, resolution: 2 °F, range: 0..300 °C }
  v-blocks: { name: V-blocks, kind: holding-fixture }`;

const example = (accept: string, tool: string) =>
  withStores(inStep(`- measure: end-play\n  accept: ${accept}\n  with: ${tool}`), TOOLS);
const found = (accept: string, tool: string): Promise<string[]> => reported(example(accept, tool), RULE);

test('a gauge has at least six steps within the tolerance', async () => {
  expect(await found('0.04..0.09 mm', 'coarse-gauge')).toEqual([
    'coarse-gauge: The coarse gauge reads to 0.01 mm, which is 1/5 of what the end play may vary (0.04..0.09 mm); it should be 1/10, at most 1/6; take dial-gauge',
  ]);
  expect(await found('0.04..0.10 mm', 'coarse-gauge')).toEqual([]);
  expect(await found('0.05 ± 0.02 mm', 'coarse-gauge')).toHaveLength(1);
  expect(await offered(example('0.04..0.09 mm', 'coarse-gauge'), RULE)).toEqual([
    'Take dial-gauge instead of coarse-gauge',
  ]);
});

test('a limit with one end is counted from zero; one without an upper end has no width', async () => {
  expect(await found('≤ 0.012 mm', 'coarse-gauge')).toHaveLength(1);
  expect(await found('≤ 0.012 mm', 'dial-gauge')).toEqual([]);
  expect(await found('≥ 0.012 mm', 'coarse-gauge')).toEqual([]);
});

test('units are converted, and degrees as differences', async () => {
  expect(await found('0.04..0.09 mm', 'inch-gauge')).toHaveLength(1);
  expect(await found('0.04..0.12 mm', 'inch-gauge')).toEqual([]);
  expect(await found('100 ± 5 °C', 'thermometer')).toEqual([]);
  expect(await found('100 ± 3 °C', 'thermometer')).toHaveLength(1);
});

test('the limit of the family counts where the instruction has none, by build', async () => {
  const limit = 'limits:\n  end-play: { name: end play, accept: { k1-a: 0.04..0.09 mm, k1-b: 0.04..0.20 mm } }';
  const step = withStores(withFamily(inStep('- measure: end-play\n  with: coarse-gauge'), limit), TOOLS);
  expect((await reported(step, RULE))[0]).toMatch(/take dial-gauge \(K1-A\)$/);
});

describe('the range', () => {
  test('has to hold the whole tolerance', async () => {
    expect(await found('24.9..25.1 mm', 'micrometer-25')).toEqual([
      'micrometer-25: The outside micrometer 0–25 mm measures 0..25 mm, which does not cover the end play (24.9..25.1 mm); the stores have none like it that suits',
    ]);
    expect((await found('30.00..30.02 mm', 'micrometer-25'))[0]).toMatch(/take micrometer-50$/);
  });

  test('of a gauge that is set on a reference has to hold what it shows', async () => {
    expect(await found('42.18..42.24 mm', 'dial-gauge')).toEqual([]);
    expect(await found('30..45 mm', 'dial-gauge')).toHaveLength(1);
  });
});

describe('nothing is reported', () => {
  test.each([
    ['for a value that is only written down', 'record-only', 'coarse-gauge'],
    ['for a single value', '0.05 mm', 'coarse-gauge'],
    ['beside a gauge that suits', '0.04..0.09 mm', '[coarse-gauge, dial-gauge]'],
    ['beside a gauge that nothing is known of', '0.04..0.09 mm', '[coarse-gauge, plain-gauge]'],
    ['for what holds or feeds', '0.4..0.5 bar', '[air-supply, v-blocks]'],
    ['for a gauge of another dimension', '0.04..0.09 mm', 'pressure-gauge'],
  ])('%s', async (_, accept, tool) => {
    expect(await found(accept, tool)).toEqual([]);
  });

  test('for a source whose range ends elsewhere', async () => {
    expect(await found('1.4..2.6 bar', '[pressure-gauge, air-supply]')).toEqual([]);
  });
});

test('the working shows the share', async () => {
  const { findings } = await checkExample(example('0.04..0.09 mm', 'coarse-gauge'));
  const [working] = findings.find((finding) => finding.rule === RULE)?.working() ?? [];
  const shown = working?.steps.map(({ symbol, value }) => `${symbol} ${value.toPrecision(2)}`);
  expect(shown).toEqual(['d 0.010', 'T 0.050', 'd/T 0.20', 'd₁₀ 0.0050', 'd₆ 0.0083']);
});
