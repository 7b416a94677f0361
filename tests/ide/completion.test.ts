import { describe, expect, test } from 'vitest';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import { completionsAt } from '../../server/src/core/ide/completion/complete';
import { openMarks } from '../support/markedText';
import { inFile, inHead, inStep, offeredAt } from './completionExample';
import { example, FAMILY, KIT, STORES, steps } from './markedExample';

const PARTS = ['core', 'cover', 'cover-screw', 'cover-seal', 'wheel', 'cap-nut'];

describe('words', () => {
  test.each<[string, readonly string[]]>([
    ['- install: wheel\n  trial: ‸', ['true', 'false']],
    ['- mark: wheel\n  by: ‸', ['scribe', 'punch', 'paint', 'etch']],
    ['- mark: wheel\n  by: "‸"', ['scribe', 'punch', 'paint', 'etch']],
    ['- mark: wheel\n  by: ‸ # for the fitter', ['scribe', 'punch', 'paint', 'etch']],
    ['- { mark: wheel, by: pu‸', ['scribe', 'punch', 'paint', 'etch']],
    ['- wait: ‸', ['cure']],
  ])('%j', async (text, labels) => expect((await inStep(text)).labels).toEqual(labels));

  test('a grade has a blank in it', async () => {
    const { labels, line } = await inStep('- balance: wheel\n  grade: G 6‸');
    expect(labels).toContain('G 2.5');
    expect(line('G 6.3')).toBe('grade: G 6.3');
  });

  test('what standards name', async () => {
    const thread = await inFile(FAMILY, 'thread: M5×0.8', 'thread: M5‸');
    expect(thread.labels).toEqual(expect.arrayContaining(['M5×0.8', 'M5×0.5', '1/4-28 UNF']));
    expect(thread.find('M5×0.8').detail).toBe('coarse, ISO 261');
    const { labels } = await inFile(FAMILY, 'kind: nut,', 'kind: nut, property-class: ‸,');
    expect(labels).toEqual(expect.arrayContaining(['8.8', '10', 'A2-70']));
  });

  test('the numbers of the other lines of a kit', async () => {
    const { labels, find } = await inFile(KIT, 'lines:\n', 'lines:\n  - { part: wheel, replaces: ‸, quantity: 1 }\n');
    expect(labels).toEqual(['PK-104']);
    expect(find('PK-104').detail).toBe('cover seal');
  });

  test('of a list, those that it has are left out', async () => {
    const { labels } = await inFile(FAMILY, '{ name: core }', '{ name: core, before-fitting: [clean, ‸] }');
    expect(labels.slice(0, 2)).toEqual(['inspect', 'lubricate']);
  });

  test('in the settings', async () => {
    const at = async (text: string) => (await offeredAt({ 'witnessmark.yaml': `witnessmark: 1\n${text}` })).labels;
    expect(await at('paper: ‸')).toEqual(['a4', 'letter']);
    expect(await at('language: ‸')).toEqual(['en', 'de', 'es']);
    expect(await at('severities:\n  torque-missing: ‸')).toEqual(['error', 'warning', 'info', 'off']);
    expect(await at('severities:\n  tor‸')).toContain('torque-missing');
    expect((await at('units: { torque: [N·m, ‸] }')).slice(0, 2)).toEqual(['lbf·ft', 'lbf·in']);
  });

  test('nothing in a comment, before a key and behind a bracket', async () => {
    for (const text of [
      '- install: wheel # ‸',
      '# ‸',
      '- install: [wheel] ‸',
      '-‸',
      '‸ - install: wheel',
      '- tighten: |‸',
      '- install: wheel ‸',
      '- install: [wheel ‸]',
      '- install: wheel\n    ‸',
    ]) {
      expect((await inStep(text)).labels).toEqual([]);
    }
  });
});

