import { expect, test } from 'vitest';
import { inHead } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const USE = '- loosen: cap-nut\n  with: socket-8';

test.each([
  ['tools: [socket-8, dial-gauge]', 'tools: [socket-8]\n'],
  ['tools: [dial-gauge, socket-8]', 'tools: [socket-8]\n'],
  ['tools:\n  - dial-gauge # for the play\n  - socket-8', 'tools:\n  - socket-8\n'],
  ['tools:\n  - socket-8\n  - dial-gauge', 'tools:\n  - socket-8\nphases:'],
])('the fix takes the tool off %s', async (list, wanted) => {
  const mended = await fixed(inHead(list, USE), 'tool-unused');
  expect(mended.files[mended.at]).toContain(wanted);
  expect(mended.files[mended.at]).not.toContain('dial-gauge');
  expect(await reported(mended, 'tool-unused')).toEqual([]);
});

test('the key goes with its last entry', async () => {
  for (const list of ['tools: [dial-gauge]', 'tools: dial-gauge', 'tools:\n  - dial-gauge']) {
    const mended = await fixed(inHead(list, '- remove: cover'), 'tool-unused');
    expect(mended.files[mended.at]).not.toContain('tools');
  }
});

test('a tool that counter-holds, is mentioned or is named in words is not unused', async () => {
  for (const use of [
    '- loosen: cap-nut\n  hold: { with: dial-gauge }',
    '- Set the <dial-gauge> on the nose.',
    '- Set the dial gauge on the nose.',
  ]) {
    expect(await reported(inHead('tools: [dial-gauge]', use), 'tool-unused')).toEqual([]);
  }
  expect(
    await reported(inHead('tools: [dial-gauge]', '- remove: cover\n  note: <dial-gauge>'), 'tool-unused'),
  ).toHaveLength(1);
});

test('an unused consumable is reported as one', async () => {
  expect(await reported(inHead('consumables: [degreaser]', '- remove: cover'), 'consumable-unused')).toEqual([
    'degreaser: The degreaser is listed but no instruction uses it; take it off the list or name it where it is used',
  ]);
});

test.each([
  ['an id that no stores have', '- measure: end-play\n  with: dial-'],
  ['a key without a value', '- measure: end-play\n  with:'],
  ['a misspelt key', '- measure: end-play\n  wiht: dial-gauge'],
  ['a tool under the key of consumables', '- measure: end-play\n  using: dial-gauge'],
  ['a mention that names nothing', '- Use the <dial-gaug>.'],
])('nothing is held to be unused beside %s', async (_, step) => {
  expect(await reported(inHead('tools: [socket-8, dial-gauge]', `${USE}\n${step}`), 'tool-unused')).toEqual([]);
});
