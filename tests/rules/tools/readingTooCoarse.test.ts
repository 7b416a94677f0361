import { describe, expect, test } from 'vitest';
import { EXAMPLE_HEAD } from '../../../server/src/core/rules/exampleDocuments';
import { type Example, inProcedure, withStores } from '../../../server/src/core/rules/examples';
import { offered, reported } from '../../support/checkText';

const RULE = 'reading-too-coarse';
const TOOLS = `tools:
  coarse-gauge: { name: coarse gauge, kind: indicator, resolution: 0.01 mm, range: 0..10 mm }
  plain-gauge: { name: plain gauge, kind: indicator }`;

function measured(keys: string, calculate: string): Example {
  const text = `${EXAMPLE_HEAD}readings:
  seat-read: { name: depth of the seat, quantity: length }
phases:
  - phase: Measure
    steps:
      - step: read-seat
        title: Measure the seat
        do:
          - measure: seat-read
            ${keys}
      - step: work-out
        title: Work out the play
        do:
          - calculate: ${calculate}
`;
  return withStores(inProcedure('', text), TOOLS);
}

test('what is worked out in another step decides', async () => {
  const example = measured('with: coarse-gauge', 'end-play\n            from: [+seat-read, -2.10 mm]');
  expect(await reported(example, RULE)).toEqual([
    'coarse-gauge: The coarse gauge reads to 0.01 mm, which is 1/5 of what the end play may vary (0.04..0.09 mm) that is worked out from it; it should be 1/10, at most 1/6; take dial-gauge',
  ]);
  expect(await offered(example, RULE)).toEqual(['Take dial-gauge instead of coarse-gauge']);
});

test('a limit of the calculation itself counts', async () => {
  const wide = 'end-play\n            from: [+seat-read, -2.10 mm]\n            accept: 0.04..0.14 mm';
  expect(await reported(measured('with: coarse-gauge', wide), RULE)).toEqual([]);
});

describe('nothing is reported', () => {
  const PLAY = 'end-play\n            from: [+seat-read, -2.10 mm]';
  test.each([
    ['for a gauge that is fine enough', 'with: dial-gauge', PLAY],
    ['beside one that is', 'with: [coarse-gauge, dial-gauge]', PLAY],
    ['for one that nothing is known of', 'with: plain-gauge', PLAY],
    ['where the reading is not used', 'with: coarse-gauge', 'end-play\n            from: [+2.15 mm, -2.10 mm]'],
    ['for what has a finding of its own', 'accept: 2.14..2.16 mm\n            with: coarse-gauge', PLAY],
  ])('%s', async (_, keys, calculate) => {
    expect(await reported(measured(keys, calculate), RULE)).toEqual([]);
  });
});
