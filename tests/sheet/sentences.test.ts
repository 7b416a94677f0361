import { describe, expect, test } from 'vitest';
import type { Instruction } from '../../server/src/core/model/generated/types';
import { writingFor } from '../../server/src/core/sheet/sentences';
import { plural } from '../../server/src/core/sheet/sentences/english/grammar';
import { instructionOf, sentenceOf, textOf } from './fixtures/bench';

/** For each verb: the instruction as a writer writes it, and the sentence that the fitter reads. */
const SENTENCES: Readonly<Record<Instruction['verb'], readonly (readonly [instruction: string, sentence: string])[]>> =
  {
    loosen: [
      ['- { loosen: cover-ring, with: ring-pliers }', 'Loosen the cover ring with the ring pliers.'],
      [
        '- { loosen: cover-screw, with: socket-8 }',
        'Loosen the four cover screws with the 8 mm socket. Turn counter-clockwise.',
      ],
      ['- { loosen: left-nut }', 'Loosen the left nut. Turn clockwise (left-hand thread).'],
      [
        '- { loosen: cap-nut, with: socket-8, hold: { at: turbine hexagon, with: socket-12 } }',
        'Loosen the cap nut with the 8 mm socket. Turn counter-clockwise. Hold the turbine hexagon with the 12 mm socket.',
      ],
    ],
    remove: [
      ['- remove: cover', 'Remove the cover.'],
      [
        '- { remove: cover-screw, with: socket-8 }',
        'Remove the four cover screws with the 8 mm socket. Turn counter-clockwise.',
      ],
      ['- { remove: cover-screw, count: 2 }', 'Remove two of the cover screws.'],
      ['- remove: [cover, cover-ring]', 'Remove the cover and the cover ring.'],
      ['- remove: cover-seal', 'Remove the cover O-ring. Discard it.'],
      ['- remove: bearing', 'Remove the two bearings. Discard them.'],
      ['- remove: [cover, cover-seal]', 'Remove the cover and the cover O-ring. Discard the cover O-ring.'],
      ['- { remove: shaft, with: ring-pliers }', 'Remove the shaft and turbine wheel with the ring pliers.'],
    ],
    install: [
      ['- install: cover', 'Install the cover.'],
      ['- install: cover-seal', 'Install the new cover O-ring.'],
      ['- { install: bearing, count: 1, place: core }', 'Install one new bearing in the core housing.'],
      ['- { install: bearing, count: 1, place: shaft }', 'Install one new bearing on the shaft and turbine wheel.'],
      ['- install: bearing', 'Install the two new bearings.'],
      ['- install: cover-ring', 'Install the cover ring. Make sure that the bevel faces the cover.'],
      ['- install: left-nut', 'Install the left nut. Turn counter-clockwise (left-hand thread).'],
      ['- install: pinned', 'Install the seal plate. Locate it by the pin at the drain.'],
      ['- { install: cover, orient: outlet down }', 'Install the cover. Position: outlet down.'],
      ['- { install: shim, trial: true }', 'For a trial, install the thrust shim. It comes off again.'],
    ],
    seat: [['- { seat: cover-ring, with: ring-pliers }', 'Seat the cover ring in its groove with the ring pliers.']],
    tighten: [
      [
        '- tighten: left-nut',
        'Tighten the left nut to 5 ± 0.5 N·m (44 ± 4 lbf·in). Turn counter-clockwise (left-hand thread).',
      ],
      [
        '- { tighten: cap-nut, torque: 5.1 ± 0.3 N·m (45 ± 3 lbf·in), with: [torque-wrench-10, socket-8], hold: { at: turbine hexagon, with: socket-12 } }',
        'Tighten the cap nut to 5.1 ± 0.3 N·m (45 ± 3 lbf·in). Turn clockwise. Hold the turbine hexagon with the 12 mm socket.',
      ],
      [
        '- { tighten: cover-screw, passes: [6 N·m, 9 N·m] }',
        'Tighten the four cover screws in 2 passes: 6 N·m (53 lbf·in), then 9 N·m (80 lbf·in), in the order 1, 3, 2, 4. Turn clockwise.',
      ],
      [
        '- tighten: cover-screw',
        'Tighten the four cover screws to 9 ± 1 N·m (80 ± 9 lbf·in), in the order 1, 3, 2, 4. Turn clockwise.',
      ],
      [
        '- tighten: stretch-bolt',
        'Tighten the two stretch bolts to 2 N·m (18 lbf·in), then turn a further 110°. Turn clockwise.',
      ],
      [
        '- tighten: bare-nut',
        'Tighten the bare nut to ____________ (torque not stated: ask before you tighten). Turn clockwise.',
      ],
      ['- tighten: two-bolt', 'Tighten the two bolts of the outlet. Tick the box that applies and use its values.'],
    ],
    apply: [
      [
        '- { apply: threadlocker, to: cap-nut, at: thread, amount: 1 drop }',
        'Apply 1 drop of threadlocker to the thread of the cap nut.',
      ],
      [
        '- { apply: threadlocker, to: cover-screw, amount: 1 drop each }',
        'Apply threadlocker to the four cover screws: 1 drop each.',
      ],
      ['- { apply: sealant, to: cover }', 'Apply sealant to the cover.'],
      ['- { apply: sealant, at: joint face }', 'Apply sealant to the joint face.'],
    ],
    clean: [
      [
        '- { clean: [cap-nut, shaft], using: degreaser }',
        'Clean the cap nut and the shaft and turbine wheel with degreaser.',
      ],
      ['- { clean: cover, by: ultrasonic, with: bath }', 'Clean the cover in the ultrasonic bath.'],
      ['- { clean: cover, by: ultrasonic }', 'Clean the cover in the ultrasonic bath.'],
      ['- { clean: cover, by: wipe, using: degreaser }', 'Wipe the cover with degreaser.'],
      ['- { clean: cover, by: wash }', 'Wash the cover.'],
      ['- { clean: cover, by: compressed-air }', 'Clean the cover with compressed air.'],
    ],
    identify: [['- identify: nut-hand', 'Find out the hand of the cap nut: left or right. Tick what you find.']],
    inspect: [
      ['- { inspect: wheel, look-for: [nicks, rub marks] }', 'Inspect the wheel. Look for nicks or rub marks.'],
      [
        '- { inspect: wheel, look-for: ["Bent, cracked blades.", fretting] }',
        'Inspect the wheel. Look for bent, cracked blades; fretting.',
      ],
      [
        '- { inspect: wheel, look-for: [A step in the bore, EGR soot, Burnt-out seat, V-band dents] }',
        'Inspect the wheel. Look for a step in the bore, EGR soot, burnt-out seat or V-band dents.',
      ],
      ['- inspect: [cover, wheel]', 'Inspect the cover and the wheel.'],
    ],
    measure: [
      ['- { measure: end-play, with: dial-gauge }', 'Measure the end play of the rotor with the dial gauge.'],
      ['- { measure: end-play, places: 3 }', 'Measure the end play of the rotor at three places.'],
      ['- measure: run-out', 'Measure the run-out of the shaft at the thread end and the turbine end.'],
    ],
    calculate: [
      ['- calculate: journal-clearance', 'Calculate the journal clearance: the bearing bore minus the shaft journal.'],
      [
        '- { calculate: end-play, from: [-stack, +42.2 mm] }',
        'Calculate the end play of the rotor: 42.2 mm minus the height of the stack.',
      ],
    ],
    choose: [
      [
        '- { choose: shim, size: [+2 mm, -stack] }',
        'Choose the thrust shim. The size is 2 mm minus the height of the stack. The sizes are 0.40 to 0.60 mm in steps of 0.05 mm.',
      ],
    ],
    mark: [
      [
        '- { mark: wheel, across: shaft, with: scriber }',
        'Make a mark across the wheel and the shaft and turbine wheel with the scriber.',
      ],
      ['- mark: wheel', 'Mark the wheel.'],
    ],
    align: [
      ['- { align: wheel, to: shaft }', 'Align the mark on the wheel with the mark on the shaft and turbine wheel.'],
      ['- align: wheel', 'Align the marks on the wheel.'],
    ],
    press: [
      [
        '- { press: wheel, to: shoulder of the shaft, with: press, force: 800 N }',
        'Press the wheel to the shoulder of the shaft with the arbor press. Do not use a force of more than 800 N.',
      ],
    ],
    heat: [
      [
        '- { heat: wheel, until: 110 ± 5 °C, with: [oven, thermometer] }',
        'Heat the wheel in the bench oven to 110 ± 5 °C. Measure the temperature with the contact thermometer.',
      ],
    ],
    cool: [['- { cool: shaft, until: ≤ 35 °C }', 'Cool the shaft and turbine wheel to at most 35 °C.']],
    balance: [
      ['- { balance: rotor, with: balancer }', 'Balance the rotor to grade G 6.3 on the core balance machine.'],
    ],
    adjust: [
      [
        '- { adjust: rod-end, until: the lever touches its stop, back-off: half a turn }',
        'Adjust the rod end until the lever touches its stop. Then turn it back by half a turn.',
      ],
    ],
    check: [
      ['- check: free-turn', 'Check: The rotor turns freely through two full turns.'],
      ['- { check: the lever moves freely, with: dial-gauge }', 'Check with the dial gauge: The lever moves freely.'],
    ],
    wait: [
      ['- wait: 30 min', 'Wait 30 min.'],
      ['- { wait: cure, of: threadlocker }', 'Wait 24 h until the threadlocker has cured.'],
      [
        '- { wait: cure, of: sealant }',
        'Wait until the sealant has cured. The time is not stated here: read it on the data sheet.',
      ],
      [
        '- wait: cure',
        'Wait until what was applied has cured. The time is not stated here: read it on the data sheet.',
      ],
    ],
    send: [
      [
        '- { send: shaft, to: "balancing shop, for a new balance", certificate: balance report }',
        'Send the shaft and turbine wheel to the balancing shop, for a new balance. Ask for the balance report.',
      ],
    ],
    receive: [
      [
        '- { receive: shaft, certificate: balance report }',
        'Receive the shaft and turbine wheel with the balance report.',
      ],
    ],
    return: [['- { return: wheel, to: the customer }', 'Return the wheel to the customer.']],
    discard: [['- discard: cover-seal', 'Discard the cover O-ring.']],
    record: [
      ['- record: Hours of service', 'Record: Hours of service.'],
      [
        '- { record: Hours of service, serial: core }',
        'Record: Hours of service. Record also the serial number of the core housing.',
      ],
    ],
    say: [
      ['- Lay out the parts.', 'Lay out the parts.'],
      ['- { say: Turn <shaft> by hand, note: gently }', 'Turn the shaft and turbine wheel by hand.'],
      [
        '- { say: Put the <cap-nut> on <shaft> with <threadlocker>. }',
        'Put the cap nut on the shaft and turbine wheel with threadlocker.',
      ],
      ['- <cover> must be dry.', 'The cover must be dry.'],
    ],
  };

