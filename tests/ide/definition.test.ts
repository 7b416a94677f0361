import { describe, expect, test } from 'vitest';
import { definitionAt } from '../../server/src/core/ide/definition';
import { openMarks, pathOf, variantsOf, writeMarks } from '../support/markedText';
import { example, FAMILY, KIT, PROCEDURE, STORES, steps } from './markedExample';

/** Goes to the definition at `‸` in every variant of the files, and compares with what stands in `⟦…⟧`. */
async function checkDefinition(source: Readonly<Record<string, string>>): Promise<void> {
  for (const variant of variantsOf(source)) {
    const { marked, snapshot, document } = await openMarks(variant);
    const link = definitionAt(snapshot, document, marked.offset);
    const found = (link?.definitions ?? []).map(({ uri, span }) => ({ path: pathOf(uri), span }));
    expect(writeMarks(marked.files, found)).toEqual(writeMarks(marked.files, marked.places));
  }
}

describe('the definition of an id', () => {
  test.each<[string, string, string, readonly [string, string]]>([
    ['a part', '- tighten: cap‸-nut', FAMILY, ['cap-nut: {', '⟦cap-nut⟧: {']],
    ['a part, at its end', '- tighten: cap-nut‸', FAMILY, ['cap-nut: {', '⟦cap-nut⟧: {']],
    ['a part in a list, quoted', `- clean: [wheel, 'c‸ap-nut']`, FAMILY, ['cap-nut: {', '⟦cap-nut⟧: {']],
    ['a tool', '- tighten: cap-nut\n  with: sock‸et-8', STORES, ['socket-8: {', '⟦socket-8⟧: {']],
    [
      'a tool with a count',
      '- tighten: x\n  with: { tool: ‸socket-8, count: 2 }',
      STORES,
      ['socket-8:', '⟦socket-8⟧:'],
    ],
    ['a consumable', '- apply: thread‸locker', STORES, ['threadlocker: {', '⟦threadlocker⟧: {']],
    ['a limit', '- measure: end-p‸lay', FAMILY, ['end-play: {', '⟦end-play⟧: {']],
    ['a check', '- check: free-‸turn', FAMILY, ['free-turn: {', '⟦free-turn⟧: {']],
    ['what the bench tells', '- identify: nut-‸hand', FAMILY, ['nut-hand: {', '⟦nut-hand⟧: {']],
    ['a variant in a condition', '- install: wheel\n  when: [big-wheel, k1-‸b]', FAMILY, ['k1-b: {', '⟦k1-b⟧: {']],
    ['an option', '- install: wheel\n  unless: big-‸wheel', FAMILY, ['big-wheel: {', '⟦big-wheel⟧: {']],
    [
      'an option of the unit as received',
      '- install: wheel\n  when: arrives=‸big-wheel',
      FAMILY,
      ['big-wheel: {', '⟦big-wheel⟧: {'],
    ],
    ['an outcome', '- install: wheel\n  when: { none: [nut-h‸and=left] }', FAMILY, ['nut-hand: {', '⟦nut-hand⟧: {']],
    ['the value of an outcome', '- install: wheel\n  when: nut-hand=‸left', FAMILY, ['[left,', '[⟦left⟧,']],
    [
      'a part renewed on condition',
      '- balance: x\n  when: whe‸el=renewed',
      FAMILY,
      ['wheel: { name: wheel', '⟦wheel⟧: { name: wheel'],
    ],
    ['whether it was renewed', '- balance: x\n  when: wheel=re‸newed', FAMILY, ['on-condition', '⟦on-condition⟧']],
    [
      'a variant as a key',
      '- tighten: cap-nut\n  torque: { k1-‸b: 4 N·m, otherwise: 5 N·m }',
      FAMILY,
      ['k1-b: {', '⟦k1-b⟧: {'],
    ],
    ['a mention', '- say: Turn the <cap-‸nut> with care.', FAMILY, ['cap-nut: {', '⟦cap-nut⟧: {']],
    ['a mention with its kind', '- say: Turn it, see <check/free-‸turn>.', FAMILY, ['free-turn: {', '⟦free-turn⟧: {']],
    [
      'a mention in a translation',
      '- say: { text: Go on., de: "Die \\u00dc <cap‸-nut>" }',
      FAMILY,
      ['cap-nut: {', '⟦cap-nut⟧: {'],
    ],
    [
      'a mention in a folded text',
      '- say: >-\n    Look twice\n    at <cap-‸nut>.',
      FAMILY,
      ['cap-nut: {', '⟦cap-nut⟧: {'],
    ],
  ])('%s', async (_, instruction, path, mark) => {
    await checkDefinition(example(steps(instruction), { [path]: [mark] }));
  });

  test('a step, a reading and a figure of the procedure itself', async () => {
    const more = 'readings:\n  pull: { name: pull }\nfigures:\n  nut-view: { file: nut.svg }\n';
    const mark = (instruction: string, declared: string) =>
      checkDefinition(example(steps(instruction, more), { [PROCEDURE]: [[declared, `⟦${declared}⟧`]] }));
    await mark('- check: It is tight.\n  if-not: { go-to: fit-‸wheel }', 'fit-wheel');
    await mark('- measure: pu‸ll', 'pull');
    await mark('- calculate: pull\n  from: ["+‸pull", -0.1 mm]', 'pull');
    await mark('- say: Look.\n  figure: nut-vie‸w', 'nut-view');
  });

  test('from one document to the next: a kit to its family, a concession to its step and part', async () => {
    const kit = example(steps('- install: wheel'), {
      [KIT]: [['cover-seal', 'cover-‸seal']],
      [FAMILY]: [['cover-seal: {', '⟦cover-seal⟧: {']],
    });
    await checkDefinition(kit);
    const concession = (at: string, about: string) =>
      steps('- install: wheel', `concessions:\n  - { rule: torque-missing, at: ${at}, about: [${about}], by: X }\n`);
    await checkDefinition(
      example(concession('fit-‸wheel', 'wheel'), { [PROCEDURE]: [['step: fit-wheel', 'step: ⟦fit-wheel⟧']] }),
    );
    await checkDefinition(example(concession('fit-wheel', '‸cap-nut'), { [FAMILY]: [['cap-nut: {', '⟦cap-nut⟧: {']] }));
  });

  test('within a family: what a part sits on, and the dimensions of a limit without their signs', async () => {
    const dimensions = 'dimensions:\n  bore: 8.02..8.03 mm\n  shaft: 7.98..7.99 mm\n';
    const end = 'accept: 0.04..0.09 mm }\n';
    await checkDefinition(
      example(steps('- install: wheel'), {
        [FAMILY]: [
          ['core: {', '⟦core⟧: {'],
          ['sits-on: core', 'sits-on: c‸ore'],
        ],
      }),
    );
    await checkDefinition(
      example(steps('- install: wheel'), {
        [FAMILY]: [
          [end, `accept: 0.04..0.09 mm, from: [+bore, -‸shaft] }\n${dimensions}`],
          ['  shaft:', '  ⟦shaft⟧:'],
        ],
      }),
    );
  });

  test('a declaration is its own, and covers its whole entry', async () => {
    const { marked, snapshot, document } = await openMarks(
      example(steps('- step: x'), { [FAMILY]: [['cap-nut: {', 'cap-‸nut: {']] }),
    );
    const [own] = definitionAt(snapshot, document, marked.offset)?.definitions ?? [];
    expect(document.text.slice(own?.whole.start, own?.whole.end)).toMatch(/^cap-nut: \{.*behind: \[cover\] \}$/);
  });

  test('a step covers all its lines', async () => {
    const text = steps('- check: Tight.\n  if-not: { go-to: ‸fit-wheel }\n- install: cover');
    const { marked, snapshot, document } = await openMarks(example(text));
    const [step] = definitionAt(snapshot, document, marked.offset)?.definitions ?? [];
    expect(document.text.slice(step?.whole.start, step?.whole.end)).toMatch(/^step: fit-wheel\n[\s\S]*install: cover$/);
  });

  test('things of two kinds that share an id are both given, unless the kind is written', async () => {
    const check = ['checks:\n', 'checks:\n  ⟦cap-nut⟧: { say: It is tight. }\n'] as const;
    const both = [['cap-nut: { name', '⟦cap-nut⟧: { name'], check] as const;
    await checkDefinition(example(steps('- say: See <cap-‸nut>.'), { [FAMILY]: both }));
    await checkDefinition(example(steps('- say: See <check/cap-‸nut>.'), { [FAMILY]: [check] }));
  });

  test('a family mentions a tool of those who read it', async () => {
    await checkDefinition(
      example(steps('- install: wheel'), {
        [FAMILY]: [['The wheel turns freely.', 'It turns <socket-‸8>.']],
        [STORES]: [['socket-8:', '⟦socket-8⟧:']],
      }),
    );
  });
});

