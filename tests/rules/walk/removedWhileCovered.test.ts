import { expect, test } from 'vitest';
import { shown, work, workOfSteps } from './shown';

const RULE = 'removed-while-covered';
const covered = (line: number, part: string, id: string, builds = ''): string =>
  `${line} ${id}: The ${part} is taken off while it is behind the cover; take off the cover first${builds}`;

test('one cover that stays on is told at the first part behind it', async () => {
  const steps = '- remove: cover-screw\n- remove: [cap-nut, wheel]\n- remove: cover-seal';
  expect(await shown(work(steps), RULE)).toEqual([covered(2, 'cap nut', 'cap-nut')]);
});

test('where the cover went on again is pointed to', async () => {
  const steps = '- remove: [cover-screw, cover, cap-nut]\n- install: [cap-nut, cover]\n- remove: cap-nut';
  expect(await shown(work(steps), RULE)).toEqual([
    covered(3, 'cap nut', 'cap-nut'),
    '-> 2 cover: The cover is fitted here',
  ]);
});

test('the builds on which the cover stays on', async () => {
  const steps = '- remove: [cover-screw, cover]\n  when: k1-a\n- remove: cap-nut';
  expect(await shown(work(steps), RULE)).toEqual([covered(3, 'cap nut', 'cap-nut', ' (K1-B)')]);
});

test('a step that may be left out leaves the cover on, on that way', async () => {
  const steps =
    '- step: open\n  title: Open the unit\n  optional: true\n  do:\n    - remove: [cover-screw, cover]\n- step: nut\n  title: Take off the nut\n  do:\n    - remove: cap-nut';
  expect(await shown(workOfSteps(steps), RULE)).toEqual([
    covered(5, 'cap nut', 'cap-nut', ' (when step "Open the unit" is left out)'),
  ]);
});

test('what lies on the bench is behind nothing, but what rides on a part can keep it in', async () => {
  const ring = 'parts:\n  ring: { name: ring, sits-on: wheel, behind: [cover] }';
  const bench = '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: cover\n- remove: ring';
  expect(await shown(work(bench, ring), RULE)).toEqual([]);
  const guard =
    'parts:\n  guard: { name: guard, sits-on: wheel }\n  wheel: { name: wheel, sits-on: core, behind: [guard] }';
  expect(await shown(work('- remove: [cover-screw, cover]\n- remove: wheel', guard), RULE)).toEqual([
    '2 wheel: The wheel is taken off while it is behind the guard; take off the guard first',
  ]);
});

test('a removal that is half typed may have been that of the cover', async () => {
  expect(await shown(work('- remove: cover-screw\n- remove: cov\n- remove: cap-nut'), RULE)).toEqual([]);
});
