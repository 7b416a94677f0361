import { describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { pickBuild } from '../../server/src/core/builds';
import {
  EXAMPLE_FAMILY,
  EXAMPLE_HEAD,
  EXAMPLE_KIT,
  EXAMPLE_PATHS,
  EXAMPLE_STORES,
} from '../../server/src/core/rules/exampleDocuments';
import { buildSheet, type FindingAtStep, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { openFiles } from '../support/memoryFiles';
import {
  filesWith,
  instructionOf,
  procedureWith,
  sheetOf,
  sheetOfFiles,
  stepWith,
  textOf,
  viewOf,
} from './fixtures/bench';
import { printedOnly } from './fixtures/printedOnly';

const steps = (sheet: Sheet) => sheet.phases.flatMap((phase) => phase.steps);

describe('what is on the sheet of a build', () => {
  const TWO_PHASES = `phases:
  - phase: Strip
    warning: Hot metal burns.
    steps:
      - { step: open-it, title: Open, do: [{ remove: cover }] }
      - { step: big-only, title: Big, when: big-wheel, do: [{ remove: wheel }] }
      - { step: find-hand, title: Find the hand, when: k2-b, do: [{ identify: nut-hand }] }
  - phase: Build
    steps:
      - { step: hollow, title: Hollow, do: [{ install: wheel, when: big-wheel }] }
      - step: close-it
        title: Close
        sign: inspector
        people: 2
        optional: true
        do:
          - { check: free-turn, if-not: { go-to: open-it, at-most: 2, then: reject the unit } }
          - { install: cover, unless: k2-a }
          - Read <open-it> and <big-only> again.
`;

  test('steps of other builds are left out, and numbers run through the phases', async () => {
    const sheet = await sheetOf(TWO_PHASES, { build: 'k2-a' });
    expect(steps(sheet).map(({ number, id }) => [number, id])).toEqual([
      [1, 'open-it'],
      [2, 'close-it'],
    ]);
    const big = await sheetOf(TWO_PHASES, { build: 'k2-b,big-wheel' });
    expect(steps(big).map((step) => step.id)).toEqual(['open-it', 'big-only', 'find-hand', 'hollow', 'close-it']);
  });

  test('a condition that the build decides is not said again', async () => {
    const sheet = await sheetOf(TWO_PHASES, { build: 'k2-b,big-wheel' });
    expect(JSON.stringify(sheet.phases)).not.toContain('"condition"');
  });

  test('what a phase warns of stands before its first step', async () => {
    const [first, second] = steps(await sheetOf(TWO_PHASES));
    expect(first?.cautions.map(({ word, texts }) => [word, ...texts.map(textOf)])).toEqual([
      ['warning', 'Hot metal burns.'],
    ]);
    expect(second?.cautions).toEqual([]);
  });

  test('hold point, people and option are kept, and steps are named by number', async () => {
    const step = steps(await sheetOf(TWO_PHASES)).at(-1);
    expect(step).toMatchObject({ sign: 'inspector', people: 2, optional: true });
    const [check, say] = step?.instructions ?? [];
    expect(textOf(check?.ifNot?.text ?? [])).toBe(
      'Go back to step 1, at most twice. If it is still not right: reject the unit.',
    );
    expect(check?.ifNot?.text).toContainEqual({ kind: 'stepLink', text: 'step 1', step: 'open-it' });
    expect(textOf(say?.text ?? [])).toBe('Read step 1 and step “Big” (not on this sheet) again.');
  });
});

describe('what the bench decides', () => {
  test('each hand of a nut has its branch, its words and its direction', async () => {
    const { torque } = await instructionOf('- tighten: cap-nut', { build: 'k2-b' });
    expect(printedOnly(torque?.setting)).toEqual({
      kind: 'byOutcome',
      branches: [
        {
          condition: 'When the hand of the cap nut is left',
          setting: {
            kind: 'one',
            value: {
              primary: '5.1 ± 0.3 N·m',
              secondary: '45 ± 3 lbf·in',
              passes: [],
              turn: { hand: 'left', direction: 'counter-clockwise' },
            },
          },
        },
        {
          condition: 'When the hand of the cap nut is right',
          setting: {
            kind: 'one',
            value: {
              primary: '5.1 ± 0.3 N·m',
              secondary: '45 ± 3 lbf·in',
              passes: [],
              turn: { hand: 'right', direction: 'clockwise' },
            },
          },
        },
      ],
    });
  });

  test('loosening gets a box for each hand, the other way round', async () => {
    const { turning } = await instructionOf('- loosen: cap-nut', { build: 'k2-b' });
    expect(turning?.map((line) => [line.condition, line.turn?.direction])).toEqual([
      ['When the hand of the cap nut is left', 'clockwise'],
      ['When the hand of the cap nut is right', 'counter-clockwise'],
    ]);
  });

  test('both branches of a renewed part are printed, and the inspection has the boxes', async () => {
    const step = await stepWith(
      '- { inspect: wheel, if-not: { replace: wheel } }\n- { mark: wheel, when: wheel=re-used }\n- { balance: rotor, when: wheel=renewed }',
    );
    expect(step.instructions.map((one) => one.condition?.text)).toEqual([
      undefined,
      'Only when the wheel is used again',
      'Only when the wheel is renewed',
    ]);
    expect(step.instructions[0]?.renewals).toEqual([{ part: 'Wheel' }]);
  });

  test('a torque that differs by outcome has a row for each in the table', async () => {
    const sheet = await sheetOf(
      'phases:\n  - { phase: Work, steps: [{ step: one-step, title: Work, do: [{ tighten: two-bolt }] }] }\n',
    );
    expect(sheet.torqueTable.map((row) => [row.condition?.text, row.primary])).toEqual([
      ['When the wheel is used again', '8 ± 1 N·m'],
      ['When the wheel is renewed', '10 ± 1 N·m'],
    ]);
  });

  test('kit lines of an open outcome carry their condition, others come or go with the build', async () => {
    const lines = async (build: string) =>
      (await sheetOf('phases: []\n', { build })).kits[0]?.lines.map((line) => [
        line.number,
        line.condition?.text ?? '',
      ]);
    expect(await lines('k2-b')).toEqual([
      ['PK-101', ''],
      ['PK-121', 'Only when the hand of the cap nut is right'],
      ['PK-122', 'Only when the hand of the cap nut is left'],
      ['PK-140 (superseded by PK-141)', ''],
    ]);
    expect(await lines('k2-b,big-wheel')).toContainEqual(['PK-130', '']);
    expect(await lines('k2-a')).toContainEqual(['PK-121', '']);
  });
});

describe('front and back', () => {
  const WORK = `tools: [dial-gauge, torque-wrench-10, socket-8, scriber]
consumables: [degreaser, threadlocker]
phases:
  - phase: Work
    steps:
      - step: do-it
        title: Do it
        do:
          - { tighten: left-nut, with: [torque-wrench-10, socket-8] }
          - { clean: cover, using: degreaser }
          - { apply: threadlocker, to: left-nut, amount: 1 drop, when: k2-b }
          - { mark: wheel, with: scriber, when: k2-b }
concessions: [{ rule: tolerance-missing, at: do-it, because: single value, by: M. Oduya, until: 2027-01-31 }]
`;

  test('tools and consumables are those of the build, and what is listed for no instruction stays', async () => {
    const sheet = await sheetOf(WORK, { build: 'k2-a' });
    expect(sheet.tools.map((tool) => tool.id)).toEqual(['dial-gauge', 'torque-wrench-10', 'socket-8']);
    expect(sheet.tools[1]).toMatchObject({ range: '2 to 10 N·m', calibrationDue: '2027-03-01' });
    expect(sheet.consumables.map((one) => one.id)).toEqual(['degreaser']);
  });

  test('hazards carry the official text and the stronger signal word', async () => {
    const sheet = await sheetOf(WORK, { build: 'k2-b' });
    expect(sheet.consumables[0]).toMatchObject({
      signalWord: 'danger',
      hazards: [
        { code: 'H225', text: 'Highly flammable liquid and vapour' },
        { code: 'H319', text: 'Causes serious eye irritation' },
      ],
    });
    expect(sheet.hazards.map((one) => [...one.codes, ...one.from])).toContainEqual(['H317', 'threadlocker']);
    expect(sheet.safety.wear).toEqual([
      'eye protection',
      'protective gloves',
      'breathing protection or good ventilation',
    ]);
  });

  test('findings stand at their step, errors are counted, and concessions are listed', async () => {
    const finding = (step: string | undefined, severity: FindingAtStep['severity']): FindingAtStep => ({
      rule: 'torque-missing',
      severity,
      message: 'No torque',
      builds: 'K2-B',
      step,
    });
    const findings = [finding('do-it', 'error'), finding(undefined, 'error'), finding('gone', 'info')];
    const sheet = await sheetOf(WORK, { findings });
    expect(sheet.notReleased).toEqual({ errors: 2 });
    expect(steps(sheet)[0]?.findings).toEqual([
      { severity: 'error', rule: 'torque-missing', message: 'No torque (K2-B)' },
    ]);
    expect(sheet.findings.map((one) => one.severity)).toEqual(['error', 'information']);
    expect(sheet.concessions).toMatchObject([
      { rule: 'tolerance-missing', at: { kind: 'step', step: 1, stepId: 'do-it' }, until: '2027-01-31' },
    ]);
    expect(await sheetOf(WORK)).not.toHaveProperty('notReleased');
  });

  test('a removal says which way to turn in each build where nothing has loosened the fastener before', async () => {
    const text = async (build: string) => {
      const step = await stepWith(
        '- { loosen: left-nut, with: socket-8, when: k2-b }\n- { remove: left-nut, with: socket-8 }',
        { build },
      );
      return step.instructions.map((one) => textOf(one.text)).at(-1);
    };
    expect(await text('k2-a')).toBe('Remove the left nut with the 8 mm socket. Turn clockwise (left-hand thread).');
    expect(await text('k2-b')).toBe('Remove the left nut with the 8 mm socket.');
  });

  test('a concession of no step holds for the whole sheet, and one of a step that is not there is left out', async () => {
    const rest = `phases: []
concessions:
  - { rule: tolerance-missing, because: single value, by: M. Oduya, until: 2027-01-31 }
  - { rule: tolerance-missing, at: gone, because: single value, by: M. Oduya, until: 2027-01-31 }
`;
    expect((await sheetOf(rest)).concessions.map((one) => one.at)).toEqual([{ kind: 'sheet' }]);
  });

  test('a plain line before the start stays one, between the panels as it is written', async () => {
    const sheet = await sheetOf(`before-you-start:
  - { warning: Hot oil burns. }
  - The kit lies beside the <cover>
figures: []
phases: []
`);
    expect(sheet.beforeYouStart.map((line) => line.kind)).toEqual(['caution', 'line']);
    const [, line] = sheet.beforeYouStart;
    expect(line?.kind === 'line' && textOf(line.text)).toBe('The kit lies beside the cover.');
  });

  test('a consumable says how much where its steps agree, and at which steps it is used', async () => {
    const apply = (amount: string) => `{ apply: sealant, to: cover, amount: ${amount} }`;
    const rest = (second: string) => `phases:
  - phase: Work
    steps:
      - { step: first-one, title: One, do: [${apply('1 drop')}] }
      - { step: other-one, title: Two, do: [{ clean: cover, using: degreaser }, ${apply(second)}] }
`;
    const uses = async (second: string) =>
      (await sheetOf(rest(second))).consumables.map((one) => [one.id, one.amount, one.steps]);
    expect(await uses('1 drop')).toEqual([
      ['sealant', { kind: 'stated', text: '1 drop' }, [1, 2]],
      ['degreaser', { kind: 'none' }, [2]],
    ]);
    expect((await uses('a thin film'))[0]).toEqual(['sealant', { kind: 'differs' }, [1, 2]]);
  });

  test('the size of a tool is a name and never put into another unit', async () => {
    const files = filesWith(procedureWith('tools: [socket-8]\nphases: []\n'));
    const stores = files['stores/bay-1.stores.yaml']?.replace('size: 8 mm', 'size: 1/2 in') ?? '';
    const sheet = await sheetOfFiles({ ...files, 'stores/bay-1.stores.yaml': stores });
    expect(sheet.tools[0]?.size).toBe('1/2 in');
  });
});

describe('half-written documents', () => {
  const WHOLE = procedureWith(`phases:
  - phase: Work
    steps:
      - step: do-it
        title: Do it
        do:
          - { tighten: cap-nut, with: [no-such-tool], torque: 5 }
          - { install: gone-part, place: gone-place }
          - { measure: gone-limit, if-not: { go-to: no-such-step, replace: gone, do: [{ remove: cover }] } }
          - { balance: none-such }
          - { apply: , to: cover }
          - tighten:
          - wait: soon
          - check:
`);

  test('unknown ids stand for themselves', async () => {
    const sheet = await sheetOfFiles(filesWith(WHOLE));
    const texts = steps(sheet)[0]?.instructions.map((one) => textOf(one.text)) ?? [];
    expect(texts[1]).toBe('Install the gone-part on the gone-place.');
    expect(texts[2]).toBe('Measure the gone-limit.');
  });

  test('any text cut short gives a sheet', async () => {
    for (let end = 0; end <= WHOLE.length; end += 7) {
      const sheet = await sheetOfFiles(filesWith(WHOLE.slice(0, end)), {}).catch((error: unknown) =>
        String(error).includes('is no procedure') || String(error).includes('No variant')
          ? undefined
          : Promise.reject(error),
      );
      if (sheet !== undefined) expect(sheet.format).toBe(1);
    }
  });

  test('a procedure without any of its files still prints its steps', async () => {
    const view = await viewOf({ 'procedures/op-12.procedure.yaml': WHOLE });
    const picked = pickBuild(view.space, '');
    if (picked.kind !== 'picked') throw new Error('There is no build');
    const sheet = buildSheet(view, picked, { findings: [], settings: DEFAULT_SETTINGS, language: 'en', paper: 'a4' });
    expect(steps(sheet).map((step) => step.id)).toEqual(['do-it']);
  });
});

describe('the picker', () => {
  test('builds have the ids that a build is picked by, the plainest first', async () => {
    const view = await viewOf(filesWith(procedureWith('phases: []\n')));
    expect(listSheetBuilds(view)).toEqual([
      { id: 'k2-a', label: 'K2-A' },
      { id: 'k2-b', label: 'K2-B' },
      { id: 'k2-b,big-wheel', label: 'K2-B + big wheel' },
    ]);
    for (const { id } of listSheetBuilds(view)) expect(pickBuild(view.space, id).kind).toBe('picked');
  });
});

test('the same documents give the same sheet', async () => {
  const files = {
    [EXAMPLE_PATHS.family]: EXAMPLE_FAMILY,
    [EXAMPLE_PATHS.kit]: EXAMPLE_KIT,
    [EXAMPLE_PATHS.stores]: EXAMPLE_STORES,
    [EXAMPLE_PATHS.procedure]: `${EXAMPLE_HEAD}phases:
  - phase: Strip
    steps:
      - { step: take-nut, title: Take off the nut, do: [{ loosen: cap-nut, with: socket-8 }, { remove: cap-nut }] }
      - { step: fit-nut, title: Fit the nut, do: [{ install: cap-nut }, { tighten: cap-nut, with: [torque-wrench-10, socket-8] }] }
`,
  };
  const print = async () => {
    const { workspace, document } = await openFiles(files, EXAMPLE_PATHS.procedure);
    const view = ProcedureView.of(workspace.snapshot, document);
    const picked = view === undefined ? undefined : pickBuild(view.space, 'k1-b');
    if (view === undefined || picked?.kind !== 'picked') throw new Error('The example cannot be read');
    return buildSheet(view, picked, { findings: [], settings: DEFAULT_SETTINGS, language: 'en', paper: 'a4' });
  };
  const sheet = await print();
  expect(JSON.stringify(await print())).toBe(JSON.stringify(sheet));
  expect(steps(sheet).flatMap((step) => step.instructions.map((one) => textOf(one.text)))).toEqual([
    'Loosen the cap nut with the 8 mm socket. Turn clockwise (left-hand thread).',
    'Remove the cap nut.',
    'Install the cap nut. Turn counter-clockwise (left-hand thread).',
    'Tighten the cap nut to 4.6 ± 0.3 N·m (41 ± 3 lbf·in). Turn counter-clockwise (left-hand thread).',
  ]);
});
