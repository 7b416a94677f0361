import { describe, expect, test } from 'vitest';
import { prepareRename, renameAt } from '../../server/src/core/ide/rename';
import { applyEdits } from '../../server/src/core/text/span';
import { openMarks, readMarks, variantsOf } from '../support/markedText';
import { MemoryFiles } from '../support/memoryFiles';
import { example, FAMILY, KIT, PROCEDURE, STORES, steps } from './markedExample';

/** Renames what stands at `‸`: the files with the new name, or why not. */
async function renamed(
  source: Readonly<Record<string, string>>,
  name: string,
): Promise<Record<string, string> | string> {
  const { marked, snapshot, document } = await openMarks(source);
  const renaming = renameAt(snapshot, document, marked.offset, name);
  if (renaming.is === 'refused') return renaming.why;
  const files = { ...marked.files };
  for (const path of Object.keys(files)) {
    const uri = `${MemoryFiles.ROOT}/${path}`;
    const edits = renaming.edits.filter((one) => one.uri === uri).map((one) => one.edit);
    files[path] = applyEdits(files[path] ?? '', edits);
  }
  return files;
}

/** Renames what stands at `‸` and expects exactly what stands in `⟦…⟧` to have the new name. */
async function checkRename(source: Readonly<Record<string, string>>, name: string): Promise<void> {
  for (const variant of variantsOf(source)) {
    const wanted = Object.fromEntries(
      Object.entries(variant).map(([path, text]) => [path, text.replace('‸', '').replace(/⟦[^⟧]*⟧/g, name)]),
    );
    expect(await renamed(variant, name)).toEqual(wanted);
  }
}

const why = (instruction: string, name: string, marks: Parameters<typeof example>[1] = {}) =>
  renamed(example(steps(instruction), marks), name);

