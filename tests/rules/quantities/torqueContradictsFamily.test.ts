import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-contradicts-family';

function step(torque: string) {
  return inStep(`- tighten: cap-nut\n  torque: ${torque}`);
}

/** A step with a nut of which the family states the given keys. */
function against(keys: string, text: string) {
  const part = `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, ${keys} }`;
  return withFamily(inStep(`- tighten: cap-nut\n  ${text}`), part);
}

test('another torque is underlined, points to the family, and can be made the one of the family', async () => {
  const example = step('6.4 ± 0.3 N·m');
  expect(await reported(example, RULE)).toEqual([
    '6.4 ± 0.3 N·m: The torque 6.4 ± 0.3 N·m of the cap nut contradicts the family, which states 4.6 ± 0.3 N·m; correct whichever is wrong',
  ]);
  const { findings } = await checkExample(example);
  const finding = findings.find((one) => one.rule === RULE);
  expect(finding?.related[0]?.uri).toMatch(/pellow-k1\.family\.yaml$/);
  expect(finding?.about).toEqual(['cap-nut']);
  const mended = await fixed(example, RULE, 'Write 4.6 ± 0.3 N·m, as the family states');
  expect(mended.files[mended.at]).toContain('torque: 4.6 ± 0.3 N·m\n');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('the same torque in another unit, or with a second value, does not contradict', async () => {
  for (const torque of ['41 ± 3 lbf·in', '4.6 ± 0.3 N·m (41 ± 3 lbf·in)', '4.3..4.9 N·m', '4.6 N·m', '460 ± 30 N·cm']) {
    expect(await reported(step(torque), RULE)).toEqual([]);
  }
});

test('a wider tolerance contradicts', async () => {
  expect(await reported(step('4.6 ± 0.6 N·m'), RULE)).toHaveLength(1);
});

test('a number that is right in another unit says so and gets it', async () => {
  const example = step('41 ± 3 N·m');
  expect((await reported(example, RULE))[0]).toContain('the number would be right in lbf·in');
  expect((await offered(example, RULE))[0]).toBe('Write lbf·in');
  const mended = await fixed(example, RULE);
  expect(await reported(mended, RULE)).toEqual([]);
});

test('by build, only the builds that disagree are named', async () => {
  const family = 'torque: { k1-a: 4.6 N·m, k1-b: 5.2 N·m }';
  const found = await reported(against(family, 'torque: 4.6 N·m'), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/states 5\.2 N·m; correct whichever is wrong \(K1-B\)$/);
  expect(await reported(against(family, 'torque: 4.6 N·m\n  when: k1-a'), RULE)).toEqual([]);
  expect(await reported(against(family, 'torque: { k1-a: 4.6 N·m, otherwise: 5.2 N·m }'), RULE)).toEqual([]);
  expect(await reported(against(family, 'torque: { k1-a: 5.2 N·m, k1-b: 4.6 N·m }'), RULE)).toHaveLength(2);
});

test('of passes the last one counts', async () => {
  const example = inStep('- tighten: cap-nut\n  passes: [2 N·m, 5.5 ± 0.3 N·m]');
  expect((await reported(example, RULE))[0]).toMatch(/^5\.5 ± 0\.3 N·m: /);
  expect(await reported(inStep('- tighten: cap-nut\n  passes: [2 N·m, 4.6 ± 0.3 N·m]'), RULE)).toEqual([]);
});

test('passes that stop below the family leave the nut loose, which is told instead', async () => {
  const short = inStep('- loosen: cap-nut\n- tighten: cap-nut\n  passes: [2 N·m, 3.2 ± 0.3 N·m]');
  expect(await reported(short, RULE)).toEqual([]);
  expect(await reported(short, 'left-loose')).toHaveLength(1);
  const slip = inStep('- tighten: cap-nut\n  passes: [20 lbf·in, 4.6 ± 0.3 lbf·ft]');
  expect(await reported(slip, RULE)).toHaveLength(1);
  const unit = inStep('- tighten: cap-nut\n  passes: [2 N·m, 4.6 ± 0.3 lbf·in]');
  expect((await reported(unit, RULE))[0]).toContain('the number would be right in N·m');
});

test('a lower torque before the full one in the same step is a pass', async () => {
  const low = '- tighten: cap-nut\n  torque: 2 N·m';
  const full = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m';
  expect(await reported(inStep(`${low}\n${full}`), RULE)).toEqual([]);
  expect(await reported(inStep(`${full}\n${low}`), RULE)).toHaveLength(1);
});

test('torque and angle are compared each by itself, however they are written', async () => {
  const keys = 'torque: 2 ± 0.2 N·m, angle: 110 ± 5°';
  expect(await reported(against(keys, 'torque: 2 ± 0.2 N·m + 110 ± 5°'), RULE)).toEqual([]);
  expect(await reported(against(keys, 'torque: 2 ± 0.2 N·m\n  angle: 110 ± 5°'), RULE)).toEqual([]);
  expect(await reported(against('torque: 2 N·m + 110°', 'torque: 2 N·m\n  angle: 110°'), RULE)).toEqual([]);
  const angle = against(keys, 'torque: 2 ± 0.2 N·m\n  angle: 90 ± 5°');
  expect(await reported(angle, RULE)).toEqual([
    '90 ± 5°: The angle 90° ± 5° of the cap nut contradicts the family, which states 110° ± 5°; correct whichever is wrong',
  ]);
  expect(await reported(await fixed(angle, RULE), RULE)).toEqual([]);
});

test('an angle that is left out is reported, unless it follows in the same step', async () => {
  const keys = 'torque: 2 ± 0.2 N·m, angle: 110 ± 5°';
  const alone = await reported(against(keys, 'torque: 2 ± 0.2 N·m'), RULE);
  expect(alone).toHaveLength(1);
  expect(alone[0]).toContain('leaves out the angle of 110° ± 5°');
  const followed = 'torque: 2 ± 0.2 N·m\n- tighten: cap-nut\n  angle: 110 ± 5°';
  expect(await reported(against(keys, followed), RULE)).toEqual([]);
});

test('a second value that disagrees with the first is not told twice', async () => {
  expect(await reported(step('4.6 ± 0.3 N·m (51 ± 3 lbf·in)'), RULE)).toEqual([]);
});

test('what cannot be read contradicts nothing', async () => {
  expect(await reported(step('45'), RULE)).toEqual([]);
  expect(await reported(inStep('- tighten: no-such-nut\n  torque: 45 N·m'), RULE)).toEqual([]);
});

test('own words are printed, so a torque in them must be the stated one', async () => {
  const says = (text: string, key = '') => inStep(`- tighten: cap-nut${key}\n  say: ${text}`);
  const example = says('Tighten the cap nut to 9 N·m.', '\n  torque: 4.6 ± 0.3 N·m');
  expect(await reported(example, RULE)).toEqual([
    '9 N·m: The sentence says 9 N·m, but 4.6 ± 0.3 N·m is stated for the cap nut; correct whichever is wrong',
  ]);
  expect(await reported(await fixed(example, RULE), RULE)).toEqual([]);
  expect(await reported(says('Tighten it to 9 N·m.'), RULE)).toHaveLength(1);
  expect(await reported(says('Tighten it to 41 lbf·in.'), RULE)).toEqual([]);
  expect(await reported(says('Tighten it to 2 N·m, then go on.', '\n  passes: [2 N·m, 4.6 ± 0.3 N·m]'), RULE)).toEqual(
    [],
  );
  expect(await reported(says('Now the cap nut. The cover screw is tightened to 9 N·m.'), RULE)).toEqual([]);
});

test('one value that is wrong on some builds becomes the values of the family', async () => {
  const example = against('torque: { k1-a: 4.6 N·m, k1-b: 5.2 N·m }', 'torque: 4.6 N·m');
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('torque: { k1-a: 4.6 N·m, k1-b: 5.2 N·m }\n');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('an angle that the family does not state is told, and one that cannot be read is not told to be left out', async () => {
  expect(await reported(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  angle: 60 ± 5°'), RULE)).toEqual([
    '60 ± 5°: The angle 60° ± 5° of the cap nut contradicts the family, which states 4.6 ± 0.3 N·m and no angle; correct whichever is wrong',
  ]);
  expect(await reported(step('4.6 ± 0.3 N·m + 60 ± 5°'), RULE)).toHaveLength(1);
  const family = 'torque: 2 ± 0.2 N·m, angle: 60 ± 5°';
  expect(await reported(against(family, 'torque: 2 ± 0.2 N·m\n  angle: 60'), RULE)).toEqual([]);
  expect(await reported(against(family, 'torque: 2 ± 0.2 N·m'), RULE)).toHaveLength(1);
});

test('where two values overlap, that alone is told', async () => {
  const { findings } = await checkExample(
    step('{ k1-a: 4.6 ± 0.3 N·m, big-wheel: 6.4 ± 0.3 N·m, k1-b: 4.6 ± 0.3 N·m }'),
  );
  expect(findings.map((finding) => finding.rule)).not.toContain(RULE);
});

test('a unit that nobody writes by a slip is not offered', async () => {
  expect(await offered(step('46 ± 3 N·m'), RULE)).not.toContain('Write dN·m');
});