describe.each(Object.entries(SENTENCES))('%s', (verb, rows) => {
  test('has a sentence to read', () => {
    expect(rows.length, verb).toBeGreaterThan(0);
  });

  test.each(rows)('%s', async (instruction, sentence) => {
    expect(await sentenceOf(instruction)).toBe(sentence);
  });
});

test('every verb that the language writes is in the table', () => {
  expect(Object.keys(SENTENCES).sort()).toEqual(Object.keys(writingFor('en').verbs).sort());
});

test('words are marked by what they mean', async () => {
  const { text } = await instructionOf('- { apply: threadlocker, to: cap-nut, with: socket-8 }');
  expect(text.map((run) => `${run.kind}:${run.text}`)).toEqual([
    'text:Apply ',
    'consumable:threadlocker',
    'text: to the ',
    'part:cap nut',
    'text: with the ',
    'tool:8 mm socket',
    'text:.',
  ]);
});

test('own wording replaces the sentence, and the call-out stays', async () => {
  const one = await instructionOf('- { tighten: left-nut, say: Pull <left-nut> up by hand. }');
  expect(textOf(one.text)).toBe('Pull the left nut up by hand.');
  expect(one.torque?.setting).toMatchObject({ kind: 'one', value: { primary: '5 ± 0.5 N·m' } });
});

test.each([
  ['screw', 'screws'],
  ['bush', 'bushes'],
  ['assembly', 'assemblies'],
  ['nut of the clamp', 'nuts of the clamp'],
  ['torque wrench 2–10 N·m', 'torque wrenches 2–10 N·m'],
  ['ring pliers', 'ring pliers'],
])('the plural of %s is %s', (one, many) => {
  expect(plural(one)).toBe(many);
});