describe('while one types', () => {
  test('what is changed before the cursor counts at once, and what stands behind does not', async () => {
    const { snapshot, document, marked } = await openMarks(
      example(steps('- remove: cover\n- loosen: cap-nut\n- tighten: ‸')),
    );
    const ranks = (text: string, offset: number) => {
      const now = withOtherText(snapshot, document, text);
      const found = completionsAt({ ...now, offset })?.candidates ?? [];
      return Object.fromEntries(found.map(({ label, why }) => [label, why]));
    };
    const { text } = document;
    const first = ranks(text, marked.offset);
    expect(first['cap-nut']).toBe('finger-tight here');
    expect(ranks(`${text}          - install: cover\n`, marked.offset)).toEqual(first);
    const removed = text.replace('loosen: cap-nut', 'remove: cap-nut');
    expect(ranks(removed, marked.offset)['cap-nut']).not.toBe('finger-tight here');
    expect(ranks(text, marked.offset)).toEqual(first);
  });
});

describe('ids', () => {
  test.each([
    ['- discard: ‸'],
    ['- discard:‸'],
    ['- discard: [‸]'],
    ['- discard:\n    - ‸'],
    ['- discard: "‸"'],
    ['- { discard: ‸'],
  ])('parts: %j', async (text) => expect([...(await inStep(text)).labels].sort()).toEqual([...PARTS].sort()));

  test('a blank is put between a colon and its value', async () => {
    expect((await inStep('- discard:‸')).line('wheel')).toBe('- discard: wheel');
    expect((await inStep('- discard: ‸')).line('wheel')).toBe('- discard: wheel');
  });

  test('parts that the walk finds can be tightened come first, with the reason why others cannot', async () => {
    const { labels, find } = await inStep('- remove: cover\n- loosen: cap-nut\n- tighten: ‸');
    expect(labels[0]).toBe('cap-nut');
    expect(find('cap-nut').why).toBe('finger-tight here');
    expect(find('cover-screw').why).toBe('not fitted here');
  });

  test('what the list has is left out, and tools of the stores that suit come first', async () => {
    const { labels } = await inStep('- tighten: cap-nut\n  with: [socket-8, ‸]');
    expect(labels[0]).toBe('torque-wrench-10');
    expect(labels).not.toContain('socket-8');
    expect((await inStep('- tighten: cap-nut\n  with:\n    - socket-8\n    - ‸')).labels).not.toContain('socket-8');
  });

  test('a thing is told by its name', async () => {
    expect((await inStep('- apply: ‸')).labels).toEqual(['threadlocker', 'degreaser']);
    expect((await inStep('- tighten: cap-nut\n  with: ‸')).find('socket-8').detail).toBe('8 mm socket');
  });

  test.each<[string, readonly string[]]>([
    ['- measure: ‸', ['end-play']],
    ['- identify: ‸', ['nut-hand']],
    ['- check: ‸', ['free-turn']],
    ['- measure: end-play\n  if-not: { go-to: ‸ }', ['fit-wheel']],
    ['- wait: cure\n  of: ‸', ['threadlocker', 'degreaser']],
  ])('%j', async (text, labels) => expect((await inStep(text)).labels).toEqual(labels));

  test('one goes back to the step before rather than to a later one', async () => {
    const text = steps('- measure: end-play\n  if-not: { go-to: ‸ }');
    const other = (id: string) => `      - step: ${id}\n        title: ${id}\n        do: [Look at it.]\n`;
    const before = text.replace('      - step: fit-wheel', `${other('aaa')}${other('bbb')}      - step: fit-wheel`);
    const behind = before + other('later-on');
    expect((await offeredAt(example(behind))).labels).toEqual(['fit-wheel', 'bbb', 'aaa', 'later-on']);
  });

  test('in the head of a procedure and in its concessions', async () => {
    expect((await inHead('starts: ‸\n')).labels).toEqual(['assembled', 'parts']);
    expect((await inHead('covers: { options: [‸] }\n')).labels).toEqual(['big-wheel']);
    expect((await inHead('concessions:\n  - at: ‸\n')).labels).toEqual(['fit-wheel']);
    expect((await inHead('concessions:\n  - rule: tol‸\n')).labels).toContain('tolerance-missing');
  });

  test('in a family and in a kit', async () => {
    expect((await inFile(FAMILY, 'base: core', 'base: ‸')).labels).toEqual(PARTS);
    expect((await inFile(FAMILY, 'sits-on: core, fast', 'sits-on: { ‸ }, fast')).labels).toEqual(PARTS);
    expect((await inFile(KIT, 'part: cover-seal', 'part: ‸')).labels).toEqual(PARTS);
    expect(
      (await inFile(FAMILY, 'accept: 0.04..0.09 mm }', 'accept: 0.04..0.09 mm, void-by: [wheel, ‸] }')).labels,
    ).not.toContain('wheel');
  });

  test('with a sign, each by its id', async () => {
    const limits = 'limits:\n';
    const { labels } = await inFile(
      FAMILY,
      limits,
      `dimensions: { bore: 8 mm, shaft: 7 mm }\n${limits}  play: { from: [+bore, ‸] }\n`,
    );
    expect(labels).toEqual(['+shaft', '-shaft']);
    const minus = await inFile(FAMILY, limits, `dimensions: { bore: 8 mm }\n${limits}  play: { from: [-‸] }\n`);
    expect(minus.labels).toEqual(['-bore']);
  });
});

