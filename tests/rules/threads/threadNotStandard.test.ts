import { expect, test } from 'vitest';
import { type Example, inFamily } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'thread-not-standard';

function bolt(thread: string): Example {
  return inFamily(`parts:\n  lid-bolt: { name: lid bolt, kind: bolt, sits-on: core, hand: right, thread: ${thread} }`);
}

test('a pitch outside the series is underlined, and the standard ones are offered, the likeliest first', async () => {
  const example = bolt('M5×0.7');
  expect(await reported(example, RULE)).toEqual([
    '0.7: The pitch of the thread M5×0.7 of the lid bolt is not standard; M5 has pitches of 0.8 and 0.5 mm (ISO 261)',
  ]);
  expect(await offered(example, RULE)).toEqual(['Write M5×0.8', 'Write M5×0.5']);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('thread: M5×0.8 }');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a unified count outside the series names the series', async () => {
  const example = bolt('1/4-24');
  expect(await reported(example, RULE)).toEqual([
    '24: The pitch of the thread 1/4-24 of the lid bolt is not standard; 1/4 has 28 (UNF), 20 (UNC) and 32 (UNEF) threads per inch (ASME B1.1)',
  ]);
  expect((await fixed(example, RULE)).files[example.at]).toContain('thread: 1/4-28 }');
});

test('a series that does not have the count is told, and either is offered', async () => {
  const example = bolt('1/4-28 UNC-2A');
  expect(await reported(example, RULE)).toHaveLength(1);
  expect(await offered(example, RULE)).toEqual(['Write 1/4-28 UNF-2A', 'Write 1/4-20 UNC-2A']);
});

test('an odd diameter offers the one to which its pitch belongs first', async () => {
  const example = bolt('M5.7×0.8');
  expect((await reported(example, RULE))[0]).toMatch(
    /^M5\.7: The diameter .* not standard; next to it are M5\.5 and M6$/,
  );
  expect(await offered(example, RULE)).toEqual(['Write M5×0.8', 'Write M6×1']);
  expect((await fixed(example, RULE)).files[example.at]).toContain('thread: M5×0.8 }');
});

test('a designation that stops too early is told with the pitches that fit', async () => {
  expect(await offered(bolt('M5×'), RULE)).toEqual(['Write M5×0.8', 'Write M5×0.5']);
  expect(await offered(bolt('1/4'), RULE)).toEqual(['Write 1/4-20 UNC', 'Write 1/4-28 UNF', 'Write 1/4-32 UNEF']);
  const mended = await fixed(bolt('M5×'), RULE);
  expect(mended.files[mended.at]).toContain('thread: M5×0.8 }');
});

test('a lost decimal point is told as a pitch that is too coarse', async () => {
  const example = bolt('M8×125');
  expect((await reported(example, RULE))[0]).toContain('the pitch is too coarse for this diameter');
  expect((await fixed(example, RULE)).files[example.at]).toContain('thread: M8×1.25 }');
});

test('what is no thread is told, on the builds that have it', async () => {
  expect(await reported(bolt('{ k1-a: M5×0.8, k1-b: fine }'), RULE)).toEqual([
    'fine: The thread fine of the lid bolt cannot be read as it stands: this is no thread designation; write for example M5×0.8 or 1/4-28 UNF (K1-B)',
  ]);
});

test.each([
  'M5',
  'M5×0.8-6g',
  'M8x1 LH',
  'M10×1,25',
  '"#10-32 UNF"',
  '1/4-28 UNF-2A',
  '5/16-20 UN',
  'G1/4',
  '1/8 NPT',
  'Tr8×1.5',
  'M64×6',
  '""',
])('%s is not told', async (thread) => {
  expect(await reported(bolt(thread), RULE)).toEqual([]);
});

test('an empty thread, and one that lost its text at #, are left to the rules of form', async () => {
  expect(await reported(bolt(''), RULE)).toEqual([]);
  const lost = inFamily('parts:\n  lid-bolt:\n    name: lid bolt\n    sits-on: core\n    thread: #10-32 UNF');
  expect(await reported(lost, RULE)).toEqual([]);
});
