import { describe, expect, test } from 'vitest';
import { type HintChoices, hintDetail, inlayHintsIn } from '../../server/src/core/ide/inlayHints';
import { openMarks, variantsOf } from '../support/markedText';
import { example, FAMILY, KIT, steps } from './markedExample';

const ALL: HintChoices = { secondUnit: true, turn: true, kitItem: true };

/** The line with the cursor, hints written into it as `⟪…⟫`; the same in every variant of the files. */
async function shown(source: Readonly<Record<string, string>>, choices = ALL): Promise<string | undefined> {
  const answers = new Set<string>();
  for (const variant of variantsOf(source)) {
    const { marked, snapshot, document } = await openMarks(variant);
    const { text } = document;
    const start = text.lastIndexOf('\n', marked.offset - 1) + 1;
    const end = `${text}\n`.indexOf('\n', marked.offset);
    const hints = inlayHintsIn(snapshot, document, { start, end }, choices);
    let line = text.slice(start, end);
    for (const { offset, label } of hints.toReversed()) {
      line = `${line.slice(0, offset - start)}⟪${label}⟫${line.slice(offset - start)}`;
    }
    answers.add(line.trim());
  }
  expect(answers.size).toBe(1);
  return [...answers][0];
}

const inStep = (instruction: string, choices = ALL) => shown(example(steps(instruction)), choices);

describe('the second unit', () => {
  test('of a torque, where nobody has chosen one, is that of the other system', async () => {
    const torque = (text: string) => inStep(`- tighten: cover\n  torque: ‸${text}`);
    expect(await torque('4.6 ± 0.3 N·m')).toBe('torque: 4.6 ± 0.3 N·m⟪≈ 41 ± 3 lbf·in⟫');
    expect(await torque('32 N·m')).toBe('torque: 32 N·m⟪≈ 24 lbf·ft⟫');
    expect(await torque('41 lbf·in')).toBe('torque: 41 lbf·in⟪≈ 4.6 N·m⟫');
  });

  test('stands in each pass and each value by build, and not where brackets already say it', async () => {
    expect(await inStep('- tighten: cover\n  passes: [‸2 N·m, 4.6 N·m (41 lbf·in)]')).toBe(
      'passes: [2 N·m⟪≈ 18 lbf·in⟫, 4.6 N·m (41 lbf·in)]',
    );
    expect(await inStep('- tighten: cover\n  torque: { k1-a: ‸4 N·m, k1-b: "5 N·m" }')).toBe(
      'torque: { k1-a: 4 N·m⟪≈ 35 lbf·in⟫, k1-b: "5 N·m⟪≈ 44 lbf·in⟫" }',
    );
  });

  test('is that of the settings, either way round', async () => {
    const settings = 'witnessmark: 1\nunits:\n  torque: [N·m, kgf·cm]\n  length: [mm, in]\n';
    const withSettings = (instruction: string) =>
      shown({ ...example(steps(instruction)), 'witnessmark.yaml': settings });
    expect(await withSettings('- tighten: cover\n  torque: ‸4.6 N·m')).toBe('torque: 4.6 N·m⟪≈ 47 kgf·cm⟫');
    expect(await withSettings('- tighten: cover\n  torque: ‸47 kgf·cm')).toBe('torque: 47 kgf·cm⟪≈ 4.6 N·m⟫');
    expect(await withSettings('- measure: end-play\n  accept: ‸≤ 0.05 mm')).toBe('accept: ≤ 0.05 mm⟪≤ 0.0020 in⟫');
    const across = { [FAMILY]: [['thread: M6×1', 'across-flats: ‸10 mm, thread: M6×1']] } as const;
    const files = example(steps('- remove: wheel'), across);
    expect(await shown({ ...files, 'witnessmark.yaml': settings })).toContain('across-flats: 10 mm, ');
  });

  test('is not made up for what has no unit', async () => {
    expect(await inStep('- tighten: cover\n  torque: ‸4.6')).toBe('torque: 4.6');
  });
});