describe('quantities', () => {
  test.each<[string, string]>([
    ['5‸', 'torque: 5 N·m'],
    ['5 ‸', 'torque: 5 N·m'],
    ['5 N‸', 'torque: 5 N·m'],
    ['5.1 ± 0.3 ‸', 'torque: 5.1 ± 0.3 N·m'],
    ['4.8..5.4 Nm‸', 'torque: 4.8..5.4 N·m'],
    ['{ k1-a: 5 ‸, k1-b: 6 N·m }', 'torque: { k1-a: 5 N·m, k1-b: 6 N·m }'],
  ])('a torque: %j', async (text, line) => {
    const offered = await inStep(`- tighten: cap-nut\n  torque: ${text}`);
    expect(offered.labels.slice(0, 3)).toEqual(['N·m', 'lbf·ft', 'lbf·in']);
    expect(offered.line('N·m')).toBe(line);
  });

  test('the units of the settings come first', async () => {
    const source = example(steps('- tighten: cap-nut\n  torque: 5 ‸'));
    const { labels } = await offeredAt({
      'witnessmark.yaml': 'witnessmark: 1\nunits: { torque: [lbf·in, N·m] }\n',
      ...source,
    });
    expect(labels.slice(0, 3)).toEqual(['lbf·in', 'N·m', 'lbf·ft']);
  });

  test('a tolerance may be in per cent, and behind a torque an angle is added', async () => {
    expect((await inStep('- tighten: cap-nut\n  torque: 5 N·m ± 6 ‸')).labels).toContain('%');
    const angle = await inStep('- tighten: cap-nut\n  torque: 2 N·m + 110‸');
    expect(angle.labels[0]).toBe('°');
    expect(angle.line('°')).toBe('torque: 2 N·m + 110°');
  });

  test('what is measured tells the units', async () => {
    expect((await inStep('- measure: end-play\n  accept: ≤ 0.05 ‸')).labels[0]).toBe('mm');
    expect((await inStep('- heat: wheel\n  until: 120 ‸')).labels).toEqual(['°C', '°F', 'K']);
    expect((await inFile(STORES, 'range: 2..10 N·m', 'range: 2..10 ‸')).labels[0]).toBe('N·m');
    expect((await inFile(STORES, 'accuracy: 4 %', 'accuracy: 4 ‸')).labels[0]).toBe('%');
    expect((await inFile(STORES, 'resolution: 0.001 mm', 'resolution: 0.001 ‸')).labels[0]).toBe('mm');
  });

  test('what the family states for just this place is offered, and nothing else', async () => {
    expect((await inStep('- tighten: cap-nut\n  torque: ‸')).labels).toEqual(['4.6 ± 0.3 N·m']);
    expect((await inStep('- tighten: wheel\n  torque: ‸')).labels).toEqual([]);
    expect((await inStep('- measure: end-play\n  accept: ‸')).labels).toEqual(['0.04..0.09 mm', 'record-only']);
  });
});

