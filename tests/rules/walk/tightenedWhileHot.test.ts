import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'tightened-while-hot';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const HEAT = '- heat: wheel\n  until: 110 ± 5 °C';
const FIT = '- install: [wheel, cap-nut]';
const hot = (place: string, builds = ''): string =>
  `${place} cap-nut: The cap nut is tightened while the wheel is hot; let it cool first, with a cool or wait instruction${builds}`;
const HEATED = '-> 2 wheel: The wheel is heated here';

test('the tightening is underlined, the heating pointed to, and both passes told once', async () => {
  const passes = '- tighten: cap-nut\n  torque: 2 N·m\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m';
  expect(await shown(work(`${OPEN}\n${HEAT}\n${FIT}\n${passes}`), RULE)).toEqual([hot('5'), HEATED]);
});

test.each(['cool: wheel\n  until: ≤ 30 °C', 'wait: 30 min', 'wait: cure'])('%s lets it pass', async (cooling) => {
  expect(await shown(work(`${OPEN}\n${HEAT}\n${FIT}\n- ${cooling}\n- tighten: cap-nut`), RULE)).toEqual([]);
});

test('what cools before it is heated is hot', async () => {
  expect(await shown(work(`${OPEN}\n- wait: 30 min\n${HEAT}\n${FIT}\n- tighten: cap-nut`), RULE)).toEqual([
    hot('6'),
    HEATED.replace('2', '3'),
  ]);
});

test('another fastener, and running it up by hand, are let pass', async () => {
  expect(await shown(work(`- remove: [cover-screw, cover]\n${HEAT}\n- tighten: cover-screw`), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n${HEAT}\n${FIT}`), RULE)).toEqual([]);
});

test('a fastener that is hot itself', async () => {
  const steps = '- remove: [cover-screw, cover]\n- heat: cap-nut\n- loosen: cap-nut\n- tighten: cap-nut';
  expect((await shown(work(steps), RULE))[0]).toBe(
    '4 cap-nut: The cap nut is tightened while it is hot; let it cool first, with a cool or wait instruction',
  );
});

test('the builds on which it is heated, or not cooled', async () => {
  const heated = `${OPEN}\n${HEAT}\n  when: k1-b\n${FIT}\n- tighten: cap-nut`;
  expect(await shown(work(heated), RULE)).toEqual([hot('6', ' (K1-B)'), HEATED]);
  const cooled = `${OPEN}\n${HEAT}\n${FIT}\n- cool: wheel\n  when: k1-b\n- tighten: cap-nut`;
  expect(await shown(work(cooled), RULE)).toEqual([hot('7', ' (K1-A)'), HEATED]);
});

test('a cooling that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n${HEAT}\n${FIT}\n- cool: whee\n- tighten: cap-nut`), RULE)).toEqual([]);
});