describe('the direction of turn', () => {
  test('follows from the verb and the hand', async () => {
    expect(await inStep('- tighten: cover-‸screw')).toBe('- tighten: cover-screw⟪clockwise⟫');
    expect(await inStep('- loosen: [cover-‸screw, cover]')).toBe('- loosen: [cover-screw⟪counter-clockwise⟫, cover]');
    expect(await inStep('- remove: cover-‸screw')).toBe('- remove: cover-screw');
  });

  test('is told by build where the hand differs', async () => {
    expect(await inStep('- tighten: cap-‸nut')).toBe('- tighten: cap-nut⟪clockwise; counter-clockwise on K1-B⟫');
    expect(await inStep('- loosen: cap-‸nut')).toBe('- loosen: cap-nut⟪counter-clockwise; clockwise on K1-B⟫');
    expect(await inStep('- tighten: cap-‸nut\n  when: k1-b')).toBe(
      '- tighten: cap-nut⟪counter-clockwise, left-hand thread⟫',
    );
  });

  test('is not told where nothing says the hand, and is told where the thread is marked', async () => {
    const family = (to: string) => ({ [FAMILY]: [['thread: M6×1, hand: right', to]] }) as const;
    const files = (to: string) => example(steps('- tighten: cover-‸screw'), family(to));
    expect(await shown(files('thread: M6×1'))).toBe('- tighten: cover-screw');
    expect(await shown(files('thread: M6×1-LH'))).toBe('- tighten: cover-screw⟪counter-clockwise, left-hand thread⟫');
    expect(await shown(files('thread: M6×1, hand: { k1-b: left }'))).toBe(
      '- tighten: cover-screw⟪counter-clockwise on K1-B⟫',
    );
  });
});

describe('the item of the kit', () => {
  test('stands behind the part where it is fitted', async () => {
    expect(await inStep('- install: [cover-‸seal, cover]')).toBe('- install: [cover-seal⟪item 10⟫, cover]');
    expect(await inStep('- remove: cover-‸seal')).toBe('- remove: cover-seal');
    expect(await inStep('- { inspect: cover, if-not: { replace: cover-‸seal } }')).toContain('cover-seal⟪item 10⟫');
  });

  test('is that of the builds of the instruction', async () => {
    const line = (item: number, when: string) =>
      `  - { item: ${item}, part: cover-seal, number: PK-${item}, when: ${when} }\n`;
    const kit = {
      [KIT]: [['  - { item: 10,', `${line(11, 'k1-a')}${line(12, 'k1-b')}  - { item: 10, when: big-wheel,`]],
    };
    const files = (instruction: string) => example(steps(instruction), kit as never);
    expect(await shown(files('- install: cover-‸seal'))).toContain('⟪item 11, 12 or 10⟫');
    expect(await shown(files('- install: cover-‸seal\n  when: k1-b'))).toContain('⟪item 12⟫');
  });
});

describe('hints', () => {
  test('can be switched off one by one', async () => {
    const instruction = '- { tighten: cover-screw‸, torque: 9 N·m }';
    expect(await inStep(instruction, { ...ALL, turn: false })).toBe(
      '- { tighten: cover-screw, torque: 9 N·m⟪≈ 80 lbf·in⟫ }',
    );
    expect(await inStep(instruction, { secondUnit: false, turn: true, kitItem: true })).toBe(
      '- { tighten: cover-screw⟪clockwise⟫, torque: 9 N·m }',
    );
    expect(await inStep('- install: cover-‸seal', { ...ALL, kitItem: false })).toBe('- install: cover-seal');
  });

  test('tell what they rest on when one points at them', async () => {
    const { snapshot, document } = await openMarks(
      example(steps('- ‸install: cover-seal\n- tighten: cap-nut\n  torque: 4.6 N·m')),
    );
    const whole = { start: 0, end: document.text.length };
    const hints = inlayHintsIn(snapshot, document, whole, ALL);
    const details = hints.map(({ kind, offset }) => hintDetail(snapshot, document, kind, offset)?.plain ?? '');
    expect(hints.map(({ kind }) => kind)).toEqual(['kit-item', 'turn', 'second-unit']);
    expect(details[0]).toContain('cover seal (item 10 of K-PK1, cover-seal)');
    expect(details[1]).toContain('cap nut (part: nut, cap-nut)');
    expect(details[2]).toContain('3.39 lbf·ft');
    expect(hintDetail(snapshot, document, 'turn', 3)).toBeUndefined();
  });

  test('stay in what can be read of a text that is torn', async () => {
    const torn = `${steps('- tighten: cap-‸nut')}        - loosen: "cap\n: : [\n`;
    expect(await shown(example(torn))).toContain('cap-nut⟪clockwise; counter-clockwise on K1-B⟫');
  });
});
