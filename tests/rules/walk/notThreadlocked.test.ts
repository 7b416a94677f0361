import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'not-threadlocked';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut]';
const NUT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [threadlock] }';
const LOCK = '- apply: threadlocker\n  to: cap-nut';
const never = (line: number, builds = ''): string =>
  `${line} cap-nut: The cap nut is fitted without having been given threadlocker since it came off; put threadlocker on it before it is fitted${builds}`;
const broken = (line: number, builds = ''): string =>
  `${line} cap-nut: The cap nut is tightened again after it was loosened, which broke its threadlocker; take it off and put new threadlocker on it${builds}`;

test('threadlocker that is never put on shows where the nut is fitted, and once', async () => {
  expect(await shown(work(`${OPEN}\n- install: cap-nut\n- tighten: cap-nut`, NUT), RULE)).toEqual([
    never(2),
    '-> 1 cap-nut: The cap nut is taken off here',
  ]);
  expect(await shown(work(`${OPEN}\n${LOCK}\n- install: cap-nut\n- tighten: cap-nut`, NUT), RULE)).toEqual([]);
});

test('a new nut needs it as well, and oil is none', async () => {
  expect((await shown(work(`${OPEN}\n- discard: cap-nut\n- install: cap-nut`, NUT), RULE))[0]).toBe(never(3));
  const oiled = `${OPEN}\n- apply: oil\n  to: cap-nut\n- install: cap-nut`;
  expect((await shown(work(oiled, NUT), RULE))[0]).toBe(never(4));
});

test('cleaning takes it off', async () => {
  expect(await shown(work(`${OPEN}\n${LOCK}\n- clean: cap-nut\n- install: cap-nut`, NUT), RULE)).toEqual([
    '5 cap-nut: The cap nut is fitted without threadlocker: nothing puts it on after the thread was cleaned; put threadlocker on it before it is fitted',
    '-> 4 cap-nut: The cap nut is cleaned here',
  ]);
});

test('turning a nut back breaks it, also where new threadlocker is put on in place', async () => {
  const open = '- remove: [cover-screw, cover]\n- loosen: cap-nut';
  expect(await shown(work(`${open}\n- tighten: cap-nut`, NUT), RULE)).toEqual([
    broken(3),
    '-> 2 cap-nut: The cap nut is loosened here',
  ]);
  expect((await shown(work(`${open}\n${LOCK}\n- tighten: cap-nut`, NUT), RULE))[0]).toBe(broken(5));
  const renewed = `${open}\n- remove: cap-nut\n${LOCK}\n- install: cap-nut\n- tighten: cap-nut`;
  expect(await shown(work(renewed, NUT), RULE)).toEqual([]);
});

test('the builds and the way on which it is missing', async () => {
  const build = `${OPEN}\n${LOCK}\n  when: k1-a\n- install: cap-nut`;
  expect((await shown(work(build, NUT), RULE))[0]).toBe(never(5, ' (K1-B)'));
  const way =
    '- remove: [cover-screw, cover]\n- check: free-turn\n  if-not:\n    do:\n      - loosen: cap-nut\n      - tighten: cap-nut';
  expect((await shown(work(way, NUT), RULE))[0]).toBe(broken(6, ' (when "The wheel turns freely" does not hold)'));
});

test('an application that is half typed may have been that of the nut', async () => {
  expect(await shown(work(`${OPEN}\n- apply: threadlocker\n  to: cap\n- install: cap-nut`, NUT), RULE)).toEqual([]);
});
