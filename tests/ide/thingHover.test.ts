import { describe, expect, test } from 'vitest';
import { Names } from '../../server/src/core/analysis/names';
import { hoverAt } from '../../server/src/core/ide/hover';
import { describeThing, thingHover } from '../../server/src/core/ide/thingHover';
import { openMarks, variantsOf } from '../support/markedText';
import { example, FAMILY, KIT, steps } from './markedExample';

/** What the hover at `‸` says without markup, the same in every variant of the files. */
async function told(source: Readonly<Record<string, string>>): Promise<string | undefined> {
  const answers = new Set<string | undefined>();
  for (const variant of variantsOf(source)) {
    const { marked, snapshot, document } = await openMarks(variant);
    answers.add(thingHover(snapshot, document, marked.offset)?.plain);
  }
  expect(answers.size).toBe(1);
  return [...answers][0];
}

const inStep = (instruction: string) => told(example(steps(instruction)));
const NUT = '- remove: cap-nut\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]\n';

describe('the facts of a part', () => {
  test('its thread, its hand by build, its torque in every unit, and the steps that work on it', async () => {
    expect(await inStep(`${NUT}- clean: cap-‸nut`)).toBe(
      [
        'cap nut (part: nut, cap-nut)',
        '  Thread             M5×0.8',
        '  Hand               right-hand (clockwise to tighten) on K1-A',
        '                     left-hand (counter-clockwise to tighten) on K1-B',
        '  Torque             4.6 ± 0.3 N·m (3.39 ± 0.22 lbf·ft; 40.7 ± 2.7 lbf·in; 46.9 ± 3.1 kgf·cm)',
        '  In this procedure  4.6 ± 0.3 N·m in Fit the wheel (fit-wheel)',
        '  Sits on            core',
        '  First off          cover',
        '  Comes off in       Fit the wheel (fit-wheel)',
        '  Goes on in         Fit the wheel (fit-wheel)',
        '  Also in            fit-wheel (clean)',
      ].join('\n'),
    );
  });

  test('the kit line that supplies it, and that it is renewed', async () => {
    const hover = await inStep('- install: cover-s‸eal');
    expect(hover).toContain('Renewed     always: a new one each time');
    expect(hover).toContain('Kit         K-PK1 item 10, PK-104, 1 piece\n');
    expect(hover).toContain('Seals       cover');
  });

  test('the builds that have it, where not all do', async () => {
    const marks = { [FAMILY]: [['cover: {', 'big-plate: { name: big plate, when: big-wheel }\n  cover: {']] } as const;
    expect(await told(example(steps('- install: big-‸plate'), marks))).toContain(
      'Exists on   K1-A with the big wheel (1 of 3 builds)',
    );
  });
});

