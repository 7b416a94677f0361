import { describe, expect, test } from 'vitest';
import { findBareTorques, findQuantities } from '../../server/src/core/quantity';

const cut = (text: string, span: { start: number; end: number }) => text.slice(span.start, span.end);
const quantitiesIn = (text: string) =>
  findQuantities(text).map((found) => `${found.dimension}: ${cut(text, found.span)}`);
const bareIn = (text: string) => findBareTorques(text).map((found) => `${found.unit.kind}: ${cut(text, found.span)}`);

describe('quantities in a sentence', () => {
  test.each<[string, string[]]>([
    ['Tighten to 45 lbf·in.', ['torque: 45 lbf·in']],
    ['Tighten to 45 in-lb (5.1 N·m), then turn 90°.', ['torque: 45 in-lb (5.1 N·m)', 'angle: 90°']],
    ['Tighten to 20 N·m then 90°', ['torque: 20 N·m then 90°']],
    ['Tighten to 80 oz-in', ['torque: 80 oz-in']],
    ['The residual unbalance is 0.01 oz·in', ['unbalance: 0.01 oz·in']],
    ['A gap of 0.028–0.042 mm, max 0.05 mm.', ['length: 0.028–0.042 mm', 'length: max 0.05 mm']],
    ['Heat to 120 °C for 10 min before use', ['temperature: 120 °C', 'time: 10 min']],
    ['From -40 °C to 20 °C', ['temperature: -40 °C to 20 °C']],
    ['Fit the 3/8 in socket', ['length: 3/8 in']],
    ['Put 2 in each hole', []],
    ['The 3 A seals and 3 V-bands', []],
    ['Use the 8 mm socket (2 places)', ['length: 8 mm']],
    ['Screw M5×0.8, ISO 4032, part 40117, OS-40117, 2026-10-12, #10-32', []],
    ['Step 3 in the list', []],
    ['Drawing 1234 A', []],
    ['Make two turns', []],
  ])('%s', (text, expected) => {
    expect(quantitiesIn(text)).toEqual(expected);
  });
});

describe('torques without a unit', () => {
  test.each<[string, string[]]>([
    ['tighten to 45', ['missing: 45']],
    ['Tighten the nut to 45.', ['missing: 45']],
    ['tightened to 45.', ['missing: 45']],
    ['torque to 45 and mark', ['missing: 45']],
    ['Retorque to 45 using the wrench', ['missing: 45']],
    ['a torque of 45 is enough', ['missing: 45']],
    ['Torque: 45', ['missing: 45']],
    ['Tighten to 45 ± 3.', ['missing: 45 ± 3']],
    ['Torque to 5,1', ['missing: 5,1']],
    ['The torque is 45', ['missing: 45']],
    ['Max torque 45.', ['missing: 45']],
    ['Do not torque above 45', ['missing: 45']],
    ['Torque value 45 N', ['ambiguous: 45 N']],
    ['tighten to 45 (see table 2)', ['missing: 45']],
    ['tighten to 20, then to 45', ['missing: 20', 'missing: 45']],
    ['tighten to a torque of 45', ['missing: 45']],
    ['tighten M5×0.8 to 45', ['missing: 45']],
    ['Tighten bolt 3 to 45', ['missing: 45']],
    ['tighten to 45 in two stages', ['missing: 45']],
    ['tighten in 2 stages to 45', ['missing: 45']],
    ['tighten to 45 lb', ['ambiguous: 45 lb']],
    ['Tighten to 45 lbs in three passes', ['ambiguous: 45 lbs']],
    ['tighten the M5×0.8 nut to 4 kg.', ['ambiguous: 4 kg']],
  ])('%s', (text, expected) => {
    expect(bareIn(text)).toEqual(expected);
  });

  test.each([
    'Tighten to 45 N·m',
    'Tighten to 45 in-lb.',
    'Tighten to 45 °',
    'Tighten to 45°',
    'Tighten to 45 degrees',
    'Tighten to 45 turns',
    'Tighten to 1/4 turn',
    'Tighten to 3 passes',
    'Tighten to 8 mm',
    'Tighten to 80 %',
    'Tighten at 3 places',
    'Tighten bolts 1 to 8',
    'Tighten in the order shown, 1 to 8',
    'Tighten to step 3',
    'Tighten to #10',
    'Tighten as in part 40117',
    'Torque to 20, 30 and 45 N·m',
    'Torque per ISO 4032',
    'Torque: see table 4',
    'Torque 4 bolts',
    'Torque wrench 10',
    'Torque to 2026-10-12',
    'Tighten the nut. Move the lever to 45.',
    'Set the gauge to 45',
  ])('not in: %s', (text) => {
    expect(bareIn(text)).toEqual([]);
  });
});
