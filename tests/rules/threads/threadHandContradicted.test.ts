import { expect, test } from 'vitest';
import { asStep, inFamily, inHead, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, reported } from '../../support/checkText';

const RULE = 'thread-hand-contradicted';

function family(keys: string, more = '') {
  return inFamily(`parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, ${keys} }${more}`);
}

/** A step of a procedure whose cap nut has this hand. */
function step(text: string, hand = 'right') {
  const part = `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: ${hand}, torque: 5 ± 1 N·m }`;
  return withFamily(inStep(text), part);
}

/** Designations as ISO 965-1 and ASME B1.1 write them, and as the trade does. */
test.each(['M8×1-LH', 'M6×0.75-5h6h-S-LH', 'M10x1 LH', 'M16×1 LH-6G', '1/4-28 UNF-2A-LH', '1/2-13 UNC-2A LH'])(
  'the designation %s contradicts the hand right',
  async (thread) => {
    expect(await reported(family(`thread: ${thread}, hand: right`), RULE)).toEqual([
      `right: The hand of the cap nut is right, but the designation ${thread} marks the other one; correct whichever is wrong`,
    ]);
    expect(await reported(family(`thread: ${thread}, hand: left`), RULE)).toEqual([]);
  },
);

test('a left hand with no mark in the designation is usual', async () => {
  expect(await reported(family('thread: M8×1, hand: left'), RULE)).toEqual([]);
});

test('either the hand or the mark can be corrected', async () => {
  const example = family('thread: M8×1-LH, hand: right');
  const hand = await fixed(example, RULE, 'Write left');
  expect(hand.files[hand.at]).toContain('thread: M8×1-LH, hand: left');
  const mark = await fixed(example, RULE, 'Take -LH out of the designation');
  expect(mark.files[mark.at]).toContain('thread: M8×1, hand: right');
  expect(await reported(mark, RULE)).toEqual([]);
});

test('by build, the builds that contradict are named', async () => {
  const threads = 'thread: { k1-a: M8×1, k1-b: M8×1-LH }';
  const found = await reported(family(`${threads}, hand: right`), RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/\(K1-B\)$/);
  expect(await reported(family(`${threads}, hand: { k1-a: right, k1-b: left }`), RULE)).toEqual([]);
});

test('parts that are screwed to each other have one hand, and are reported once', async () => {
  const spindle = '\n  spindle: { name: spindle, kind: shaft, sits-on: core, hand: left, mates-with: cap-nut }';
  expect(await reported(family('hand: right, mates-with: spindle', spindle), RULE)).toEqual([
    'right: The hand of the cap nut is right, but that of the spindle that it is screwed to is left; correct whichever is wrong',
  ]);
  expect(await reported(family('hand: left, mates-with: spindle', spindle), RULE)).toEqual([]);
});

test('names and remarks of the part', async () => {
  const named =
    'parts:\n  cap-nut: { name: left-hand cap nut, kind: nut, sits-on: core, hand: { k1-a: right, k1-b: left } }';
  expect((await reported(inFamily(named), RULE))[0]).toMatch(/^left-hand: .*\(K1-A\)$/);
  expect(await reported(family('hand: right, note: Has a left-hand thread.'), RULE)).toHaveLength(1);
  expect(await reported(family('hand: { k1-a: right, k1-b: left }, note: Left-hand thread.'), RULE)).toEqual([]);
});

test('a sentence about the nut that is turned', async () => {
  const example = step('- loosen: cap-nut\n  say: Loosen the left-hand nut. Turn it clockwise.');
  expect(await reported(example, RULE)).toEqual([
    'left-hand: "left-hand" contradicts the hand of the cap nut, which is right in the family; correct whichever is wrong',
  ]);
  const { findings } = await checkExample(example);
  expect(findings.find((one) => one.rule === RULE)?.related[0]?.uri).toMatch(/\.family\.yaml$/);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('Loosen the right-hand nut.');
});

test.each([
  ['- loosen: cap-nut\n  say: Turn it clockwise.', 'clockwise'],
  ['- loosen: cap-nut\n  caution: This nut has a reverse thread.', 'reverse thread'],
  ['- tighten: cap-nut\n  say: Turn the nut counter-clockwise.', 'counter-clockwise'],
  ['- Turn the cap nut clockwise to loosen it.', 'clockwise'],
  ['- Undo the cap nut (LH thread).', 'LH'],
  ['- The <cap-nut> is left-handed.', 'left-handed'],
])('%s says that a right-hand nut is left-hand', async (text, said) => {
  expect((await reported(step(text), RULE)).map((one) => one.split(':')[0])).toEqual([said]);
  expect(await reported(step(text, 'left'), RULE)).toEqual([]);
});

test('a right-hand claim contradicts a left hand', async () => {
  expect(await reported(step('- tighten: cap-nut\n  say: Turn it clockwise.', 'left'), RULE)).toHaveLength(1);
  expect(await reported(step('- Fit the right-hand cap nut.', 'left'), RULE)).toHaveLength(1);
});

test('where the hand differs by build, the builds of the place and of the sentence count', async () => {
  const hand = '{ k1-a: right, k1-b: left }';
  const says = (text: string, when = '') => step(`- loosen: cap-nut\n  say: ${text}${when}`, hand);
  expect((await reported(says('The nut is left-hand.'), RULE))[0]).toMatch(/\(K1-A\)$/);
  expect(await reported(says('The nut is left-hand.', '\n  when: k1-b'), RULE)).toEqual([]);
  expect(await reported(says('The nut of the K1-B is left-hand.'), RULE)).toEqual([]);
  expect(await reported(says('The nut of the K1-A is left-hand.'), RULE)).toHaveLength(1);
});

test('a title, and what is said before the start of a fastener by name', async () => {
  const title = 'title: Take off the left-hand nut\ndo:\n  - loosen: cover-screw\n  - remove: cover-screw';
  expect(await reported(asStep(title), RULE)).toHaveLength(1);
  const start = inHead('before-you-start:\n  - notice: The cover screws have left-hand threads.');
  expect(await reported(start, RULE)).toHaveLength(1);
});

test('sides, hands of the fitter, cases and other rotation claim nothing', async () => {
  for (const text of [
    'Stand on the left-hand side.',
    'Hold the nut with your left hand.',
    'A groove means a left-hand thread.',
    'If the thread is left-hand, turn it clockwise.',
    'Do not turn it clockwise.',
    'Turn the rotor clockwise.',
  ]) {
    expect(await reported(step(`- loosen: cap-nut\n  say: ${text}`), RULE)).toEqual([]);
  }
});

test('words that are right on other builds are not turned round for all', async () => {
  const example = step('- loosen: cap-nut\n  say: Loosen the left-hand nut.', '{ k1-a: right, k1-b: left }');
  const { findings } = await checkExample(example);
  const [found, ...more] = findings.filter((finding) => finding.rule === RULE);
  expect(more).toEqual([]);
  expect(found?.builds).not.toBe('');
  expect(found?.fixes()).toEqual([]);
});