describe('the facts of other things', () => {
  test('a tool with its size, its calibration and the steps that use it', async () => {
    const due = { 'bay.stores.yaml': [['accuracy: 4 %', 'accuracy: 4 %, calibration-due: 2027-03-01']] } as const;
    const hover = await told(example(steps(NUT.replace('wrench-10', 'wren‸ch-10')), due));
    expect(hover).toContain('torque wrench 2–10 N·m (tool: torque wrench, torque-wrench-10)');
    expect(hover).toContain('Range            2 to 10 N·m');
    expect(hover).toContain('Calibration due  2027-03-01');
    expect(hover).toContain('Used in          Fit the wheel (fit-wheel)');
  });

  test('a tool on the list that no step uses', async () => {
    const text = steps('- remove: wheel').replace('[torque-wrench-10, socket-8', '[torque-wrench-10, socket-‸8');
    expect(await told(example(text))).toContain('Used in  no step of this procedure');
  });

  test('a consumable with its hazards and the time that it cures', async () => {
    const hover = await inStep('- clean: cap-nut\n  using: degrea‸ser');
    expect(hover).toContain('degreaser (consumable: solvent, degreaser)');
    expect(hover).toContain('Hazards  H225');
    expect(await inStep('- apply: thread‸locker')).toContain('Cures in  24 h');
  });

  test('a limit, a check and a step', async () => {
    expect(await inStep('- measure: end-‸play')).toMatch(
      /Accept +0\.04 to 0\.09 mm \(.*in.*\)\n {2}Measured in +Fit the wheel/,
    );
    expect(await inStep('- check: free-‸turn')).toContain('The wheel turns freely. (check, free-turn)');
    const back = await inStep('- check: It turns.\n  if-not: { go-to: fit-‸wheel }');
    expect(back).toContain('Phase              Assemble');
    expect(back).toContain('For                all 3 builds');
    expect(back).toContain('Gone back to from  Fit the wheel (fit-wheel)');
  });

  test('a variant and an option with the builds that have them', async () => {
    expect(await inStep('- install: wheel\n  when: k1-‸a')).toBe(
      'K1-A (variant, k1-a)\n  Builds      2 of 3\n  By name     K1-A\n              K1-A + big wheel\n' +
        '  Decides in  Fit the wheel (fit-wheel)',
    );
    expect(await inStep('- install: wheel\n  when: big-‸wheel')).toMatch(/Variants +K1-A\n/);
  });

  test('what the bench finds out, its values, and where it is found out', async () => {
    expect(await inStep('- identify: nut-‸hand')).toContain('Open on       K1-B (1 of 3 builds)');
    const value = await inStep('- identify: nut-hand\n- install: wheel\n  when: nut-hand=le‸ft');
    expect(value).toContain('hand of the nut is left (found on the bench, nut-hand=left)');
    expect(value).toContain('Holds on      K1-B, when the hand of the nut is left (possible on 1 of 3 builds)');
    expect(value).toContain('Found out in  Fit the wheel (fit-wheel)');
    const renewed = await inStep('- inspect: wheel\n- install: wheel\n  when: wheel=re‸newed');
    expect(renewed).toContain('wheel: renewed (what becomes of a part, wheel=renewed)');
    expect(renewed).toContain('Judged in  Fit the wheel (fit-wheel)');
  });

  test('the file behind a path', async () => {
    const hover = await told(example(steps('- remove: wheel').replace('k1.family', 'k1.fam‸ily')));
    expect(hover).toMatch(/^Pellow K1 \(family, k1\.family\.yaml\)\n {2}Variants +K1-A, K1-B\n/);
  });

  test('a line of a kit, at its number', async () => {
    const hover = await told(example(steps('- remove: wheel'), { [KIT]: [['PK-104', 'PK-1‸04']] }));
    expect(hover).toBe(
      'cover seal (item 10 of K-PK1, cover-seal)\n  Part number  PK-104\n  Pieces       1\n  For          all 3 builds',
    );
  });
});

describe('a condition', () => {
  test('at its key: the builds that meet it', async () => {
    expect(await inStep('- install: wheel\n  wh‸en: [big-wheel, k1-b]')).toBe(
      'when (condition)\n  Met by   K1-A with the big wheel; or K1-B (2 of 3 builds)\n' +
        '  By name  K1-B\n           K1-A + big wheel',
    );
    expect(await inStep('- install: wheel\n  un‸less: k1-b')).toContain('Met by   K1-A (2 of 3 builds)');
    expect(await inStep('- install: wheel\n  when: { no‸ne: [k1-b] }')).toContain('Met by   K1-A (2 of 3 builds)');
  });

  test('at one of its names: the whole of it, beside what the name is', async () => {
    const hover = await inStep('- install: wheel\n  when: { all: [k1-‸a], none: [big-wheel] }');
    expect(hover).toContain('K1-A (variant, k1-a)\n  The condition  K1-A, without the big wheel (1 of 3 builds)\n');
  });

  test('at the key of a step or a phase: the builds that it is for', async () => {
    const text = steps('- remove: wheel').replace('title: Fit', 'when: k1-b\n        title: Fit');
    expect(await told(example(text.replace('step:', 'st‸ep:')))).toContain('For    K1-B (1 of 3 builds)');
    expect(await told(example(text.replace('- phase', '- ph‸ase')))).toContain('For    all 3 builds');
  });
});

