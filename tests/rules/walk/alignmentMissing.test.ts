import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'alignment-missing';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut]';
const SHAFT = 'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }';
const MARK = '- mark: wheel\n  across: shaft';
const ALIGN = '- align: wheel\n  to: shaft';
const askew = (place: string, builds = ''): string =>
  `${place}: The wheel is fitted here and never aligned with its mark; add an align instruction${builds}`;

test('it stands at the last fitting, on the way on which both are used again', async () => {
  const steps = `${OPEN}\n${MARK}\n- remove: wheel\n- install: wheel\n- remove: wheel\n- install: [core, wheel]`;
  expect(await shown(work(steps, SHAFT), RULE)).toEqual([
    askew('7 wheel', ' (when the wheel is re-used and the shaft is re-used)'),
  ]);
});

test('aligned before it comes off once more does not count', async () => {
  const family = `${SHAFT.replace(', renew: on-condition', '')}\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }`;
  const once = `${OPEN}\n${MARK}\n- remove: wheel\n- install: wheel\n${ALIGN}`;
  expect(await shown(work(once, family), RULE)).toEqual([]);
  expect(await shown(work(`${once}\n- remove: wheel\n- install: wheel`, family), RULE)).toEqual([askew('9 wheel')]);
  const other = once.replace('align: wheel\n  to: shaft', 'align: shaft\n  to: wheel');
  expect(await shown(work(other, family), RULE)).toEqual([]);
});

test('a part that was marked and stayed, is left off, or was thrown away', async () => {
  expect(await shown(work(`${OPEN}\n${MARK}`, SHAFT), RULE)).toEqual([]);
  expect(await shown(workUnder('ends: parts', `${OPEN}\n${MARK}\n- remove: wheel`, SHAFT), RULE)).toEqual([]);
  const thrown = `${OPEN}\n${MARK}\n- remove: wheel\n- discard: wheel\n- install: wheel`;
  expect(await shown(work(thrown, SHAFT), RULE)).toEqual([]);
});

test('the builds on which it is not aligned', async () => {
  const family = `${SHAFT.replace(', renew: on-condition', '')}\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }`;
  const steps = `${OPEN}\n${MARK}\n- remove: wheel\n- install: wheel\n${ALIGN}\n  when: k1-a`;
  expect(await shown(work(steps, family), RULE)).toEqual([askew('5 wheel', ' (K1-B)')]);
});

test('while something is half typed, it may be the alignment', async () => {
  const steps = `${OPEN}\n${MARK}\n- remove: wheel\n- install: wheel\n- align: whee\n  to: shaft`;
  expect(await shown(work(steps, SHAFT), RULE)).toEqual([]);
});
