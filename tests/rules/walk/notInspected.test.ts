import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'not-inspected';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const ASKED =
  'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [inspect] }';
const unseen = (line: number, builds = ''): string =>
  `${line} wheel: The wheel is fitted without having been inspected since it came off; inspect it before it is fitted${builds}`;
const REMOVED = '-> 1 wheel: The wheel is taken off here';

test('an inspection before it came off does not count', async () => {
  const steps = '- remove: [cover-screw, cover]\n- inspect: wheel\n- remove: [cap-nut, wheel]\n- install: wheel';
  expect(await shown(work(steps, ASKED), RULE)).toEqual([unseen(4), REMOVED.replace('1', '3')]);
  expect(await shown(work(`${OPEN}\n- inspect: wheel\n- install: wheel`, ASKED), RULE)).toEqual([]);
});

test('what was inspected and then sent out is to be looked at again', async () => {
  const sent = `${OPEN}\n- inspect: wheel\n- send: wheel\n- receive: wheel`;
  expect(await shown(work(`${sent}\n- install: wheel`, ASKED), RULE)).toEqual([unseen(5), REMOVED]);
  expect(await shown(work(`${sent}\n- inspect: wheel\n- press: wheel`, ASKED), RULE)).toEqual([]);
});

test('cleaning is no inspection, and takes none away', async () => {
  expect(await shown(work(`${OPEN}\n- clean: wheel\n- install: wheel`, ASKED), RULE)).toHaveLength(2);
  expect(await shown(work(`${OPEN}\n- inspect: wheel\n- clean: wheel\n- install: wheel`, ASKED), RULE)).toEqual([]);
});

test('the builds on which nobody looked', async () => {
  const steps = `${OPEN}\n- inspect: wheel\n  when: k1-a\n- install: wheel`;
  expect(await shown(work(steps, ASKED), RULE)).toEqual([unseen(4, ' (K1-B)'), REMOVED]);
});

test('a new part, a trial fit and work that starts with parts', async () => {
  expect(await shown(work(`${OPEN}\n- discard: wheel\n- install: wheel`, ASKED), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- install: wheel\n  trial: true`, ASKED), RULE)).toEqual([]);
  expect(await shown(workUnder('starts: parts', '- install: wheel', ASKED), RULE)).toEqual([unseen(1)]);
});

test('an inspection that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- inspect: whel\n- install: wheel`, ASKED), RULE)).toEqual([]);
});