describe('renaming', () => {
  test('a part changes it in every document and in every form, and nothing else', async () => {
    const text = steps(
      `- loosen: ⟦whe‸el⟧ # the wheel, not <wheel>

- install: [cover, "⟦wheel⟧"]
  when: { any: [⟦wheel⟧=renewed, k1-b] }
- say: Look at the <⟦wheel⟧>, the <part/⟦wheel⟧> and the wheel.
- say: { text: no part, de: 'x <⟦wheel⟧>' }
- tighten: cap-nut
  torque: { ⟦wheel⟧=re-used: 4 N·m, otherwise: 5 N·m }`,
      `concessions:
  - rule: mark-missing
    at: fit-wheel
    about: [⟦wheel⟧, cap-nut]
`,
    );
    await checkRename(
      example(text, {
        [FAMILY]: [
          ['  wheel: {', '  # The wheel\n  ⟦wheel⟧: {'],
          ['on-condition }', "on-condition }\n  ring: { sits-on: { '⟦wheel⟧': 2 } }"],
        ],
        [KIT]: [['  - { item', '  - { item: 5, part: ⟦wheel⟧ }\n\n  - { item']],
      }),
      'compressor-wheel',
    );
  });

  test.each<[string, string, string, string, ...(readonly [string, string])[]]>([
    [
      'a step',
      '- check: Tight, see <⟦fit-wheel⟧>.\n  if-not: { go-to: ⟦fit‸-wheel⟧ }',
      'mount-wheel',
      PROCEDURE,
      ['step: fit-wheel', 'step: ⟦fit-wheel⟧'],
    ],
    [
      'a variant',
      '- install: wheel\n  when: ⟦k1‸-a⟧',
      'k1-x',
      FAMILY,
      ['  k1-a: {', '  ⟦k1-a⟧: {'],
      ['variants: [k1-a]', 'variants: [⟦k1-a⟧]'],
      ['hand: { k1-a:', 'hand: { ⟦k1-a⟧:'],
    ],
    [
      'an option',
      '- install: wheel\n  when: [arrives=⟦big-‸wheel⟧, ⟦big-wheel⟧]',
      'large-wheel',
      FAMILY,
      ['  big-wheel:', '  ⟦big-wheel⟧:'],
    ],
    [
      'an outcome',
      '- identify: ⟦nut-‸hand⟧\n- install: wheel\n  when: ⟦nut-hand⟧=left',
      'hand',
      FAMILY,
      ['  nut-hand:', '  ⟦nut-hand⟧:'],
    ],
    [
      'the value of an outcome',
      '- install: wheel\n  when: nut-hand=⟦le‸ft⟧',
      'to the left',
      FAMILY,
      ['values: [left', 'values: [⟦left⟧'],
    ],
    ['a check', '- check: ⟦free-‸turn⟧', 'turns', FAMILY, ['  free-turn:', '  ⟦free-turn⟧:']],
    ['a limit', '- measure: ⟦end-‸play⟧', 'play', FAMILY, ['  end-play:', '  ⟦end-play⟧:']],
  ])('%s', async (_, instruction, name, path, ...marks) => {
    await checkRename(example(steps(instruction), { [path]: marks }), name);
  });

  test('a dimension keeps its signs and quotes', async () => {
    const limit = [
      'accept: 0.04..0.09 mm }\n',
      `accept: 0.04..0.09 mm, from: [+⟦bore⟧, "-⟦bo‸re⟧"] }\ndimensions:\n  ⟦bore⟧: 8 mm\n`,
    ] as const;
    await checkRename(example(steps('- install: wheel'), { [FAMILY]: [limit] }), 'bearing-bore');
  });

  test('a tool, also where a family mentions it', async () => {
    const text = steps('- tighten: cap-nut\n  with: [⟦socket-8⟧]').replace(
      'socket-8, socket-10',
      '⟦socket-8⟧, socket-10',
    );
    const marks = {
      [STORES]: [['  socket-8:', '  ⟦so‸cket-8⟧:']],
      [FAMILY]: [['turns freely', 'takes <⟦socket-8⟧>']],
    } as const;
    await checkRename(example(text, marks), 'socket-8mm');
  });

  test('to a name that something of another kind has writes the kind where it has to be told', async () => {
    const text = steps('- say: Turn <cap-‸nut>, then check <free-turn>.');
    const after = await renamed(example(text), 'free-turn');
    expect(after).toMatchObject({ [PROCEDURE]: steps('- say: Turn <part/free-turn>, then check <check/free-turn>.') });
  });

  test('to a name that somebody has written ahead is no obstacle', async () => {
    const after = await renamed(example(steps('- install: whe‸el\n- inspect: new-wheel')), 'new-wheel');
    expect(after).toMatchObject({ [PROCEDURE]: steps('- install: new-wheel\n- inspect: new-wheel') });
  });

  test('one of two with the same id tells them apart: what names the id means the first', async () => {
    const twice = (first: string, second: string, id: string) =>
      example(
        steps(`- check: Tight.\n  if-not: { go-to: ${id} }`)
          .replace('step: fit-wheel', `step: ${first}`)
          .concat(`      - step: ${second}\n        title: Again\n        do: [Wait.]\n`),
      );
    const second = await renamed(twice('fit-wheel', 'fit-‸wheel', 'fit-wheel'), 'fit-again');
    expect(second).toEqual(twice('fit-wheel', 'fit-again', 'fit-wheel'));
    const first = await renamed(twice('fit-‸wheel', 'fit-wheel', 'fit-wheel'), 'fit-first');
    expect(first).toEqual(twice('fit-first', 'fit-wheel', 'fit-first'));
  });

  test('to the same name changes nothing', async () => {
    const source = example(steps('- install: whe‸el'));
    expect(await renamed(source, 'wheel')).toEqual(readMarks(source).files);
  });
});

