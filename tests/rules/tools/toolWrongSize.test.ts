import { describe, expect, test } from 'vitest';
import { type Example, inHead, inStep, withFamily, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'tool-wrong-size';
const TOOLS = `tools:
  ratchet: { name: ratchet, kind: ratchet }
  socket-12: { name: 12 mm socket, kind: socket, size: 12 mm }
  socket-13: { name: 13 mm socket, kind: socket, size: 13 mm }
  socket-16: { name: 16 mm socket, kind: socket, size: 16 mm }
  socket-17: { name: 17 mm socket, kind: socket, size: 17 mm }
  socket-five-sixteenths: { name: 5/16 in socket, kind: socket, size: 5/16 in }
  socket-half: { name: 1/2 in socket, kind: socket, size: 12.7 mm }
  socket-loose: { name: adjustable socket, kind: socket }
  spanner-8: { name: 8 mm spanner, kind: spanner, size: 8 mm }
  spanner-9: { name: 9 mm spanner, kind: spanner, size: 9 mm }
  key-5: { name: 5 mm hexagon key, kind: hexagon-key, size: 5 mm }
  bit-t25: { name: T25 bit, kind: bit, drive-size: T 25 }
  bit-t30: { name: T30 bit, kind: bit, drive-size: TX30 }
  odd: { name: odd tool, kind: other }`;

function nut(keys: string): string {
  return `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, torque: 4.6 ± 0.3 N·m${keys} }`;
}

function screw(keys: string): string {
  return `parts:\n  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, hand: right, torque: 9 ± 1 N·m${keys} }`;
}

function turn(tools: string, part: string, object = 'cap-nut'): Example {
  return withStores(withFamily(inStep(`- loosen: ${object}\n  with: ${tools}`), part), TOOLS);
}

const found = (tools: string, part: string, object?: string): Promise<string[]> =>
  reported(turn(tools, part, object), RULE);

test('the tool is underlined, and the ones that fit are named', async () => {
  expect(await found('[ratchet, socket-10]', nut(', across-flats: 8 mm'))).toEqual([
    'socket-10: The 10 mm socket does not fit the cap nut, 8 mm across flats; take socket-8 or spanner-8',
  ]);
});

describe('inch and millimetre are not mixed', () => {
  test('5/16 in is 0.06 mm too small for 8 mm', async () => {
    expect(await found('[ratchet, socket-five-sixteenths]', nut(', across-flats: 8 mm'))).toEqual([
      'socket-five-sixteenths: The 5/16 in socket (7.94 mm) does not fit the cap nut, 8 mm across flats; take socket-8 or spanner-8',
    ]);
    expect(await found('[ratchet, socket-8]', nut(', across-flats: 5/16 in'))).toEqual([
      'socket-8: The 8 mm socket does not fit the cap nut, 7.94 mm (5/16 in) across flats; take socket-five-sixteenths',
    ]);
  });

  test.each(['12.7 mm', '1/2 in', '0.5 in', '12,7 mm'])('an inch size may be written as %s', async (written) => {
    expect(await found('[ratchet, socket-half]', nut(`, across-flats: "${written}"`))).toEqual([]);
  });

  test('13 mm is no 1/2 in', async () => {
    expect(await found('[ratchet, socket-13]', nut(', across-flats: 1/2 in'))).toHaveLength(1);
  });
});

describe('drives without a width', () => {
  test('go by their names', async () => {
    const torx = screw(', drive: hexalobular, drive-size: T30');
    expect(await found('[ratchet, bit-t30]', torx, 'cover-screw')).toEqual([]);
    expect(await found('[ratchet, bit-t25]', torx, 'cover-screw')).toEqual([
      'bit-t25: The T25 bit does not fit the cover screw, T30; take bit-t30',
    ]);
  });

  test('a key does not turn a hexagon from outside, and a spanner no socket', async () => {
    const inner = screw(', drive: socket-hexagon, across-flats: 5 mm');
    expect(await found('key-5', inner, 'cover-screw')).toEqual([]);
    expect(await found('key-5', screw(', drive: hexagon, across-flats: 5 mm'), 'cover-screw')).toHaveLength(1);
    expect(await found('spanner-8', screw(', drive: socket-hexagon, across-flats: 8 mm'), 'cover-screw')).toHaveLength(
      1,
    );
  });
});

describe('where the family is silent', () => {
  test('the standard hexagon of the thread counts, and the message says so', async () => {
    expect(await found('[ratchet, socket-10]', nut(', thread: M5×0.8'))).toEqual([
      'socket-10: The 10 mm socket does not fit the cap nut, 8 mm across flats (assumed from ISO 4032); take socket-8 or spanner-8',
    ]);
    expect((await found('[ratchet, socket-13]', screw(', thread: M6×1'), 'cover-screw'))[0]).toContain('ISO 4014');
    expect((await found('[ratchet, socket-13]', nut(', thread: 1/4-28 UNF')))[0]).toContain(
      '7/16 in) across flats (assumed from ASME B18.2.2)',
    );
  });

  test.each([
    ['the ISO width', 'socket-16', 'M10×1.5'],
    ['the older DIN width', 'socket-17', 'M10×1.5'],
    ['the width of flange nuts and small hexagons', 'socket-12', 'M8×1.25'],
  ])('%s may be right', async (_, tool, thread) => {
    expect(await found(`[ratchet, ${tool}]`, nut(`, thread: ${thread}`))).toEqual([]);
  });

  test.each([
    ['a key or bit, since the screw may have any socket', '[ratchet, bit-t25]', screw(', thread: M6×1'), 'cover-screw'],
    ['a drive of another kind', '[ratchet, socket-13]', screw(', thread: M6×1, drive: slot'), 'cover-screw'],
    [
      'a plug, which has any hexagon',
      '[ratchet, socket-13]',
      `parts:\n  cap-nut: { name: plug, kind: plug, sits-on: core, thread: M6×1 }`,
      'cap-nut',
    ],
    ['a thread that no table has', '[ratchet, socket-13]', nut(', thread: M5.3×0.8'), 'cap-nut'],
  ])('%s is let pass', async (_, tools, part, object) => {
    expect(await found(tools, part, object)).toEqual([]);
  });
});

test('builds on which the fastener has another size are named', async () => {
  expect(await found('[ratchet, socket-13]', nut(', across-flats: { k1-a: 13 mm, k1-b: 1/2 in }'))).toEqual([
    'socket-13: The 13 mm socket does not fit the cap nut, 12.7 mm (1/2 in) across flats; take socket-half (K1-B)',
  ]);
  expect(
    await found('[ratchet, socket-13, socket-half]', nut(', across-flats: { k1-a: 13 mm, k1-b: 1/2 in }')),
  ).toEqual([]);
});

describe('nothing is reported', () => {
  const NUT = nut(', across-flats: 8 mm');
  test.each([
    ['for a tool whose size nobody states', '[ratchet, socket-loose]', 'cap-nut'],
    ['beside a tool of no particular kind', '[socket-10, odd]', 'cap-nut'],
    ['beside a tool that no stores have', '[socket-10, socket-99]', 'cap-nut'],
    ['for a part that no family has', '[ratchet, socket-10]', 'cap-knut'],
  ])('%s', async (_, tools, object) => {
    expect(await found(tools, NUT, object)).toEqual([]);
  });

  test('for the fasteners of a part that is taken off', async () => {
    const screws = screw(', across-flats: 10 mm');
    expect(
      await found('[ratchet, socket-10, socket-8]', `${NUT}\n${screws.slice(7)}`, '[cover-screw, cap-nut]'),
    ).toEqual([]);
    const example = withStores(
      withFamily(
        inStep('- remove: [cap-nut, cover]\n  with: [ratchet, socket-8, socket-10]'),
        `${NUT}\n${screws.slice(7)}`,
      ),
      TOOLS,
    );
    expect(await reported(example, RULE)).toEqual([]);
  });

  test('for a second tool that may counter-hold', async () => {
    expect(await found('[ratchet, socket-8, spanner-9]', nut(', across-flats: 8 mm, hold: shaft hexagon'))).toEqual([]);
    expect(await found('[ratchet, socket-8, spanner-9]', NUT)).toHaveLength(1);
  });
});

describe('what is counter-held', () => {
  const MATED = `parts:
  core: { name: core }
  rod-end: { name: rod end, kind: rod, sits-on: core, thread: M5×0.8, hand: right, across-flats: 9 mm }
  cap-nut: { name: cap nut, kind: nut, sits-on: core, mates-with: rod-end, thread: M5×0.8, hand: right, across-flats: 8 mm, torque: 4 ± 0.3 N·m, hold: flats of the rod }`;
  const hold = (holding: string): Promise<string[]> =>
    reported(
      withStores(
        withFamily(inStep(`- loosen: cap-nut\n  with: [ratchet, socket-8]\n  hold: ${holding}`), MATED),
        TOOLS,
      ),
      RULE,
    );

  test('has the size of the part that the nut is screwed to', async () => {
    expect(await hold('{ at: flats of the rod, with: spanner-9 }')).toEqual([]);
    expect(await hold('{ at: flats of the rod, with: spanner-8 }')).toEqual([
      'spanner-8: The 8 mm spanner is to counter-hold, but it does not fit the rod end, 9 mm across flats; take spanner-9',
    ]);
  });

  test('is what is named, where a part is named', async () => {
    expect(await hold('{ at: the flats of <cap-nut>, with: spanner-8 }')).toEqual([]);
  });
});

test('the fix writes the tool that fits, and lists it', async () => {
  const step = '- loosen: cap-nut\n  with: [ratchet, socket-10]';
  const example = withStores(
    withFamily(inHead('tools: [ratchet, socket-10]', step), nut(', across-flats: 8 mm')),
    TOOLS,
  );
  expect(await offered(example, RULE)).toEqual([
    'Take socket-8 instead of socket-10',
    'Take spanner-8 instead of socket-10',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('with: [ratchet, socket-8]');
  expect(mended.files[mended.at]).toContain('tools: [ratchet, socket-10, socket-8]');
});

test('the working says where the size is known from and which tools have it', async () => {
  const { findings } = await checkExample(turn('[ratchet, socket-10]', nut(', thread: M5×0.8')));
  const [working] = findings.find((finding) => finding.rule === RULE)?.working() ?? [];
  expect(working?.rows.map(({ label, text }) => `${label}: ${text}`)).toEqual([
    'Thread: M5×0.8, as the family states',
    'Across flats: 8 mm, assumed from ISO 4032; the family states none',
    'Widths that are met with: 8 mm, 7 mm',
    'Tools of the stores that fit: 8 mm socket, 8 mm spanner',
  ]);
});
