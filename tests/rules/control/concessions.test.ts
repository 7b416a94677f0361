import { describe, expect, test } from 'vitest';
import { type Example, inHead, withFiles } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const UNIT_MISSING = '- tighten: cap-nut\n  torque: 45';

function conceding(step: string, more: { rule?: string; at?: string; until?: string; about?: string } = {}): Example {
  const { rule = 'torque-unit-missing', at = 'only-step', until = '2026-11-01', about } = more;
  const lines = [
    `  - rule: ${rule}`,
    `    at: ${at}`,
    ...(about === undefined ? [] : [`    about: ${about}`]),
    '    because: the maker gives a bare number',
    '    by: M. Oduya',
    `    until: ${until}`,
  ];
  return inHead(['concessions:', ...lines].join('\n'), step);
}

describe('concession-expired', () => {
  test('the last day still counts', async () => {
    const example = conceding(UNIT_MISSING);
    expect(await reported(example, 'concession-expired', '2026-11-01')).toEqual([]);
    expect(await reported(example, 'concession-expired', '2026-11-02')).toEqual([
      '2026-11-01: The concession for torque-unit-missing ran out on 2026-11-01; mend what it let stand, or have it allowed anew',
    ]);
    expect(await reported(example, 'torque-unit-missing', '2026-11-02')).toHaveLength(1);
  });

  test('one that has run out is not called unused as well', async () => {
    expect(await reported(conceding('- remove: cover', { until: '2020-01-01' }), 'concession-unused')).toEqual([]);
  });
});

describe('concession-unused', () => {
  test('one that matches nothing can be removed', async () => {
    const example = conceding('- remove: cover');
    expect(await reported(example, 'concession-unused')).toEqual([
      'torque-unit-missing: Nothing at only-step needs the concession for torque-unit-missing any more; remove the concession',
    ]);
    const mended = await fixed(example, 'concession-unused');
    expect(mended.files[mended.at]).not.toContain('concessions');
    expect(mended.files[mended.at]).toContain('consumables: [threadlocker, degreaser]\nphases:');
  });

  test('one of several is removed with all its lines', async () => {
    const [used, unused] = [conceding(UNIT_MISSING), conceding(UNIT_MISSING, { rule: 'tool-unknown' })];
    const entry = (unused.files[unused.at] ?? '').match(/ {2}- rule: tool-unknown[\s\S]*?until: .*\n/)?.[0] ?? '';
    const text = (used.files[used.at] ?? '').replace('concessions:\n', `concessions:\n${entry}`);
    const example = withFiles(used, { [used.at]: text });
    const mended = await fixed(example, 'concession-unused');
    expect(mended.files[mended.at]).toBe(used.files[used.at]);
  });

  test('one that matches several lets none stand, and the fix names the one that is meant', async () => {
    const step = '- loosen: cap-nut\n  with: [socket-9, socket-11]';
    const example = conceding(step, { rule: 'tool-unknown' });
    expect(await reported(example, 'concession-unused')).toEqual([
      'tool-unknown: This concession matches 2 findings of tool-unknown and so lets none stand; name under "about" the one that is meant: socket-9 or socket-11',
    ]);
    expect(await offered(example, 'concession-unused')).toEqual([
      'Let the finding about socket-9 stand',
      'Let the finding about socket-11 stand',
    ]);
    const mended = await checkExample(await fixed(example, 'concession-unused'));
    expect(mended.conceded.map(({ finding }) => finding.about)).toEqual([['socket-9']]);
    expect(mended.findings.filter((one) => one.rule === 'tool-unknown').map((one) => one.about)).toEqual([
      ['socket-11'],
    ]);
  });

  test('one that names the wrong ids is told so', async () => {
    const example = conceding('- loosen: cap-nut\n  with: socket-9', { rule: 'tool-unknown', about: 'socket-99' });
    expect(await reported(example, 'concession-unused')).toEqual([
      'tool-unknown: No finding of tool-unknown at only-step is about socket-99; correct "about", or remove the concession',
    ]);
  });

  test('nothing is said of an unknown rule or step, or where a link is broken', async () => {
    for (const example of [
      conceding('- remove: cover', { rule: 'no-such-rule' }),
      conceding('- remove: cover', { at: 'no-such-step' }),
      withFiles(conceding('- remove: cover'), { 'families/pellow-k1.family.yaml': '' }),
    ]) {
      expect(await reported(example, 'concession-unused')).toEqual([]);
    }
  });
});

test('a half-typed instruction may be the one that still needs the concession', async () => {
  expect(await reported(conceding('- tighten: cap-nut\n  torque:'), 'concession-unused')).toEqual([]);
});
