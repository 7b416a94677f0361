import { expect, test } from 'vitest';
import { inHead, inStep } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const USE = '- loosen: cap-nut\n  with: socket-9';

test('an unknown tool is reported where it is used, with the nearest ids', async () => {
  expect(await reported(inStep(USE), 'tool-unknown')).toEqual([
    'socket-9: No stores of this procedure have a tool socket-9; did you mean "socket-8" or "socket-10"?',
  ]);
  expect(await offered(inStep(USE), 'tool-unknown')).toEqual(['Write socket-8', 'Write socket-10']);
});

test('one that the list has wrong is reported there alone, and mended everywhere', async () => {
  const example = inHead('tools: [socket-9]', USE);
  expect(await reported(example, 'tool-unknown')).toHaveLength(1);
  expect(await reported(example, 'tool-not-listed')).toEqual([]);
  const mended = await fixed(example, 'tool-unknown', 'Write socket-8');
  expect(mended.files[mended.at]).not.toContain('socket-9');
  expect(await reported(mended, 'tool-unknown')).toEqual([]);
});

test('nothing is said where stores could not be read', async () => {
  const missing = 'stores: [../stores/bay-1.stores.yaml, ../stores/gone.stores.yaml]';
  expect(await reported(inHead(missing, USE), 'tool-unknown')).toEqual([]);
});

test('a consumable under "with" is called one', async () => {
  expect(await reported(inStep('- clean: cap-nut\n  with: degreaser'), 'tool-unknown')).toEqual([
    'degreaser: "degreaser" is a consumable in the stores; name it under "using" or "consumables"',
  ]);
  expect(await reported(inStep('- clean: cap-nut\n  using: degreser'), 'consumable-unknown')).toEqual([
    'degreser: No stores of this procedure have a consumable degreser; did you mean "degreaser"?',
  ]);
});
