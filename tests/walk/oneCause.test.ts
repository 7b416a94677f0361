import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../server/src/core/rules/examples';
import { checkExample } from '../support/checkText';

/** What the walk finds in the instructions of one step, as `rule: what is underlined (builds)`. */
async function walked(steps: string, family?: string): Promise<string[]> {
  const example = family === undefined ? inStep(steps) : withFamily(inStep(steps), family);
  const text = example.files[example.at] ?? '';
  const { findings } = await checkExample(example);
  const other = new Set(['check-missing', 'left-off', 'left-loose']);
  return findings
    .filter((finding) => WALK.has(finding.rule) && !other.has(finding.rule))
    .map(
      ({ rule, span, builds }) => `${rule}: ${text.slice(span.start, span.end)}${builds === '' ? '' : ` (${builds})`}`,
    );
}

const WALK = new Set([
  'removed-while-fastened',
  'removed-while-covered',
  'removed-twice',
  'fitted-while-blocked',
  'fitted-twice',
  'seal-not-renewed',
  'out-of-reach',
  'tightened-while-off',
  'left-off',
  'left-loose',
  'hand-not-identified',
]);

test('a missing removal is told once, where it first shows', async () => {
  const steps =
    '- remove: cover-screw\n- remove: cap-nut\n- remove: [wheel, cover-seal]\n- install: [wheel, cap-nut, cover-seal, cover]';
  expect(await walked(steps)).toEqual(['removed-while-covered: cap-nut']);
});

test('a half-typed removal keeps what follows silent', async () => {
  expect(await walked('- remove: covr-screw\n- remove: cover')).toEqual([]);
  expect(await walked('- remove:\n- remove: cover')).toEqual([]);
  expect(await walked('- remove:cover-screw\n- remove: cover')).toEqual([]);
  expect(await walked('- remove: cover-screw\n  when: k1-x\n- remove: cover')).toEqual([]);
});

test('a failure names the builds for which it holds', async () => {
  expect(await walked('- remove: cover-screw\n  when: k1-a\n- remove: cover')).toEqual([
    'removed-while-fastened: cover (K1-B)',
  ]);
});

test('what rides on a part goes with it, and can be worked on on the bench', async () => {
  const family = 'parts:\n  ring: { name: ring, sits-on: wheel, behind: [cap-nut] }';
  const steps = '- remove: [cover-screw, cover, cap-nut, wheel]\n- remove: ring\n- install: [ring, wheel, cap-nut]';
  expect(await walked(steps, family)).toEqual([]);
});

test('pieces are counted', async () => {
  const three =
    '- remove: cover-screw\n  count: 1\n- remove: cover-screw\n  count: 1\n- remove: cover-screw\n  count: 1';
  expect(await walked(three)).toEqual(['removed-twice: cover-screw']);
});

test('a trial fit may come off again without spending anything', async () => {
  expect(
    await walked(
      '- remove: [cover-screw, cover, cover-seal]\n- install: cover\n  trial: true\n- remove: cover\n- install: [cover-seal, cover]',
    ),
  ).toEqual([]);
});

test('what no one declares may be what is missing further down', async () => {
  const hand = `identify:\n  nut-hand: { name: hand, values: [left, right] }\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { nut-hand=left: left, nut-hand=right: right }, behind: [cover] }`;
  const steps = (outcome: string): string =>
    `- remove: [cover-screw, cover]\n- identify: ${outcome}\n- loosen: cap-nut`;
  expect(await walked(steps('nut-han'), hand)).toEqual([]);
  expect(await walked(steps('nut-hand'), hand)).toEqual([]);
  expect(await walked('- remove: [cover-screw, cover]\n- loosen: cap-nut', hand)).toEqual([
    'hand-not-identified: cap-nut',
  ]);
});
