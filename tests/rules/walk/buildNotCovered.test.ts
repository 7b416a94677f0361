import { expect, test } from 'vitest';
import { shown, work, workOfSteps, workUnder } from './shown';

const RULE = 'build-not-covered';
const COVERS = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
const left = (place: string, what: string, builds: string): string =>
  `${place}: "${what}" is written for each of some builds, and these are left out; add one for them, or say that the family does not have it there (${builds})`;
const measure = (when: string): string => `- measure: end-play\n  with: dial-gauge\n  when: ${when}`;
const PLAIN = '{ all: [k1-a], none: [big-wheel] }';

test('the first of the alternatives is underlined, with the builds that have none', async () => {
  expect(await shown(workUnder(COVERS, `${measure(PLAIN)}\n${measure('k1-b')}`), RULE)).toEqual([
    left('1 end-play', 'measure: end-play', 'K1-A with the big wheel'),
  ]);
  const three = `${measure(PLAIN)}\n${measure('k1-b')}\n${measure('big-wheel')}`;
  expect(await shown(workUnder(COVERS, three), RULE)).toEqual([]);
});

test('one alone is no alternative, nor are two that meet', async () => {
  expect(await shown(workUnder(COVERS, measure('k1-b')), RULE)).toEqual([]);
  expect(await shown(workUnder(COVERS, `${measure('k1-b')}\n${measure('[k1-b, big-wheel]')}`), RULE)).toEqual([]);
});

test('what is written for every build beside them leaves none out', async () => {
  const always = '- measure: end-play\n  with: dial-gauge';
  expect(await shown(workUnder(COVERS, `${always}\n${measure(PLAIN)}\n${measure('k1-b')}`), RULE)).toEqual([]);
});

test('a build that does not have the part, or a limit, needs nothing of it', async () => {
  const limit = 'limits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, unless: big-wheel }';
  expect(await shown(workUnder(COVERS, `${measure(PLAIN)}\n${measure('k1-b')}`, limit), RULE)).toEqual([]);
});

test('what the walk finds missing is told there', async () => {
  const put = (when: string): string => `- install: cover\n  when: ${when}`;
  const steps = `- remove: [cover-screw, cover]\n${put(PLAIN)}\n${put('k1-b')}`;
  expect(await shown(workUnder(COVERS, steps), RULE)).toEqual([]);
  expect((await shown(workUnder(COVERS, steps), 'left-off')).join()).toContain(
    'The cover is not in place when the work is over; fit it before the end (K1-A with the big wheel)',
  );
});

test('used again and renewed are no builds to leave out', async () => {
  const steps = `- inspect: wheel\n  if-not: { replace: wheel }\n${measure('wheel=renewed')}\n${measure('k1-x')}`;
  expect(await shown(work(steps), RULE)).toEqual([]);
});

test('a build for which no step holds is told at what is covered', async () => {
  const steps = '- step: open\n  title: Open\n  when: k1-a\n  do:\n    - remove: cover-screw';
  expect((await shown(workOfSteps(steps), RULE)).map((one) => one.replace(/^\S+ /, ''))).toEqual([
    'OP-9: No step holds for some of the builds that the procedure covers; narrow "covers", or add their steps (K1-B)',
  ]);
  const typed = steps.replace('- remove: cover-screw', '').trimEnd();
  expect(await shown(workOfSteps(typed), RULE)).toEqual([]);
});