describe('builds and outcomes', () => {
  const NAMES = [
    'k1-a',
    'k1-b',
    'big-wheel',
    'nut-hand=left',
    'nut-hand=right',
    'arrives=big-wheel',
    'wheel=renewed',
    'wheel=re-used',
  ];

  test.each([['when: ‸'], ['unless: [‸]'], ['when: { none: [‸] }'], ['when: nut-hand=‸'], ['when: { all: ‸ }']])(
    'in a condition: %j',
    async (text) => expect((await inStep(`- install: wheel\n  ${text}`)).labels).toEqual(NAMES),
  );

  test('in an entry of a condition, which may be a map again', async () => {
    const { labels, line } = await inStep('- install: wheel\n  when:\n    - ‸');
    expect(labels).toEqual([...NAMES, 'all', 'any', 'none']);
    expect(line('none')).toBe('- none:');
  });

  test('a condition that is a map', async () => {
    const { labels, snippet } = await inStep('- install: wheel\n  when: { all: [k1-a], ‸ }');
    expect(labels).toEqual(['any', 'none']);
    expect(snippet('none')).toContain('none: $1');
  });

  test.each([['torque: { ‸ }'], ['torque:\n    k1-b: 5 N·m\n    ‸']])(
    'the keys of a value by build: %j',
    async (text) => {
      const { labels } = await inStep(`- tighten: cap-nut\n  ${text}`);
      expect(labels).toEqual([...NAMES.filter((one) => !text.includes(one)), 'otherwise']);
    },
  );

  test('in a kit and in a family', async () => {
    expect((await inFile(KIT, 'quantity: 1', 'quantity: 1, when: ‸')).labels).toEqual(NAMES);
    expect((await inFile(FAMILY, 'hand: { k1-a: right', 'hand: { ‸')).labels).toContain('otherwise');
  });
});

describe('mentions', () => {
  test.each<[string, string]>([
    ['- say: Turn the <‸ now.', '- say: Turn the <cap-nut> now.'],
    ['- say: Turn the <ca‸', '- say: Turn the <cap-nut>'],
    ['- say: Turn the <ca‸p>.', '- say: Turn the <cap-nut>.'],
    ['- Turn the <‸', '- Turn the <cap-nut>'],
    ['- say: "Turn the <‸"', '- say: "Turn the <cap-nut>"'],
    ['- say: |\n    Go on.\n    Turn the <‸ now.', 'Turn the <cap-nut> now.'],
    ['- say: Go on, and\n    turn the <‸', 'turn the <cap-nut>'],
    ['- say: { text: Go on., de: "Die <‸" }', '- say: { text: Go on., de: "Die <cap-nut>" }'],
    ['- inspect: wheel\n  look-for:\n    - dents of the <‸', '- dents of the <cap-nut>'],
  ])('%j', async (text, line) => expect((await inStep(text)).line('cap-nut')).toBe(line));

  test('an id that two kinds share is written with its kind', async () => {
    const source = example(steps('- say: Turn the <‸'), {
      [STORES]: [['  socket-8:', '  wheel: { name: hand wheel }\n  socket-8:']],
    });
    const { labels, line } = await offeredAt(source);
    expect(labels).toContain('part/wheel');
    expect(line('tool/wheel')).toBe('- say: Turn the <tool/wheel>');
    expect(labels).not.toContain('wheel');
  });

  test('behind a kind, only what is of that kind', async () => {
    expect((await inStep('- say: Do <check/‸')).labels).toEqual(['check/free-turn']);
  });

  test('a text offers nothing else', async () => {
    for (const text of ['- say: Turn the ‸', '- say: |\n    with: ‸', '- say: 5 ‸', '- say: Turn it,\n    with: ‸']) {
      expect((await inStep(text)).labels).toEqual([]);
    }
  });
});

describe('paths', () => {
  test('documents of the right kind, as this document names them', async () => {
    const source = example(steps('- install: wheel').replace(/family: .*\n/, 'family: ‸\n'));
    const { labels } = await offeredAt(source, ['old/k0.family.yaml', 'other.kit.yaml']);
    expect(labels).toEqual([FAMILY, 'old/k0.family.yaml']);
    const kit = example(steps('- install: wheel').replace(/kit: .*\n/, 'kit: [‸]\n'));
    expect((await offeredAt(kit)).labels).toEqual([KIT]);
  });
});
