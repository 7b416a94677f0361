import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { objectIds } from '../../server/src/core/analysis/instructions';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import { ProcedureView, type StepView } from '../../server/src/core/analysis/procedureView';
import { refactorsAt } from '../../server/src/core/ide/refactors/refactorsAt';
import { bestOf } from '../../server/src/core/ide/refactors/reverseStep';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { wholeLines } from '../../server/src/core/rules/support/removeEdit';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { applyEdits, type TextEdit } from '../../server/src/core/text/span';
import { TODAY } from '../support/checkText';
import { loadAll, openMarks, variantsOf } from '../support/markedText';
import { MemoryFiles } from '../support/memoryFiles';
import { example, FAMILY, HEAD } from './markedExample';

type Edits = Parameters<typeof example>[1];

/** The titles that are offered at the cursor. */
async function titles(procedure: string, more: Edits = {}): Promise<string[]> {
  const { marked, snapshot, document } = await openMarks(example(procedure, more));
  return refactorsAt(snapshot, document, marked.offset, TODAY)
    .filter(({ kind }) => kind !== 'sort-tools')
    .map(({ title }) => title);
}

/** The text behind the head of the procedure, once what is offered by an id was done; the same with CR LF. */
async function done(id: string, procedure: string, more: Edits = {}): Promise<string> {
  const results: string[] = [];
  for (const files of variantsOf(example(procedure, more))) {
    const { marked, snapshot, document } = await openMarks(files);
    const edits = refactorsAt(snapshot, document, marked.offset, TODAY)
      .find((one) => one.id === id)
      ?.edits();
    if (edits === undefined) throw new Error(`Nothing is offered as ${id}`);
    const text = applyEdits(document.text, edits);
    expect(text.split('\n').filter((line) => line.endsWith('\r')).length).toBe(
      document.text.includes('\r\n') ? text.split('\n').length - 1 : 0,
    );
    results.push(text.replaceAll('\r\n', '\n').replace(/^# 🔧\n/, ''));
  }
  expect(results[1]).toBe(results[0]);
  return results[0] ?? '';
}

describe('The list of tools is sorted', () => {
  const sorted = (list: string) => done('sort-tools', `${HEAD.replace(/tools: .*\n/, list)}‸phases: []\n`);
  const listOf = (text: string) => text.slice(text.indexOf('tools:'), text.indexOf('consumables:'));

  test('by name and size, with the remark on a line', async () => {
    const list = 'tools:\n  - socket-10\n  - dial-gauge # the fine one\n  - socket-8\n';
    expect(listOf(await sorted(list))).toBe('tools:\n  - dial-gauge # the fine one\n  - socket-8\n  - socket-10\n');
  });

  test('below each heading by itself', async () => {
    const list = 'tools:\n  # Turning\n  - socket-8\n  - ratchet\n\n  # Measuring\n  - dial-gauge\n';
    expect(listOf(await sorted(list))).toBe(
      'tools:\n  # Turning\n  - ratchet\n  - socket-8\n\n  # Measuring\n  - dial-gauge\n',
    );
  });

  test('between brackets', async () => {
    expect(listOf(await sorted('tools: [socket-8, dial-gauge]  # all\n'))).toBe(
      'tools: [dial-gauge, socket-8]  # all\n',
    );
  });

  test('not where it is', async () => {
    const inOrder = HEAD.replace(/tools: .*\n/, 'tools: [dial-gauge, socket-8]\n');
    const { snapshot, document } = await openMarks(example(`${inOrder}‸phases: []\n`));
    expect(refactorsAt(snapshot, document, 0, TODAY)).toEqual([]);
  });
});

const SHARP = `${HEAD}phases:
  - phase: Strip
    steps:
      - step: open-unit
        title: Open the unit
        do:
          - remove: cover-screw
            caution: The e‸dge is sharp. # seen in 2025
          - remove: cover
            caution: The edge is sharp.
            with: socket-8
          - { remove: cover-seal, caution: The edge is sharp. }
  - phase: Assemble
    steps:
      - step: close-unit
        title: Close the unit
        do:
          - caution: The edge is sharp.
            install: cover
      - step: check-unit
        title: Check the unit
        caution: The edge is sharp.
        do:
          - check: free-turn
`;

describe('A caution that stands several times is said once', () => {
  test('at the head of the step', async () => {
    const text = await done('share-in-step', SHARP);
    expect(text).toContain(`        title: Open the unit
        caution: The edge is sharp.
        do:
          - remove: cover-screw
            # seen in 2025
          - remove: cover
            with: socket-8
          - { remove: cover-seal }
`);
    expect(text.match(/sharp/g)).toHaveLength(3);
  });

  test('before the work starts', async () => {
    const text = await done('share-at-start', SHARP);
    expect(text).toContain('before-you-start:\n  - caution: The edge is sharp.\nphases:\n');
    expect(text).toContain('        do:\n          - install: cover\n');
    expect(text).toContain('        title: Check the unit\n        do:\n');
    expect(text.match(/sharp/g)).toHaveLength(1);
  });

  test('at the head of the phase, beside what stands there', async () => {
    const here = SHARP.replace('e‸dge', 'edge').replace(
      'title: Check the unit\n        caution: The',
      'title: Check the unit\n        caution: The‸',
    );
    const text = await done(
      'share-in-phase',
      here.replace('phase: Assemble\n', 'phase: Assemble\n    caution: Lift with two.\n'),
    );
    expect(text).toContain(`  - phase: Assemble
    caution:
      - Lift with two.
      - The edge is sharp.
    steps:
`);
    expect(text).toContain('        title: Check the unit\n        do:\n');
  });

  test('only where it is the same text of the same kind', async () => {
    const other = SHARP.replaceAll('caution: The edge is sharp.', 'notice: The edge is sharp.');
    expect(await titles(other)).toEqual(['Write the step that fits again what "Open the unit" takes off']);
  });
});

const STRIPPED = `${HEAD}phases:
  - phase: Strip
    steps:
      # Two screws hold it.
      - step: open-cover
        title: Take off the cover
        do:
          - remove: cover-screw
            with: socket-10
          - remove: [cover, cover-seal]‸

      - step: remove-wheel
        title: Take off the wheel
        do:
          - remove: [cap-nut, wheel]

  - phase: Assemble
    steps:
      - step: fit-wheel
        title: Fit the wheel
        do:
          - install: [wheel, cap-nut]
          - tighten: cap-nut
      # The end
`;

describe('The step that fits again what a step takes off', () => {
  test('stands behind what was under it, the last part first', async () => {
    const text = await done('reverse-step', STRIPPED);
    expect(text.slice(text.indexOf('  - phase: Assemble'))).toBe(`  - phase: Assemble
    steps:
      - step: fit-wheel
        title: Fit the wheel
        do:
          - install: [wheel, cap-nut]
          - tighten: cap-nut

      - step: fit-cover
        title: Fit the cover
        do:
          - install: cover-seal
          - install: cover
          - install: cover-screw
          - tighten: cover-screw
            with: [torque-wrench-10, socket-10]
      # The end
`);
  });

  test('with what the family asks, and with its words', async () => {
    const wanted: Edits = {
      [FAMILY]: [
        [
          'sits-on: core, fastened-by: [cover-screw] }',
          'sits-on: core, fastened-by: [cover-screw], before-fitting: [clean], orient: arrow up }',
        ],
      ],
    };
    expect(await done('reverse-step', STRIPPED, wanted)).toContain(`          - clean: cover
            using: degreaser
          - install: cover
            orient: arrow up
`);
  });

  test('with a remark where the family states no torque, and with no torque', async () => {
    const silent: Edits = { [FAMILY]: [['hand: right, torque: 9 ± 1 N·m }', 'hand: right }']] };
    expect(await done('reverse-step', STRIPPED, silent)).toContain(
      '          - tighten: cover-screw\n            # torque: the family states none\n',
    );
  });

  test('in a phase of its own where there is none to assemble in', async () => {
    const alone = `${STRIPPED.slice(0, STRIPPED.indexOf('\n  - phase: Assemble'))}`;
    const text = await done('reverse-step', alone);
    expect(text).toContain(
      '\n\n  - phase: Assemble\n    steps:\n      - step: fit-cover\n        title: Fit the cover\n',
    );
  });

  test('in a phase that waits for its steps', async () => {
    const alone = STRIPPED.slice(0, STRIPPED.indexOf('    steps:\n      - step: fit-wheel')).concat('    steps: []\n');
    const text = await done('reverse-step', alone);
    expect(text).toContain('  - phase: Assemble\n    steps:\n      - step: fit-cover\n');
  });

  test('has an id that no step has', async () => {
    const taken = STRIPPED.replace('step: fit-wheel', 'step: fit-cover');
    expect(await done('reverse-step', taken)).toContain('- step: fit-cover-seal\n');
  });

  test('is not offered where all is fitted again', async () => {
    const whole = STRIPPED.replace(
      '[wheel, cap-nut]\n          - tighten: cap-nut\n',
      '[wheel, cap-nut]\n          - tighten: cap-nut\n          - install: [cover-seal, cover, cover-screw]\n          - tighten: cover-screw\n',
    );
    expect(await titles(whole)).toEqual([]);
  });
});

describe('In the sample of a whole rebuild', async () => {
  const at = 'procedures/v4-major.procedure.yaml';
  const linked = ['families/ostrel-v4.family.yaml', 'kits/v4-major.kit.yaml', 'stores/bay-2.stores.yaml'];
  const snapshot = await loadAll(filesOf([at, ...linked]));
  const document = snapshot.document(`${MemoryFiles.ROOT}/${at}`);
  const procedure = document && ProcedureView.of(snapshot, document);
  const takes = (step: StepView) => partsOf(step, ['remove']);
  const steps = procedure?.steps.filter((step) => step.phase.phase?.text === 'Strip' && takes(step).length > 0) ?? [];

  test.each(steps.map((step) => [step.id, step] as const))('%s is put right without a fault', (id, step) => {
    if (document === undefined || procedure === undefined) throw new Error('The sample cannot be read');
    const removed = takes(step);
    const fits = procedure.steps.filter((one) => partsOf(one, PUTS_ON).some((part) => removed.includes(part)));
    const without = withoutSteps(document, fits);
    const cut = withOtherText(snapshot, document, applyEdits(document.text, without));
    const view = ProcedureView.of(cut.snapshot, cut.document);
    const stripped = view?.step(id);
    const best = view && stripped && bestOf(view, stripped, TODAY);
    if (best === undefined) throw new Error('Nothing is offered');
    expect(best.faults).toEqual([]);
    const again = withOtherText(cut.snapshot, cut.document, applyEdits(cut.document.text, best.edits));
    const { findings } = checkDocument(again.snapshot, again.document, { today: TODAY });
    expect(findings.filter(({ rule, about }) => rule === 'left-off' && removed.includes(about[0] ?? ''))).toEqual([]);
  });
});

test('the whole strip of a sample, put right step by step, leaves nothing off or loose', async () => {
  const at = 'procedures/v4-wheel-44.procedure.yaml';
  const linked = ['families/ostrel-v4.family.yaml', 'kits/v4-wheel-44.kit.yaml', 'stores/bay-2.stores.yaml'];
  let snapshot = await loadAll(filesOf([at, ...linked]));
  let document = snapshot.document(`${MemoryFiles.ROOT}/${at}`);
  const whole = document && ProcedureView.of(snapshot, document);
  if (document === undefined || whole === undefined) throw new Error('The sample cannot be read');
  const strip = whole.steps.filter(({ phase }) => phase.phase?.text === 'Strip');
  const apart = new Set(strip.flatMap((step) => partsOf(step, ['remove', 'loosen'])));
  const assembly = whole.steps.slice(whole.steps.indexOf(strip[0] as StepView));
  const fits = assembly.filter((step) => partsOf(step, PUTS_ON).some((part) => apart.has(part)));
  let text = applyEdits(document.text, withoutSteps(document, fits));
  const left: string[] = [];
  for (const { id } of strip.toReversed()) {
    ({ snapshot, document } = withOtherText(snapshot, document, text));
    const procedure = ProcedureView.of(snapshot, document);
    const step = procedure?.step(id);
    const best = procedure && step && bestOf(procedure, step, TODAY);
    left.push(...(best?.faults ?? []));
    text = applyEdits(text, best?.edits ?? []);
  }
  expect(left).toEqual([]);
  const last = withOtherText(snapshot, document, text);
  const { findings } = checkDocument(last.snapshot, last.document, { today: TODAY });
  const rules = new Set(findings.map(({ rule }) => rule));
  // How much threadlocker is for the writer to say; the figures lie beside the sample and were not read.
  expect([...rules]).toEqual(['figure-missing', 'amount-missing']);
});

const PUTS_ON = ['install', 'press', 'seat', 'tighten'];

function filesOf(paths: readonly string[]): Record<string, string> {
  const read = (path: string) => readFileSync(new URL(`../../sample-procedures/${path}`, import.meta.url), 'utf8');
  return Object.fromEntries(paths.map((path) => [path, read(path)]));
}

function withoutSteps({ text, spanOf }: SyntaxDocument, steps: readonly StepView[]): TextEdit[] {
  return steps.map(({ step }) => ({ span: wholeLines(text, spanOf(step.node)), text: '' }));
}

function partsOf({ instructions }: StepView, verbs: readonly string[]): string[] {
  return instructions.flatMap(({ instruction }) => (verbs.includes(instruction.verb) ? objectIds(instruction) : []));
}
