import { describe, expect, test } from 'vitest';
import { placeAt, placesWithin } from '../../server/src/core/ide/placeAt';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { type Example, inFamily, inProcedure, inStep } from '../../server/src/core/rules/examples';
import { openFiles } from '../support/memoryFiles';

/** What stands at the first place of a word in the example's document: what it is, its owner and key, and what is marked. */
async function at(example: Example, word: string, nth = 0): Promise<string> {
  const { workspace, document } = await openFiles(example.files, example.at);
  const offset = [...document.text.matchAll(new RegExp(word.replaceAll('+', '\\+'), 'g'))][nth]?.index;
  if (offset === undefined) throw new Error(`No ${word}`);
  const place = placeAt(workspace.snapshot, document, offset + 1);
  if (place === undefined) return 'nothing';
  const { owner, value } = place;
  const name = 'id' in owner ? `${owner.is} ${owner.id}` : owner.is;
  const verb = owner.is === 'instruction' ? ` ${owner.view.instruction.verb} in ${owner.step.id}` : '';
  const marked = document.text.slice(place.span.start, place.span.end);
  return `${value.is} of ${name}${verb} under ${place.key}: ${marked}`;
}

const FAMILY = inFamily(`parts:
  ring: { name: ring, kind: o-ring, section: 1.78 mm, groove: { depth: 1.3 mm } }
  stud:
    name: stud
    torque: { k1-a: 3 N·m, k1-b: 4 N·m }
dimensions:
  bore: { k1-a: 8.02..8.03 mm, otherwise: 9.02..9.03 mm }
  journal: 7.98..7.99 mm
limits:
  play: { name: play, accept: 0.03..0.05 mm, from: [+bore, -journal, -0.01 mm] }
balance-groups:
  rotor: { members: [wheel], grade: G 6.3, permissible: 0.4 g·mm }`);

const STEP = inStep(`- tighten: cap-nut
  passes: [2 N·m, 4.6 ± 0.3 N·m]
  with: [torque-wrench-10, socket-8]
  hold: { at: hexagon, with: socket-10 }
- measure: end-play
  accept: 0.05..0.08 mm
  if-not:
    do:
      - tighten: cover-screw
        torque: 9 ± 1 N·m
- Warm it to 80 °C and wait`);

describe('what stands at a place', () => {
  test.each([
    ['1\\.78', 'quantity of part ring under section: section: 1.78 mm'],
    ['section', 'quantity of part ring under section: section: 1.78 mm'],
    ['1\\.3 mm', 'quantity of part ring under groove: 1.3 mm'],
    ['torque: \\{', 'whole of part stud under torque: torque'],
    ['4 N·m', 'quantity of part stud under torque: 4 N·m'],
    ['stud:', 'whole of part stud under stud: stud'],
    ['8\\.02', 'quantity of dimension bore under k1-a: 8.02..8.03 mm'],
    ['7\\.98', 'quantity of dimension journal under journal: 7.98..7.99 mm'],
    ['0\\.03\\.\\.', 'quantity of limit play under accept: 0.03..0.05 mm'],
    ['+bore', 'ref of limit play under from: bore'],
    ['-0\\.01', 'quantity of limit play under from: -0.01 mm'],
    ['G 6\\.3', 'whole of balance-group rotor under grade: G 6.3'],
    ['0\\.4 g', 'quantity of balance-group rotor under permissible: 0.4 g·mm'],
  ])('of a family: %s', async (word, expected) => {
    const told = await at(FAMILY, word);
    expect(told.replace(/: (?:section|accept|permissible|grade|journal|k1-[ab]): /, ': ')).toBe(
      expected.replace(/: section: /, ': '),
    );
  });

  test.each([
    ['cap-nut', 'ref of instruction tighten in only-step under tighten: cap-nut'],
    ['2 N·m', 'quantity of instruction tighten in only-step under passes: 2 N·m'],
    ['4\\.6', 'quantity of instruction tighten in only-step under passes: 4.6 ± 0.3 N·m'],
    ['socket-8\\]', 'ref of instruction tighten in only-step under with: socket-8'],
    ['socket-10 ', 'ref of instruction tighten in only-step under hold: socket-10'],
    ['end-play', 'ref of instruction measure in only-step under measure: end-play'],
    ['0\\.05\\.\\.', 'quantity of instruction measure in only-step under accept: 0.05..0.08 mm'],
    ['9 ±', 'quantity of instruction tighten in only-step under torque: 9 ± 1 N·m'],
    ['80 °C', 'in-prose of instruction say in only-step under say: 80 °C'],
    ['Warm', 'nothing'],
  ])('of a procedure: %s', async (word, expected) => {
    expect(await at(STEP, word)).toBe(expected);
  });

  test('in the stores it is a tool', async () => {
    const stores = { ...STEP, at: EXAMPLE_PATHS.stores };
    expect(await at(stores, '2\\.\\.10')).toBe('quantity of tool torque-wrench-10 under range: 2..10 N·m');
  });

  test('a key and the plain value behind it are one place of a line', async () => {
    const { workspace, document } = await openFiles(STEP.files, STEP.at);
    const start = document.text.indexOf('with: [');
    const places = placesWithin(workspace.snapshot, document, { start, end: document.text.indexOf('\n', start) });
    expect(places.map(({ value, span }) => `${value.is} ${document.text.slice(span.start, span.end)}`)).toEqual([
      'whole with',
      'ref torque-wrench-10',
      'ref socket-8',
    ]);
    const torque = document.text.indexOf('torque: 9');
    const line = placesWithin(workspace.snapshot, document, { start: torque, end: torque + 17 });
    expect(line.map(({ span }) => document.text.slice(span.start, span.end))).toEqual(['torque: 9 ± 1 N·m']);
  });

  test.each(['', 'witnessmark: 1\nparts: [', '- a\n- b', 'phases:\n  - steps:\n      - do: [{ tighten: "x'])(
    'a broken document has places or none: %j',
    async (text) => {
      const broken = inProcedure('', text);
      const { workspace, document } = await openFiles(broken.files, broken.at);
      for (let offset = 0; offset <= text.length; offset++) {
        const place = placeAt(workspace.snapshot, document, offset);
        if (place !== undefined) expect(place.span.start).toBeLessThanOrEqual(offset);
      }
    },
  );
});
