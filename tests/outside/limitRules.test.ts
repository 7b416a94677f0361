import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { type Example, inStep, wholeDocument, withFiles } from '../../server/src/core/rules/examples';
import type { Working } from '../../server/src/core/workings/working';
import { checkExample, reported } from '../support/checkText';

/** Published worked examples as little documents, run through the whole check. */
function family(...blocks: readonly string[]): string {
  return `witnessmark: 1
family: worked-example
name: Worked example
variants:
  only: { name: the only one }
base: core
${blocks.join('\n')}
`;
}

const CORE = 'parts:\n  core: { name: core }';

function ofFamily(...blocks: readonly string[]): Example {
  return wholeDocument(EXAMPLE_PATHS.family, family(...blocks));
}

function ofStep(steps: string, ...blocks: readonly string[]): Example {
  return withFiles(inStep(steps), { [EXAMPLE_PATHS.family]: family(...blocks) });
}

async function workingOf(example: Example, rule: string): Promise<Working> {
  const { findings } = await checkExample(example);
  const [working] = findings.find((finding) => finding.rule === rule)?.working() ?? [];
  if (working === undefined) throw new Error(`No finding of ${rule}; there are ${findings.map((one) => one.rule)}`);
  return working;
}

/**
 * A tutorial on tolerance stack-ups: parts of 2.000 ± .005, 1.500 ± .003 and .500 ± .002 in a housing of 4.020 ± .005
 * inches; gap .020, worst case .005 to .035, root sum square .012 to .028.
 */
describe('three parts in a housing, in inches', () => {
  const stack = (accept: string, from: string): Example =>
    ofFamily(
      CORE,
      'dimensions:\n  housing: 4.020 ± 0.005 in\n  first: 2.000 ± 0.005 in\n  second: 1.500 ± 0.003 in\n  third: 0.500 ± 0.002 in',
      `limits:\n  gap: { name: gap, accept: ${accept}, from: ${from} }`,
    );

  test.each(['[+housing, -first, -second, -third]', '[-third, -first, housing, -second]'])('%s', async (from) => {
    const [message] = await reported(stack('0.030..0.040 in', from), 'limit-disagrees-with-stack');
    expect(message).toContain('comes to 0.02 in (0.508 mm)');
    expect(message).toContain('worst case 0.005 to 0.035 in');
    expect(message).toContain('root sum square 0.0121 to 0.0279 in');
  });

  test('the printed ends of the two sums decide', async () => {
    const from = '[+housing, -first, -second, -third]';
    const rule = 'limit-narrower-than-stack';
    expect(await reported(stack('0.012..0.028 in', from), rule)).toEqual([]);
    expect(await reported(stack('0.013..0.027 in', from), rule)).toHaveLength(1);
    expect(await reported(stack('≥ 0.020 in', from), rule)).toHaveLength(1);
    expect(await reported(stack('≥ 0.021 in', from), 'limit-disagrees-with-stack')).toHaveLength(1);
  });
});

/**
 * Data of a published worked example: 40.00 ± .10 − 25.00 ± .05 − 2.00 ± .03 − 10.00 ± .05 mm; 3.00, worst ± 0.23, root
 * sum square ± 0.126 by hand. One of its dimensions also in inches.
 */
describe('a loop of four dimensions', () => {
  test.each(['25.00 ± 0.05 mm', '0.98425 ± 0.00197 in'])('with %s', async (second) => {
    const stack = (accept: string): Example =>
      ofFamily(
        CORE,
        `dimensions:\n  outer: 40.00 ± 0.10 mm\n  second: ${second}\n  third: 2.00 ± 0.03 mm\n  fourth: 10.00 ± 0.05 mm`,
        `limits:\n  gap: { name: gap, accept: ${accept}, from: [-second, +outer, -third, -fourth] }`,
      );
    const [message] = await reported(stack('3.1..3.3 mm'), 'limit-disagrees-with-stack');
    expect(message).toContain(
      'comes to 3 mm from its dimensions (worst case 2.77 to 3.23 mm, root sum square 2.874 to 3.126 mm)',
    );
    expect(await reported(stack('2.87..3.13 mm'), 'limit-narrower-than-stack')).toEqual([]);
    expect(await reported(stack('2.88..3.12 mm'), 'limit-narrower-than-stack')).toHaveLength(1);
  });
});

/**
 * Textbook problems: an aluminium ring of 438 mm over a tube of 440 mm with 0.5 mm to spare, 23 · 10⁻⁶/K (by hand
 * 248.2 K); a ring of 49.950 ± 0.005 mm on a shaft of 50.000 ± 0.005 mm, 14 · 10⁻⁶/K (85.8 K in the tightest case). Both
 * are above surroundings of 20 °C: 268.2 and 105.8 °C.
 */
