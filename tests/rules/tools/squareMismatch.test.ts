import { describe, expect, test } from 'vitest';
import { inStep, withStores } from '../../../server/src/core/rules/examples';
import { offered, reported } from '../../support/checkText';

const RULE = 'square-mismatch';
const TOOLS = `tools:
  ratchet-small: { name: small ratchet, kind: ratchet, square: 1/4 in }
  ratchet-big: { name: big ratchet, kind: ratchet, square: 10 mm }
  ratchet-any: { name: any ratchet, kind: ratchet }
  small-8: { name: small 8 mm socket, kind: socket, size: 8 mm, square: 6.3 mm }
  big-8: { name: big 8 mm socket, kind: socket, size: 8 mm, square: 3/8 in }
  big-bar: { name: big bar, kind: extension, square: 10 mm }
  adapter: { name: adapter, kind: other }`;

const example = (tools: string) => withStores(inStep(`- loosen: cap-nut\n  with: [${tools}]`), TOOLS);
const found = (tools: string): Promise<string[]> => reported(example(tools), RULE);

test('the socket is underlined; another handle or another socket is offered', async () => {
  expect(await found('ratchet-big, small-8')).toEqual([
    'small-8: The small 8 mm socket has a 6.3 mm (1/4 in) square and does not go on the big ratchet, which has 10 mm (3/8 in); name an adapter, or tools that go together',
  ]);
  expect(await offered(example('ratchet-big, small-8'), RULE)).toEqual([
    'Take ratchet-small instead of ratchet-big',
    'Take big-8 instead of small-8',
  ]);
});

describe('nothing is reported', () => {
  test.each([
    ['for one size in two ways of writing', 'ratchet-small, small-8'],
    ['where one of two handles goes', 'ratchet-small, ratchet-big, big-8'],
    ['where a bar takes the socket', 'ratchet-small, big-bar, big-8'],
    ['beside what may be an adapter', 'ratchet-big, adapter, small-8'],
    ['for a handle whose square nobody states', 'ratchet-any, small-8'],
    ['for a socket whose square nobody states', 'ratchet-big, socket-8'],
    ['for a socket alone', 'small-8'],
  ])('%s', async (_, tools) => {
    expect(await found(tools)).toEqual([]);
  });
});
