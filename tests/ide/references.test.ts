import { describe, expect, test } from 'vitest';
import { highlightsAt } from '../../server/src/core/ide/highlight';
import { referencesAt } from '../../server/src/core/ide/references';
import { openMarks, pathOf, variantsOf, writeMarks } from '../support/markedText';
import { example, FAMILY, KIT, PROCEDURE, STORES, steps } from './markedExample';

/** Finds all references to what stands at `‸`, and compares with what stands in `⟦…⟧`. */
async function checkReferences(source: Readonly<Record<string, string>>): Promise<void> {
  for (const variant of variantsOf(source)) {
    const { marked, snapshot, document } = await openMarks(variant);
    const found = referencesAt(snapshot, document, marked.offset).map(({ uri, span }) => ({ path: pathOf(uri), span }));
    expect(writeMarks(marked.files, found)).toEqual(writeMarks(marked.files, marked.places));
  }
}

const HEAD_TOOLS = 'tools: [torque-wrench-10, socket-8';

describe('references', () => {
  test('to a part stand in its family, in kits and in procedures, in every form', async () => {
    const text = steps(`- loosen: ⟦whe‸el⟧
- install: [cover, "⟦wheel⟧"]
  when: { any: [⟦wheel⟧=renewed, 'wheel-nut'] }
- say: Look at the <⟦wheel⟧>, the <part/⟦wheel⟧> and the wheel.
- clean: { text: no part, de: x <⟦wheel⟧> }
- tighten: cap-nut
  torque: { ⟦wheel⟧=re-used: 4 N·m, otherwise: 5 N·m }`);
    await checkReferences(
      example(text.replace('- clean', '- say'), {
        [FAMILY]: [
          ['  wheel: {', '  ⟦wheel⟧: {'],
          [
            'fastened-by: [cap-nut], behind: [cover], renew: on-condition }',
            'fastened-by: [cap-nut], renew: on-condition }\n  ring: { sits-on: { ⟦wheel⟧: 2 } }',
          ],
        ],
        [KIT]: [['  - { item', '  - { item: 5, part: ⟦wheel⟧ }\n  - { item']],
      }),
    );
  });

  test('to a tool stand in its stores, in lists and at the work, also from the declaration', async () => {
    const text = steps(
      '- tighten: cap-nut\n  with: [torque-wrench-10, ⟦socket-8⟧]\n  hold: { at: hexagon, with: ⟦socket-8⟧ }',
    );
    await checkReferences(
      example(text.replace(HEAD_TOOLS, 'tools: [torque-wrench-10, ⟦socket-8⟧'), {
        [STORES]: [['  socket-8:', '  ⟦soc‸ket-8⟧:']],
        [FAMILY]: [['The wheel turns freely.', 'It turns with <⟦socket-8⟧>.']],
      }),
    );
  });

  test('to a part leave out what has the same id in another family', async () => {
    const other = {
      'other.family.yaml': 'witnessmark: 1\nfamily: other\nbase: wheel\nparts:\n  wheel: { name: wheel }\n',
    };
    const text = steps('- install: ⟦wheel⟧');
    const elsewhere = steps('- install: wheel').replace(FAMILY, 'other.family.yaml');
    await checkReferences({
      ...example(text, { [FAMILY]: [['  wheel: {', '  ⟦whe‸el⟧: {']] }),
      ...other,
      'elsewhere.procedure.yaml': elsewhere,
    });
  });

  test('to a step are those of its procedure, and what a concession lets stand there', async () => {
    const more = 'concessions:\n  - { rule: torque-missing, at: ⟦fit-wheel⟧, about: [⟦fit-wheel⟧, wheel] }\n';
    const text = steps('- check: Tight, see <⟦fit-wheel⟧>.\n  if-not: { go-to: ⟦fit-‸wheel⟧ }', more);
    await checkReferences({
      ...example(text.replace('step: fit-wheel', 'step: ⟦fit-wheel⟧')),
      'another.procedure.yaml': steps('- install: wheel'),
    });
  });

  test('to a variant, an option and a value', async () => {
    const text = (of: string, cursor: string) =>
      steps(`- install: wheel
  when: [⟦${of}⟧, nut-hand=left]
  unless: arrives=big-wheel`).replace(`⟦${of}⟧`, cursor);
    await checkReferences(
      example(text('k1-b', '⟦k1‸-b⟧'), {
        [FAMILY]: [
          ['  k1-b: {', '  ⟦k1-b⟧: {'],
          ['when: k1-b', 'when: ⟦k1-b⟧'],
          ['k1-b: left', '⟦k1-b⟧: left'],
        ],
      }),
    );
    await checkReferences(
      example(text('k1-b', 'k1-b').replace('arrives=big-wheel', 'arrives=⟦big‸-wheel⟧'), {
        [FAMILY]: [['  big-wheel: {', '  ⟦big-wheel⟧: {']],
      }),
    );
    await checkReferences(
      example(text('k1-b', 'k1-b').replace('nut-hand=left', 'nut-hand=⟦left⟧'), {
        [FAMILY]: [['values: [left', 'values: [⟦le‸ft⟧']],
      }),
    );
  });

  test('to a dimension leave its sign out', async () => {
    await checkReferences(
      example(steps('- install: wheel'), {
        [FAMILY]: [
          [
            'accept: 0.04..0.09 mm }\n',
            'accept: 0.04..0.09 mm, from: [+⟦bore⟧, "-⟦bo‸re⟧", -0.1 mm] }\ndimensions:\n  ⟦bore⟧: 8 mm\n',
          ],
        ],
      }),
    );
  });

  test('to a file are the paths that lead there', async () => {
    const text = steps('- install: wheel');
    await checkReferences(
      example(text.replace('family: k1.family.yaml', 'family: ⟦k1.‸family.yaml⟧'), {
        [KIT]: [['family: k1.family.yaml', 'family: ⟦./x/../k1.family.yaml⟧']],
      }),
    );
  });

  test('where two documents of stores have a tool, the first that the procedure names counts', async () => {
    const second = 'witnessmark: 1\nstores: Bay 2\ntools:\n  socket-8: { name: other }\n';
    const text = steps('- tighten: cap-nut\n  with: ⟦socket-8⟧').replace(
      HEAD_TOOLS,
      'tools: [torque-wrench-10, ⟦socket-8⟧',
    );
    await checkReferences({
      ...example(text.replace('stores: bay.stores.yaml', 'stores: [bay.stores.yaml, second.stores.yaml]'), {
        [STORES]: [['  socket-8:', '  ⟦‸socket-8⟧:']],
      }),
      'second.stores.yaml': second,
    });
  });

  test('are nothing at words, and for an id that nothing has', async () => {
    await checkReferences(example(steps('- install: whe‸al\n- remove: wheal')));
    await checkReferences(example(steps('- say: Whe‸el')));
  });
});

test('a highlight tells the declaration from what names it, in its own document only', async () => {
  const source = example(
    `${steps('- install: wheel', 'readings:\n  pull: { name: pull }\n')}          - measure: p‸ull\n`,
  );
  const { marked, snapshot, document } = await openMarks(source);
  expect(marked.at).toBe(PROCEDURE);
  const marks = highlightsAt(snapshot, document, marked.offset);
  expect(marks.map(({ span, kind }) => [document.text.slice(span.start, span.end), kind])).toEqual([
    ['pull', 'write'],
    ['pull', 'read'],
  ]);
});
