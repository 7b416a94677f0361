import { describe, expect, test } from 'vitest';
import { inStep, withFamily, withKit } from '../../../server/src/core/rules/examples';
import { mended, offered } from './mended';

const SINGLE_USE =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [clean, threadlock], renew: always }';

describe('what is used up is renewed', () => {
  test('a seal before its joint is closed', async () => {
    const steps = '- remove: [cover-screw, cover]\n- install: cover';
    expect(await mended(inStep(steps), 'seal-not-renewed', 'Renew the cover seal')).toBe(
      '- remove: [cover-screw, cover]\n- remove: cover-seal\n- install: cover-seal\n- install: cover',
    );
  });

  test('not where no kit holds one', async () => {
    const steps = '- remove: [cover-screw, cover]\n- install: cover';
    const kit = '- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: k1-a }';
    expect(await offered(withKit(inStep(steps), kit), 'seal-not-renewed')).toEqual([]);
  });

  test('a fastener that is used once, with what the family asks before it is fitted', async () => {
    const steps = '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10';
    const example = withKit(
      withFamily(inStep(steps), SINGLE_USE),
      '- { item: 10, part: cap-nut, number: PK-105, quantity: 1 }',
    );
    expect(await mended(example, 'single-use-refitted', 'Renew the cap nut')).toBe(
      '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- remove: cap-nut\n- apply: threadlocker\n  to: cap-nut\n- install: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10',
    );
  });
});

describe('what is left loose is tightened', () => {
  test('behind the instruction that loosened it, with the one wrench that reaches its torque', async () => {
    expect(
      await mended(
        inStep('- loosen: cover-screw\n  with: socket-10\n- say: Turn the cover.'),
        'left-loose',
        'Tighten the cover screw',
      ),
    ).toBe(
      '- loosen: cover-screw\n  with: socket-10\n- tighten: cover-screw\n  with: [torque-wrench-10, socket-10]\n- say: Turn the cover.',
    );
  });

  test('behind what it locks', async () => {
    const rod =
      'parts:\n  rod: { name: rod, sits-on: core, locked-by: [lock-nut] }\n  lock-nut: { name: lock nut, kind: nut, sits-on: core, thread: M6×1, hand: right, torque: 4 ± 0.4 N·m }';
    const steps = '- loosen: lock-nut\n  with: socket-10\n- adjust: rod\n  until: it just touches';
    const done = `${steps}\n- tighten: lock-nut\n  with: [torque-wrench-10, socket-10]`;
    expect(await mended(withFamily(inStep(steps), rod), 'left-loose')).toBe(done);
    expect(await mended(withFamily(inStep(steps), rod), 'adjustment-not-locked')).toBe(done);
  });

  test('with what is tightened alike elsewhere, and held alike', async () => {
    const held =
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], hold: shaft hexagon }';
    const steps =
      '- remove: [cover-screw, cover]\n- loosen: cap-nut\n  with: socket-8\n  hold: { at: shaft hexagon, with: socket-10 }\n- say: Look.';
    expect(await mended(withFamily(inStep(steps), held), 'left-loose', 'Tighten the cap nut')).toContain(
      '- tighten: cap-nut\n  with: [torque-wrench-10, socket-8]\n  hold: { at: shaft hexagon, with: socket-10 }',
    );
    const unheld = steps.replace('\n  hold: { at: shaft hexagon, with: socket-10 }', '');
    expect(await offered(withFamily(inStep(unheld), held), 'left-loose')).toEqual([]);
  });

  test('not where no wrench that is listed reaches its torque', async () => {
    const strong =
      'parts:\n  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, thread: M6×1, hand: right, torque: 90 ± 1 N·m }';
    expect(await offered(withFamily(inStep('- loosen: cover-screw\n  with: socket-10'), strong), 'left-loose')).toEqual(
      [],
    );
  });

  test('a ring is seated', async () => {
    const ring =
      'parts:\n  cover: { name: cover, sits-on: core, fastened-by: [ring] }\n  ring: { name: snap ring, kind: retaining-ring, sits-on: core }';
    expect(
      await mended(withFamily(inStep('- loosen: ring\n- say: Look.'), ring), 'left-loose', 'Seat the snap ring'),
    ).toBe('- loosen: ring\n- seat: ring\n- say: Look.');
  });

  test('passes that end below the torque of the family get it as their last', async () => {
    const steps =
      '- loosen: cover-screw\n- tighten: cover-screw\n  passes: [3 ± 0.5 N·m, 6 ± 0.5 N·m]\n  with: torque-wrench-10';
    expect(await mended(inStep(steps), 'left-loose', 'Add a last pass of 9 ± 1 N·m')).toContain(
      'passes: [3 ± 0.5 N·m, 6 ± 0.5 N·m, 9 ± 1 N·m]',
    );
  });
});

const ROTOR =
  'balance-groups:\n  rotor: { name: rotor, members: [wheel, core], grade: G 6.3 }\nparts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }';
const FIT =
  '- remove: [cover-screw, cover]\n- remove: cap-nut\n  with: socket-8\n- remove: wheel\n- install: wheel\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut';
const TIGHTEN = '- tighten: cap-nut\n  with: [torque-wrench-10, socket-8]';

test('threadlocker cures before the group is spun', async () => {
  expect(await mended(withFamily(inStep(`${FIT}\n${TIGHTEN}\n- balance: rotor`), ROTOR), 'spun-too-soon')).toBe(
    `${FIT}\n${TIGHTEN}\n- wait: cure\n  of: threadlocker\n- balance: rotor`,
  );
});

test('a fastener is tightened where it was fitted, before the group is spun', async () => {
  const steps = `${FIT}\n- wait: cure\n  of: threadlocker\n- balance: rotor`;
  expect(await mended(withFamily(inStep(steps), ROTOR), 'spun-too-soon')).toBe(
    `${FIT}\n${TIGHTEN}\n- wait: cure\n  of: threadlocker\n- balance: rotor`,
  );
});

test('a hot part cools before its fastener is tightened, to a temperature that the writer knows', async () => {
  const steps =
    '- remove: [cover-screw, cover]\n- heat: wheel\n  until: 110 ± 5 °C\n- tighten: cap-nut\n  with: torque-wrench-10';
  expect(await mended(inStep(steps), 'tightened-while-hot', 'Let the wheel cool first')).toContain(
    '- cool: wheel\n- tighten: cap-nut',
  );
});