describe('rings that are heated to go over a shaft', () => {
  const ring = (until: string, bore: string, shaft: string, alpha: string, clearance = ''): Example =>
    ofStep(
      `- remove: ring\n- heat: ring\n  until: ${until}\n- install: ring`,
      `parts:\n  core: { name: core }\n  ring: { name: ring, sits-on: core, expansion: ${alpha}, fit: { with: core, bore: ring-bore, shaft: seat${clearance} } }`,
      `dimensions:\n  ring-bore: ${bore}\n  seat: ${shaft}`,
    );

  test('an aluminium ring of 438 mm', async () => {
    const at = (until: string) => ring(until, '438 mm', '440 mm', '23', ', clearance: 0.5 mm');
    expect(await reported(at('269 °C'), 'heat-too-low')).toEqual([]);
    const [message] = await reported(at('267 °C'), 'heat-too-low');
    expect(message).toContain('needs 269 °C to go together: up to 2 mm of interference and 0.5 mm of clearance');
    const { steps } = await workingOf(at('267 °C'), 'heat-too-low');
    expect(steps.find(({ symbol }) => symbol === 'ΔT')?.value).toBeCloseTo(248.2, 1);
  });

  test('a ring with tolerances', async () => {
    const at = (until: string) => ring(until, '49.950 ± 0.005 mm', '50.000 ± 0.005 mm', '14');
    expect(await reported(at('111 ± 5 °C'), 'heat-too-low')).toEqual([]);
    expect(await reported(at('110 ± 5 °C'), 'heat-too-low')).toHaveLength(1);
    const { steps } = await workingOf(at('100 °C'), 'heat-too-low');
    expect(steps.find(({ symbol }) => symbol === 'ΔT')?.value).toBeCloseTo(85.8, 1);
  });
});

/** A balancing handbook's worked example of ISO 21940-11: 2 kg at 10 000 min⁻¹ in G 6.3, 12 g·mm (12.03 by the formula). */
describe('a rotor of 2 kg in G 6.3', () => {
  const rotor = (permissible: string): Example =>
    ofFamily(
      'max-speed: 10000 rpm',
      'parts:\n  core: { name: core }\n  rotor: { name: rotor, sits-on: core }\n  wheel: { name: wheel, sits-on: core }',
      `balance-groups:\n  set: { name: rotor set, members: [rotor, wheel], grade: G 6.3, mass: 2 kg, planes: 2, permissible: ${permissible} }`,
    );

  test.each(['12 g·mm', '6 g·mm', '0.0167 oz·in'])('%s is within it', async (permissible) => {
    expect(await reported(rotor(permissible), 'unbalance-above-grade')).toEqual([]);
  });

  test('16 g·mm is above it, with 6 g·mm in each plane', async () => {
    const [message] = await reported(rotor('16 g·mm'), 'unbalance-above-grade');
    expect(message).toContain('G 6.3 allows 12 g·mm');
    expect(message).toContain('6.02 g·mm (0.237 g·in) in each of 2 planes');
    const { steps } = await workingOf(rotor('16 g·mm'), 'unbalance-above-grade');
    expect(steps.at(-1)?.value).toBeCloseTo(12.03, 2);
  });
});

/**
 * A published gland table gives for a section of 1.78 ± 0.08 mm: radial static glands 1.27 to 1.40 mm, squeeze 18 to
 * 32 %; dynamic 1.40 to 1.45 mm, 15 to 25 %. A seal maker's design guide
 * recommends 10 to 40 % where nothing moves and at most 30 % where it does.
 */
describe('an O-ring of 1.78 mm', () => {
  const ring = (depth: string, motion: string): Example =>
    ofFamily(
      `parts:\n  core: { name: core }\n  ring: { name: ring, kind: o-ring, sits-on: core, section: 1.78 ± 0.08 mm, groove: { depth: ${depth}, width: 2.41 mm, motion: ${motion} } }`,
    );

  test('is right in the glands that the guide gives for it', async () => {
    for (const example of [ring('1.27..1.40 mm', 'static'), ring('1.40..1.45 mm', 'dynamic')]) {
      expect(await reported(example, 'squeeze-out-of-band')).toEqual([]);
    }
  });

  test('is squeezed by 18 to 32 % in the static gland, too much where it moves', async () => {
    const [message] = await reported(ring('1.27..1.40 mm', 'dynamic'), 'squeeze-out-of-band');
    expect(message).toContain('squeezed by 18 % to 32 %');
  });
});

/** A tutorial on ISO 286 with examples at 50 mm: 50 H7/p6 has 1 to 42 µm of interference. */
test('a fit of 50 H7/p6 stated as such, and as other than it is', async () => {
  const hub = (interference: string): Example =>
    ofFamily(
      `parts:\n  core: { name: core }\n  hub: { name: hub, sits-on: core, fit: { with: core, class: 50 H7/p6, interference: ${interference} } }`,
    );
  expect(await reported(hub('1..42 µm'), 'fit-disagrees')).toEqual([]);
  const [message] = await reported(hub('10..42 µm'), 'fit-disagrees');
  expect(message).toContain('its bore and shaft give 0.001 to 0.042 mm');
});