describe('what is said of anything', () => {
  test('nothing where nothing has the id, and nothing between the words', async () => {
    expect(await inStep('- remove: whe‸ell')).toBeUndefined();
    expect(await inStep('- say: Look a‸t it.')).toBeUndefined();
  });

  test('each thing of several that a mention may mean', async () => {
    const marks = {
      [FAMILY]: [['end-play:', 'cover: { name: gap of the cover, accept: 1..2 mm }\n  end-play:']],
    } as const;
    const hover = await told(example(steps('- say: Look at <co‸ver>.'), marks));
    expect(hover).toContain('cover (part, cover)');
    expect(hover).toContain('gap of the cover (limit, cover)');
  });

  test('what a text would turn into markup stands as it is written', async () => {
    const marks = { [FAMILY]: [['name: cap nut', 'name: "cap | nut *new*"']] } as const;
    const { marked, snapshot, document } = await openMarks(example(steps('- remove: cap-‸nut'), marks));
    const hover = thingHover(snapshot, document, marked.offset);
    expect(hover?.markdown).toContain(
      '| **cap \\| nut \\*new\\*** | part: nut · `cap-nut` |\n|:--|:--|\n| Thread | M5×0.8 |',
    );
    expect(hover?.plain).toContain('cap | nut *new*');
  });

  test('facts first and then the calculation, which says what the facts leave out', async () => {
    const { marked, snapshot, document } = await openMarks(
      example(steps(NUT.replace('tighten: cap', 'tighten: cap‸'))),
    );
    const hover = hoverAt(snapshot, document, marked.offset, []);
    const [facts = '', working = ''] = hover?.markdown.split('\n\n---\n\n') ?? [];
    expect(facts).toContain('| Hand | right-hand');
    expect(facts).not.toContain('| Thread |');
    expect(working).toContain('| Torque of the cap nut |');
    // The formulas stand at the torque itself.
    expect(working).not.toContain('```');
    const torque = document.text.indexOf('4.6 ±');
    expect(hoverAt(snapshot, document, torque, [])?.markdown).toContain('```text\nd = 5 mm');
    expect(marked.files['op.procedure.yaml']?.slice(hover?.span.start, hover?.span.end)).toBe('cap-nut');
  });

  test('a key by its definition, where there is no more to say of it', async () => {
    const at = async (instruction: string) => {
      const { marked, snapshot, document } = await openMarks(example(steps(instruction)));
      return hoverAt(snapshot, document, marked.offset, [])?.plain;
    };
    expect(await at('- { remove: wheel, wi‸th: socket-8 }')).toMatch(/^with\n\n\w.*\.$/);
    expect(await at('- re‸move: wheel')).toMatch(/^remove\n\nTake a part off\. \w.*\.$/);
    expect(await at('- { check: It turns., if-not: { at-m‸ost: 2 } }')).toMatch(/^at-most\n\n\w.*\.$/);
    expect(await at('- { remove: wheel, wi‸tth: socket-8 }')).toBeUndefined();
    const marks = { [FAMILY]: [['sits-on: core, fastened-by', 'sits‸-on: core, fastened-by']] } as const;
    const { marked, snapshot, document } = await openMarks(example(steps('- remove: wheel'), marks));
    expect(hoverAt(snapshot, document, marked.offset, [])?.plain).toMatch(/^sits-on\n\nThe part/);
  });

  test('for a completion: a thing by itself', async () => {
    const { snapshot, document } = await openMarks(example(steps('- remove: ‸wheel')));
    const thing = Names.of(snapshot, document).find('tool', 'socket-8');
    expect(thing && describeThing(snapshot, document, thing)?.plain).toContain('8 mm socket (tool: socket, socket-8)');
    expect(describeThing(snapshot, document, { is: 'file', uri: 'file:///nowhere.yaml' })).toBeUndefined();
  });
});
