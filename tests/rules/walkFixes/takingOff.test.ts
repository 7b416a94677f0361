import { describe, expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { mended, offered } from './mended';

describe('what is in the way comes off before', () => {
  test('a fastener', async () => {
    expect(
      await mended(inStep('- remove: cover'), 'removed-while-fastened', 'Take off the cover screw before this'),
    ).toBe('- remove: cover-screw\n- remove: cover');
  });

  test('a clamp is only loosened', async () => {
    const clamp =
      'parts:\n  cover: { name: cover, sits-on: core, fastened-by: [band] }\n  band: { name: band, kind: clamp, sits-on: core }';
    expect(
      await mended(
        withFamily(inStep('- remove: cover'), clamp),
        'removed-while-fastened',
        'Loosen the band before this',
      ),
    ).toBe('- loosen: band\n- remove: cover');
  });

  test('a list names it first', async () => {
    expect(
      await mended(
        inStep('- remove: [cover, cover-screw]'),
        'removed-while-fastened',
        'Take off the cover screw before the cover',
      ),
    ).toBe('- remove: [cover-screw, cover]');
    const lines = '- remove:\n    - cover\n    - cover-screw';
    expect(await mended(inStep(lines), 'removed-while-fastened', 'Take off the cover screw before the cover')).toBe(
      '- remove:\n    - cover-screw\n    - cover',
    );
  });

  test('a list with a remark in it is left as it is', async () => {
    const lines = '- remove:\n    - cover # by hand\n    - cover-screw';
    expect(await offered(inStep(lines), 'removed-while-fastened')).not.toContain(
      'Take off the cover screw before the cover',
    );
  });

  test('a cover, with what holds it', async () => {
    const steps =
      '- remove: cap-nut\n- install: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10\n- install: cover-seal\n- install: [cover, cover-screw]\n- tighten: cover-screw\n  with: torque-wrench-10';
    expect(await mended(inStep(steps), 'removed-while-covered')).toBe(
      `- remove: cover-screw\n- remove: cover\n${steps}`,
    );
  });

  test('for the builds alone on which it was forgotten', async () => {
    const steps = '- remove: cover-screw\n  when: k1-a\n- remove: cover';
    expect(await mended(inStep(steps), 'removed-while-fastened')).toBe(
      '- remove: cover-screw\n  when: k1-a\n- remove: cover-screw\n  when: k1-b\n- remove: cover',
    );
  });

  test('not where it would be left off then', async () => {
    expect(await offered(inStep('- remove: cap-nut'), 'removed-while-covered')).toEqual([]);
  });
});

test('what is done behind a cover moves before it goes on', async () => {
  const steps =
    '- remove: [cover-screw, cover]\n- install: cover\n# twice\n- clean: wheel\n  using: degreaser\n- say: Look.';
  expect(await mended(inStep(steps), 'out-of-reach', 'Move "clean: wheel" before the cover goes on')).toBe(
    '- remove: [cover-screw, cover]\n# twice\n- clean: wheel\n  using: degreaser\n- install: cover\n- say: Look.',
  );
});

describe('a part that is in place already', () => {
  test('comes off where it was freed', async () => {
    const steps = '- remove: cover-screw\n- say: Clean the bench.\n- install: cover-seal\n- install: cover';
    expect(await offered(inStep(steps), 'fitted-twice')).toEqual([
      'Take off the cover, then the cover seal',
      'Take off the cover',
    ]);
    const wheel =
      '- remove: [cover-screw, cover]\n- remove: cap-nut\n- say: Wait.\n- inspect: wheel\n  if-not: { replace: wheel }\n- install: wheel';
    expect(await mended(inStep(wheel), 'fitted-twice', 'Take off the wheel')).toContain(
      '- remove: cap-nut\n- remove: wheel\n- say: Wait.',
    );
  });

  test('is left out of a list that names others', async () => {
    const steps = '- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, wheel, cover]';
    expect(await mended(inStep(steps), 'fitted-twice', 'Leave the wheel out of "install"')).toContain(
      '- install: [cover-seal, cover]',
    );
  });
});

test('what is taken off twice is left out', async () => {
  const steps = '- remove: cover-screw\n- remove: cover-screw\n- say: Look.';
  expect(await mended(inStep(steps), 'removed-twice', 'Leave "remove: cover-screw" out')).toBe(
    '- remove: cover-screw\n- say: Look.',
  );
});

describe('a blank that must not stay', () => {
  const blank = 'parts:\n  blank: { name: inlet blank, temporary: true, sits-on: core, behind: [cover] }';

  test('comes out before it is closed off', async () => {
    const steps = '- remove: [cover-screw, cover]\n- install: blank\n- say: Blow it out.\n- install: cover';
    expect(
      await mended(withFamily(inStep(steps), blank), 'left-in', 'Take the inlet blank out before it is closed off'),
    ).toBe('- remove: [cover-screw, cover]\n- install: blank\n- say: Blow it out.\n- remove: blank\n- install: cover');
  });

  test('comes out at the end where nothing closes it off', async () => {
    const steps = '- remove: [cover-screw, cover]\n- install: blank\n- say: Blow it out.';
    expect(await mended(withFamily(inStep(steps), blank), 'left-in', 'Take the inlet blank out at the end')).toBe(
      `${steps}\n- remove: blank`,
    );
  });
});

test('what was sent out is taken in again', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal]\n- send: cover\n  to: Plating shop\n- install: [cover-seal, cover]';
  expect(await mended(inStep(steps), 'fitted-without-seat')).toContain(
    '- receive: cover\n- install: [cover-seal, cover]',
  );
});
