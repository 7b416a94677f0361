import { describe, expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { mended, offered } from './mended';

const HAND =
  'identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { nut-hand=left: left, nut-hand=right: right }, torque: 4.6 ± 0.3 N·m, behind: [cover] }';

describe('what only the bench can tell is found out first', () => {
  test('before a fastener is turned', async () => {
    const steps = '- remove: [cover-screw, cover]\n- loosen: cap-nut';
    expect(await mended(withFamily(inStep(steps), HAND), 'hand-not-identified')).toBe(
      '- remove: [cover-screw, cover]\n- identify: nut-hand\n- loosen: cap-nut',
    );
  });

  test('by the instruction that does so later', async () => {
    const steps = '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- identify: nut-hand\n  with: socket-8';
    expect(await mended(withFamily(inStep(steps), HAND), 'hand-not-identified')).toBe(
      '- remove: [cover-screw, cover]\n- identify: nut-hand\n  with: socket-8\n- loosen: cap-nut',
    );
  });

  test('before a condition asks for it', async () => {
    const steps = '- say: Look.\n- say: Turn to the left.\n  when: nut-hand=left';
    expect(
      await mended(withFamily(inStep(steps), HAND), 'decided-too-late', 'Identify the hand of the nut first'),
    ).toBe('- say: Look.\n- identify: nut-hand\n- say: Turn to the left.\n  when: nut-hand=left');
  });
});

const ROTOR =
  'parts:\n  shaft: { name: shaft, sits-on: core }\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }';
const OFF = '- remove: [cover-screw, cover, cap-nut]';

describe('marks', () => {
  test('are made before a part comes off', async () => {
    expect(await mended(withFamily(inStep(`${OFF}\n- remove: wheel`), ROTOR), 'mark-missing')).toBe(
      `${OFF}\n- mark: wheel\n  across: shaft\n- remove: wheel`,
    );
  });

  test('are aligned by when the part is back', async () => {
    const steps = `${OFF}\n- remove: wheel\n- install: wheel`;
    const title = 'Mark the wheel and the shaft before it comes off, and align it when it is back';
    expect(await mended(withFamily(inStep(steps), ROTOR), 'mark-missing', title)).toBe(
      `${OFF}\n- mark: wheel\n  across: shaft\n- remove: wheel\n- install: wheel\n- align: wheel\n  to: shaft`,
    );
  });

  test('of parts that may be renewed are aligned where they are not', async () => {
    const renewable = ROTOR.replace('sits-on: core }', 'sits-on: core, renew: on-condition }');
    const steps = `${OFF}\n- mark: wheel\n  across: shaft\n- remove: wheel\n- inspect: shaft\n  if-not: { replace: shaft }\n- install: wheel`;
    expect(await mended(withFamily(inStep(steps), renewable), 'alignment-missing')).toMatch(
      /- install: wheel\n- align: wheel\n {2}to: shaft(\n|$)/,
    );
  });

  test('are not guessed where several parts could bear the other half', async () => {
    const three = ROTOR.replace('members: [shaft, wheel]', 'members: [shaft, wheel, cover]');
    expect(await offered(withFamily(inStep(`${OFF}\n- remove: wheel`), three), 'mark-missing')).toEqual([]);
  });
});
