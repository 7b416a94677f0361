import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'not-lubricated';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const SEAL =
  'parts:\n  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, seals: cover, behind: [cover], renew: always, before-fitting: [lubricate] }';
const OIL = '- apply: oil\n  to: cover-seal';
const never = (line: number, builds = ''): string =>
  `${line} cover-seal: The cover seal is fitted without having been lubricated since it came off; put oil, grease or paste on it before it is fitted${builds}`;
const dry = (line: number): string =>
  `${line} cover-seal: The cover seal is fitted dry: nothing lubricates it after it was cleaned; put oil, grease or paste on it before it is fitted`;

test('a new seal comes dry out of its bag', async () => {
  expect(await shown(work(`${OPEN}\n- install: [cover-seal, cover]`, SEAL), RULE)).toEqual([
    never(2),
    '-> 1 cover-seal: The cover seal is taken off here',
  ]);
  expect(await shown(work(`${OPEN}\n${OIL}\n- install: [cover-seal, cover]`, SEAL), RULE)).toEqual([]);
});

test('the last cleaning made it dry', async () => {
  const steps = `${OPEN}\n${OIL}\n- clean: cover-seal\n  by: wipe\n- install: cover-seal`;
  expect(await shown(work(steps, SEAL), RULE)).toEqual([dry(6), '-> 4 cover-seal: The cover seal is cleaned here']);
  expect(await shown(work(`${OPEN}\n- clean: cover-seal\n${OIL}\n- install: cover-seal`, SEAL), RULE)).toEqual([]);
});

test('what is no lubricant does not count, wherever it goes on', async () => {
  const steps = `${OPEN}\n- apply: threadlocker\n  to: cover-seal\n- install: cover-seal`;
  expect((await shown(work(steps, SEAL), RULE))[0]).toBe(never(4));
  expect(await shown(work(`${OPEN}\n${OIL}\n  at: groove side\n- install: cover-seal`, SEAL), RULE)).toEqual([]);
});

test('the builds on which it is left dry', async () => {
  const steps = `${OPEN}\n${OIL}\n  unless: k1-b\n- install: cover-seal`;
  expect((await shown(work(steps, SEAL), RULE))[0]).toBe(never(5, ' (K1-B)'));
});

test('a fit on trial may be dry, the fit for good may not', async () => {
  const trial = `${OPEN}\n- install: cover-seal\n  trial: true\n- remove: cover-seal`;
  expect(await shown(work(trial, SEAL), RULE)).toEqual([]);
  expect((await shown(work(`${trial}\n- install: cover-seal`, SEAL), RULE))[0]).toBe(never(5));
});

test('an application that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- apply: oil\n  to: cover-sea\n- install: cover-seal`, SEAL), RULE)).toEqual([]);
});