describe('the definition of a path', () => {
  test.each([
    ['a linked document', 'family: k1.fam‸ily.yaml', FAMILY],
    ['a figure', 'figures:\n  view: { file: nut.s‸vg }', 'nut.svg'],
  ])('is the start of %s', async (_, line, path) => {
    const text = steps('- install: wheel').replace('family: k1.family.yaml', line);
    const { marked, snapshot, document } = await openMarks({ ...example(text), 'nut.svg': '<svg/>' });
    const link = definitionAt(snapshot, document, marked.offset);
    expect(link?.definitions.map(({ uri, span }) => [pathOf(uri), span])).toEqual([[path, { start: 0, end: 0 }]]);
    expect(document.text.slice(link?.from.start, link?.from.end)).toBe(path);
  });

  test('is nothing where there is no such file', async () => {
    await checkDefinition(example(steps('- install: wheel').replace('k1.kit', 'k2.‸kit')));
  });
});

describe('there is no definition', () => {
  test.each([
    ['of an id that nothing has', '- install: whe‸al'],
    ['of words', '- say: Fit the whe‸el.'],
    ['of a key', '- ins‸tall: wheel'],
    ['of a rule', '- install: wheel\nconcessions:\n  - { rule: torque-‸missing }'],
    ['of a value that the outcome has not', '- install: wheel\n  when: nut-hand=up‸'],
  ])('%s', async (_, instruction) => {
    await checkDefinition(example(steps(instruction)));
  });

  test('or it is still found, in a document that is broken elsewhere', async () => {
    const text = `${steps('- tighten: cap‸-nut\n- remove: "wheel')}      - step: [\n`;
    await checkDefinition(example(text, { [FAMILY]: [['cap-nut: {', '⟦cap-nut⟧: {']] }));
  });
});
