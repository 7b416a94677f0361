import { describe, expect, test } from 'vitest';
import { type Example, inHead, inStep, withFiles } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'tool-named-in-prose';
const STORES = `witnessmark: 1
stores: Bay 1
tools:
  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m }
  torque-wrench-50: { name: torque wrench 10–50 N·m, kind: torque-wrench, range: 10..50 N·m }
  ring-pliers: { name: internal retaining-ring pliers, kind: ring-pliers, also: [circlip pliers] }
  pliers: { name: pliers, kind: pliers }
  press: { name: press, kind: press }
  socket-8: { name: 8 mm socket, kind: socket, size: 8 mm }
  dial-gauge: { name: dial gauge, kind: indicator }
consumables:
  degreaser: { name: degreaser, kind: solvent }
`;

function saying(sentence: string, more = ''): Example {
  return withFiles(inStep(`- say: "${sentence}"${more}`), { 'stores/bay-1.stores.yaml': STORES });
}

async function named(sentence: string, more = ''): Promise<string[]> {
  return (await reported(saying(sentence, more), RULE)).map((one) => one.slice(0, one.indexOf(':')));
}

describe('names are found', () => {
  test.each([
    ['Set the dial gauge on the nose.', ['dial gauge']],
    ['Set both DIAL GAUGES on the nose.', ['DIAL GAUGES']],
    ['Open the ring with circlip-pliers.', ['circlip-pliers']],
    ['Open the ring with internal retaining ring pliers.', ['internal retaining ring pliers']],
    ['Turn it with the torque wrench.', ['torque wrench']],
    ['Seat it in the press.', ['press']],
    ['Do not lift it without the dial gauge on it.', ['dial gauge']],
    ['Never turn it by anything but the 8 mm socket.', ['8 mm socket']],
    ['Do not hit it. Use the press.', ['press']],
  ])('%s', async (sentence, wanted) => {
    expect(await named(sentence)).toEqual(wanted);
  });
});

describe('nothing is reported', () => {
  test.each([
    ['a part of a longer word', 'Use the 18 mm socket, the 8 mm socket head screw and a dial-gauge-like pointer.'],
    ['a mention', 'Set the <dial-gauge> on the nose.'],
    ['a command that sounds like a tool', 'Press the sleeve, then press it again.'],
    ['a tool that must not be used', 'Do not use a dial gauge.'],
    ['several that must not be used', 'Never use circlip pliers, a press or a torque wrench.'],
    ['a tool to do without', 'Feel the play without a dial gauge.'],
    ['a tool that another takes the place of', 'Feel the play instead of using the dial gauge.'],
    ['a tool that is forbidden afterwards', 'The press must not be used here.'],
    ['two sentences that meet', 'Look at the dial. Gauge the play by eye.'],
  ])('for %s', async (_, sentence) => {
    expect(await named(sentence)).toEqual([]);
  });

  test('for a tool under "with", of whatever size', async () => {
    expect(await named('Turn it with the torque wrench.', '\n  with: torque-wrench-50')).toEqual([]);
  });

  test('for a warning about what another instruction of the step uses', async () => {
    const step = '- measure: end-play\n  with: dial-gauge\n- remove: wheel\n  caution: The dial gauge can fall.';
    expect(await reported(inStep(step), RULE)).toEqual([]);
    expect(await reported(inStep(step.replace('\n  with: dial-gauge', '')), RULE)).toHaveLength(1);
  });

  test('where a part has the longer name', async () => {
    const example = withFiles(saying('Grip the pliers pin.'), {
      'families/pellow-k1.family.yaml':
        'witnessmark: 1\nfamily: pellow-k1\nname: K1\nbase: core\nparts:\n  core: { name: core }\n  pin: { name: pliers pin }\n',
    });
    expect(await reported(example, RULE)).toEqual([]);
  });
});

describe('the fix', () => {
  test('offers every size where the words leave it open', async () => {
    expect(await offered(saying('Turn it with the torque wrench.'), RULE)).toEqual([
      'Add torque-wrench-10 to "with"',
      'Add torque-wrench-50 to "with" and to the list of tools',
    ]);
  });

  test.each([
    ['- Set the dial gauge.', '- say: Set the dial gauge.\n            with: dial-gauge\n'],
    ['- { say: Set the dial gauge. }', '- { say: Set the dial gauge., with: dial-gauge }\n'],
    [
      '- remove: cover # lift\n  say: Set the dial gauge.\n  note: x',
      '  say: Set the dial gauge.\n            with: dial-gauge\n            note: x\n',
    ],
    ['- say: Set the dial gauge.\n  with: socket-8', 'with: [socket-8, dial-gauge]\n'],
    ['- say: Set the dial gauge.\n  with: [socket-8]', 'with: [socket-8, dial-gauge]\n'],
    [
      '- say: Set the dial gauge.\n  with: { tool: socket-8, count: 2 }',
      'with: [{ tool: socket-8, count: 2 }, dial-gauge]\n',
    ],
    ['- say: >\n    Set the\n    dial gauge.', '    dial gauge.\n            with: dial-gauge\n'],
  ])('adds the tool to %s', async (step, wanted) => {
    const mended = await fixed(inStep(step), RULE);
    expect(mended.files[mended.at]).toContain(wanted);
    expect(await reported(mended, RULE)).toEqual([]);
  });

  test('lists the tool as well where it is not listed', async () => {
    const mended = await fixed(
      inHead('tools: [socket-8]', '- Set the dial gauge.\n- loosen: cap-nut\n  with: socket-8'),
      RULE,
    );
    expect(mended.files[mended.at]).toContain('tools: [socket-8, dial-gauge]\n');
  });
});
