import { describe, expect, test } from 'vitest';
import { inHead, inStep, withFiles, withKit } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'part-not-in-kit';
const LINE = '- { item: 10, part: cover-seal, number: PK-104, quantity: 1';
const MESSAGE =
  'cover-seal: The cover seal is always renewed, but the kit K-PK1 does not hold one; add a line to the kit';

test('one finding stands at the first place that fits it, with the builds', async () => {
  const step = '- install: cover-seal\n- install: cover-seal';
  expect(await reported(withKit(inStep(step), `${LINE}, when: k1-a }`), RULE)).toEqual([`${MESSAGE} (K1-B)`]);
  expect(await reported(withKit(inStep(step), LINE.replace('cover-seal', 'wheel').concat(' }')), RULE)).toEqual([
    MESSAGE,
  ]);
});

test('the first place is that which fits it on such a build', async () => {
  const step = '- install: cover-seal\n  when: k1-a\n- remove: cover\n- press: cover-seal\n  when: k1-b';
  const { findings } = await checkExample(withKit(inStep(step), `${LINE}, when: k1-a }`));
  const [finding] = findings.filter((one) => one.rule === RULE);
  const text = inStep(step).files['procedures/op-9.procedure.yaml'] ?? '';
  expect(text.slice(finding?.span.start).startsWith('cover-seal\n            when: k1-b')).toBe(true);
  expect(finding?.step).toBe('only-step');
  expect(finding?.related.map((one) => one.uri.split('/').at(-1))).toEqual([
    'pellow-k1.kit.yaml',
    'pellow-k1.family.yaml',
  ]);
});

test('a part that is replaced when needed counts, and a trial fit does not', async () => {
  const empty = '- { item: 10, part: wheel, number: PK-104, quantity: 1 }';
  const replaced = '- inspect: cover-seal\n  look-for: cuts\n  if-not: { replace: cover-seal }';
  expect(await reported(withKit(inStep(replaced), empty), RULE)).toEqual([MESSAGE]);
  expect(await reported(withKit(inStep('- install: cover-seal\n  trial: true'), empty), RULE)).toEqual([]);
});

describe('nothing is reported', () => {
  test('where a second kit has it', async () => {
    const kits = 'kit: [../kits/pellow-k1.kit.yaml, ../kits/more.kit.yaml]';
    const files = {
      'kits/more.kit.yaml': `witnessmark: 1\nkit: K-2\nfamily: ../families/pellow-k1.family.yaml\nlines:\n  ${LINE}, when: k1-b }\n`,
    };
    const example = withKit(inHead(kits, '- install: cover-seal'), `${LINE}, when: k1-a }`);
    expect(await reported(withFiles(example, files), RULE)).toEqual([]);
  });

  test('where no kit is named, one cannot be read, or its condition names nothing known', async () => {
    for (const kit of ['kit: []', 'kit: ../kits/gone.kit.yaml']) {
      expect(await reported(inHead(kit, '- install: cover-seal'), RULE)).toEqual([]);
    }
    expect(await reported(withKit(inStep('- install: cover-seal'), `${LINE}, when: k1-z }`), RULE)).toEqual([]);
  });

  test('on builds for which the step does not hold', async () => {
    const step = '- install: cover-seal\n  when: k1-a';
    expect(await reported(withKit(inStep(step), `${LINE}, when: k1-a }`), RULE)).toEqual([]);
  });
});