describe('a renaming is refused', () => {
  test.each([
    ['New', '"New" can be no id: write three or more small letters, digits or hyphens, a letter first'],
    ['ab', '"ab" can be no id: write three or more small letters, digits or hyphens, a letter first'],
    ['any', '"any" can be no id: it is a word of its own in conditions'],
    ['arrives', '"arrives" can be no id: it is a word of its own in conditions'],
    ['cover', 'The id "cover" is that of a part in k1.family.yaml already'],
    ['nut-hand', 'The id "nut-hand" is that of a thing to identify in k1.family.yaml already'],
  ])('to %s', async (name, reason) => {
    expect(await why('- install: whe‸el', name)).toBe(reason);
  });

  test('where a variant would get the id of an option, and a value that of another', async () => {
    expect(await why('- say: x\n  when: k1-‸a', 'big-wheel')).toBe(
      'The id "big-wheel" is that of an option in k1.family.yaml already',
    );
    expect(await why('- say: x\n  when: nut-hand=le‸ft', 'right')).toBe('nut-hand has the value "right" already');
    expect(await why('- say: x\n  when: nut-hand=le‸ft', 'a=b')).toMatch(/^"a=b" can be no value/);
  });

  test('where another document that sees both has the name', async () => {
    const second = { 'second.stores.yaml': 'witnessmark: 1\nstores: Bay 2\ntools:\n  socket-9: { name: other }\n' };
    const text = steps('- tighten: cap-nut\n  with: socket-‸8').replace(
      'bay.stores.yaml',
      '[bay.stores.yaml, second.stores.yaml]',
    );
    expect(await renamed({ ...example(text), ...second }, 'socket-9')).toBe(
      'The id "socket-9" is that of a tool in second.stores.yaml already',
    );
  });

  test('where the name is a word of the place that it stands in', async () => {
    const family = ['checks:\n', 'assemblies:\n  core-assembly: { parts: [core] }\nchecks:\n'] as const;
    const text = steps('- install: wheel', 'starts: core-‸assembly\n');
    expect(await renamed(example(text, { [FAMILY]: [family] }), 'assembled')).toBe(
      '"assembled" would mean something else on line 10 of op.procedure.yaml',
    );
  });

  test('where a broken place that names it cannot be read', async () => {
    const broken = `${steps('- install: whe‸el')}      - step: next\n        do: [{ remove: "wheel }]\n`;
    expect(await renamed(example(broken), 'new-wheel')).toMatch(
      /^What begins on line \d+ of op\.procedure\.yaml cannot be read, and may name "wheel"; mend it first$/,
    );
  });

  test.each([
    ['a path', 'family: k1.fam‸ily.yaml', 'A path follows its file; rename the file itself'],
    ['a word', 'title: Reb‸uild', 'Only an id can be renamed, as that of a part, a tool or a step'],
    ['a key', 'ti‸tle: Rebuild', 'Only an id can be renamed, as that of a part, a tool or a step'],
    ['a rule', 'concessions: [{ rule: torque-‸missing }]', 'The id of a rule is fixed'],
    ['an unknown id', 'adds: small-‸wheel', 'Nothing has the id "small-wheel" here, so there is nothing to rename'],
    [
      'a word of the format',
      'note: x\nphases: [{ phase: A, when: wheel=ren‸ewed }]',
      '"renewed" is a word of the format; only the part before it has a name to change',
    ],
  ])('of %s, before a name is asked for', async (_, line, reason) => {
    const head = steps('- install: wheel').split('phases:')[0] ?? '';
    const key = line.slice(0, line.indexOf(':')).replace('‸', '');
    const text = `${head.replace(new RegExp(`^${key}: .*\n`, 'm'), '')}${line}\n`;
    const { marked, snapshot, document } = await openMarks(example(text));
    expect(prepareRename(snapshot, document, marked.offset)).toEqual({ is: 'refused', why: reason });
  });

  test('of a mention that may mean two things', async () => {
    const check = ['checks:\n', 'checks:\n  cap-nut: { say: It is tight. }\n'] as const;
    expect(await why('- say: See <cap-‸nut>.', 'lock-nut', { [FAMILY]: [check] })).toBe(
      '"cap-nut" is the id of a part and of a check; rename it where the one that you mean is declared',
    );
  });
});

test('what can be renamed tells its name without quotes and signs', async () => {
  const { marked, snapshot, document } = await openMarks(example(steps('- install: "whe‸el"')));
  const start = prepareRename(snapshot, document, marked.offset);
  expect(start).toMatchObject({ is: 'possible', name: 'wheel' });
  if (start.is === 'possible') expect(document.text.slice(start.span.start, start.span.end)).toBe('wheel');
});
