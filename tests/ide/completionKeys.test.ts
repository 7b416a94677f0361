import { describe, expect, test } from 'vitest';
import { inFile, inHead, inStep, offeredAt } from './completionExample';
import { example, FAMILY, KIT, STORES, steps } from './markedExample';

describe('keys', () => {
  test('an instruction begins with a verb, or is a text', async () => {
    const { labels } = await inStep('- ‸');
    expect(labels.slice(0, 5)).toEqual(['loosen', 'remove', 'install', 'seat', 'tighten']);
    expect(labels[26]).toBe('say');
    expect(labels.slice(27).sort()).toEqual([
      'caution',
      'figure',
      'note',
      'notice',
      'unless',
      'using',
      'warning',
      'when',
      'with',
    ]);
  });

  test.each([
    ['- tig‸'],
    ['- clean: wheel\n- tig‸\n- clean: cover'],
    ['‸'],
    ['tig‸'],
    ['- { tig‸ }'],
    ['- tig‸hten: wheel'],
  ])('a verb is offered where it is half typed: %j', async (text) =>
    expect((await inStep(text)).labels).toContain('tighten'),
  );

  test('no verb is offered in a sentence', async () => {
    expect((await inStep('- Turn the ‸')).labels).toEqual([]);
    expect((await inStep('- T‸')).labels).toEqual([]);
  });

  test.each([
    ['- tighten: cap-nut\n  ‸'],
    ['- tighten: cap-nut\n  to‸'],
    ['- tighten: cap-nut\n  ‸\n  angle: 30°\n- remove: cover'],
    ['- ‸\n  tighten: cap-nut'],
    ['- { tighten: cap-nut, ‸ }'],
    ['- { tighten: cap-nut, ‸'],
  ])('the keys of the verb are offered, those that are there left out: %j', async (text) => {
    const { labels } = await inStep(text);
    expect(labels[0]).toBe('torque');
    expect(labels.includes('angle')).toBe(!text.includes('angle'));
    expect(labels).not.toContain('tighten');
    expect(labels).not.toContain('remove');
  });

  test('what is needed comes first, and a new entry brings all of it', async () => {
    const kit = await inFile(KIT, 'lines:\n', 'lines:\n  - ‸\n');
    expect(kit.labels).toEqual([
      'part',
      'quantity',
      'item',
      'number',
      'name',
      'when',
      'unless',
      'replaces',
      'superseded-by',
      'note',
    ]);
    expect(kit.snippet('part')).toBe('- part: $1\n  quantity: $2'.replace('\n  ', '\n  '));
    const step = await offeredAt(example(`${steps('- install: wheel')}      - ‸\n`));
    expect(step.snippet('step')).toBe('- step: $1\n  title: $2\n  do:\n    - $3');
    const line = await inFile(KIT, 'quantity: 1 }', '‸ }');
    expect(line.labels[0]).toBe('quantity');
  });

  test('a value is laid out as its key wants it', async () => {
    const family = await inFile(FAMILY, '{ name: core }', '\n    name: core\n    ‸');
    expect(family.snippet('hand')).toBe('hand: $1');
    expect(family.snippet('renew')).toBe(`renew: $\{1|always,on-condition,never|}`);
    expect(family.snippet('serial')).toBe(`serial: $\{1|true,false|}`);
    expect(family.snippet('groove')).toBe('groove: { $1 }');
    expect((await inHead('con‸\n')).snippet('concessions')).toBe('concessions:\n  - $1');
    expect((await inStep('- tighten: cap-nut\n  ‸')).snippet('with')).toBe('with: $1');
    expect((await inStep('- tighten: cap-nut\n  ‸')).line('with')).toBe('with:');
    expect((await inStep('- { measure: end-play, if-not: { ‸ } }')).snippet('do')).toBe(
      '- { measure: end-play, if-not: { do: [$1] } }',
    );
  });

  test('a key that is renamed keeps its colon and its value', async () => {
    const { labels, line } = await inStep('- tighten: cap-nut\n  t‸rque: 5 N·m');
    expect(labels[0]).toBe('torque');
    expect(line('torque')).toBe('torque: 5 N·m');
    expect((await inStep('- tighten: cap-nut\n  ‸: 5 N·m')).line('torque')).toBe('torque: 5 N·m');
  });

  test('on a line of its own below a list, an entry begins with its dash', async () => {
    const { line, labels } = await inStep('‸');
    expect(labels[0]).toBe('loosen');
    expect(line('loosen')).toBe('- loosen:');
    expect((await inStep('- tighten: cap-nut\n  with:\n    ‸')).line('socket-8')).toBe('- socket-8');
  });

  test('every kind of document has its own', async () => {
    expect((await inHead('‸\n')).labels.slice(0, 3)).toEqual(['status', 'covers', 'adds']);
    expect((await inFile(FAMILY, 'base: core\n', '‸\n')).labels).toContain('base');
    expect((await inFile(STORES, 'accuracy: 4 %', '‸')).labels).toContain('resolution');
    expect((await offeredAt({ 'witnessmark.yaml': 'witnessmark: 1\npa‸' })).labels).toContain('paper');
    expect((await offeredAt({ 'witnessmark.yaml': '‸' })).labels[0]).toBe('witnessmark');
  });
});
