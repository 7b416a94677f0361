import { describe, expect, test } from 'vitest';
import { lensesOf } from '../../server/src/core/ide/codeLens';
import { UseCounter, usesText } from '../../server/src/core/ide/lensUses';
import { documentKindOf } from '../../server/src/core/syntax/documentKind';
import { readDocument } from '../../server/src/core/syntax/readDocument';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import { openMarks, variantsOf } from '../support/markedText';
import { MemoryFiles } from '../support/memoryFiles';
import { example, FAMILY, HEAD, KIT, PROCEDURE, STORES, steps } from './markedExample';

const BOTH = { uses: true, builds: true };

/** What stands above a line of a file, as `the line from there: text`, with the procedures that are given. */
async function lenses(path: string, procedures: Readonly<Record<string, string>>, wanted = BOTH): Promise<string[]> {
  const shown: string[][] = [];
  const { [PROCEDURE]: _, ...others } = example('');
  for (const files of variantsOf({ ...others, ...procedures })) {
    const { snapshot, document } = await openMarks({ ...files, [path]: `‸${files[path]}` });
    const counter = new UseCounter(document.uri);
    await counter.count(proceduresAmong(files), readProcedure);
    shown.push(
      lensesOf(snapshot, document, wanted).map((lens) => {
        const text = lens.is === 'builds' ? lens.text : usesText(counter.of(lens.kind, lens.id));
        return `${document.text.slice(lens.span.start, lens.span.end)}: ${text}`;
      }),
    );
  }
  expect(shown[1]).toEqual(shown[0]);
  return shown[0] ?? [];
}

async function* proceduresAmong(files: Readonly<Record<string, string>>) {
  for (const [path, text] of Object.entries(files)) {
    if (documentKindOf(path) === 'procedure') yield { uri: `${MemoryFiles.ROOT}/${path}`, text };
  }
}

const readProcedure = (uri: string, text: string) => readDocument(uri, 'procedure', text, new ReadingMemo());

const two = steps('- remove: [cover, cover-seal]\n- say: Look at the <cover>.\n- check: free-turn').concat(
  '      - step: fit-cover\n        title: Fit the cover\n        do:\n          - install: cover\n            with: socket-8\n',
);

describe('How often a thing is used', () => {
  test('counts steps, not words', async () => {
    expect(await lenses(FAMILY, { [PROCEDURE]: two })).toEqual([
      'core: used in no step',
      'cover: used in 2 steps',
      'cover-screw: used in no step',
      'cover-seal: used in 1 step',
      'wheel: used in no step',
      'cap-nut: used in no step',
      'end-play: used in no step',
      'free-turn: used in 1 step',
    ]);
  });

  test('says of how many procedures', async () => {
    const shown = await lenses(STORES, { [PROCEDURE]: two, 'more.procedure.yaml': two });
    expect(shown).toContain('socket-8: used in 2 steps of 2 procedures');
    // What is only laid out is not used yet.
    expect(shown).toContain('dial-gauge: used in no step');
  });

  test('leaves a procedure of another family aside', async () => {
    const other = two.replace(FAMILY, 'other.family.yaml');
    expect(await lenses(FAMILY, { [PROCEDURE]: other })).toContain('cover: used in no step');
  });

  test('above a line of a kit, counts its part in the procedures that are done with the kit', async () => {
    expect(await lenses(KIT, { [PROCEDURE]: two })).toEqual(['cover-seal: used in 1 step']);
    expect(await lenses(KIT, { [PROCEDURE]: two.replace(/kit: k1.*\n/, '') })).toEqual(['cover-seal: used in no step']);
  });

  test('says where', async () => {
    const counter = new UseCounter(`${MemoryFiles.ROOT}/${STORES}`);
    await counter.count(proceduresAmong({ [PROCEDURE]: two }), readProcedure);
    const line = two.split('\n').findIndex((one) => one.includes('with: socket-8'));
    const uri = `${MemoryFiles.ROOT}/${PROCEDURE}`;
    expect(counter.of('tool', 'socket-8').places).toEqual([{ uri, line, character: 18, length: 8 }]);
  });

  test('reads again only what changed, and forgets what is gone', async () => {
    const counter = new UseCounter(`${MemoryFiles.ROOT}/${FAMILY}`);
    const readings: string[] = [];
    const count = (files: Readonly<Record<string, string>>) =>
      counter.count(proceduresAmong(files), (uri, text) => {
        readings.push(uri.slice(MemoryFiles.ROOT.length + 1));
        return readProcedure(uri, text);
      });
    await count({
      'a.procedure.yaml': two,
      'b.procedure.yaml': two,
      'c.procedure.yaml': 'procedure: of something else\n',
    });
    expect(counter.of('part', 'cover')).toMatchObject({ steps: 4, procedures: 2 });
    await count({ 'a.procedure.yaml': two, 'b.procedure.yaml': two.replace('install: cover', 'install: wheel') });
    expect(counter.of('part', 'cover')).toMatchObject({ steps: 3, procedures: 2 });
    await count({ 'a.procedure.yaml': two });
    expect(counter.of('part', 'cover')).toMatchObject({ steps: 2, procedures: 1 });
    expect(readings).toEqual(['a.procedure.yaml', 'b.procedure.yaml', 'b.procedure.yaml']);
  });
});

describe('For which builds a step is', () => {
  const procedure = (step: string, phase = '') => `${HEAD}phases:
  - phase: Assemble
${phase}    steps:
      - step: fit-wheel
        title: Fit the wheel
${step}        do:
          - install: wheel
`;

  test('a step for some of them', async () => {
    expect(await lenses(PROCEDURE, { [PROCEDURE]: procedure('        when: k1-b\n') })).toEqual([
      'fit-wheel: holds for 1 of 3 builds',
    ]);
  });

  test('with the condition of its phase', async () => {
    const text = procedure('        unless: big-wheel\n', '    when: k1-a\n');
    expect(await lenses(PROCEDURE, { [PROCEDURE]: text })).toEqual(['fit-wheel: holds for 1 of 3 builds']);
    const none = procedure('        unless: k1-a\n', '    when: k1-a\n');
    expect(await lenses(PROCEDURE, { [PROCEDURE]: none })).toEqual(['fit-wheel: holds for no build']);
  });

  test('nothing where it is for all, or the bench decides', async () => {
    expect(await lenses(PROCEDURE, { [PROCEDURE]: procedure('') })).toEqual([]);
    expect(await lenses(PROCEDURE, { [PROCEDURE]: procedure('        when: wheel=renewed\n') })).toEqual([]);
  });

  test('nothing that nobody wants to see', async () => {
    const text = procedure('        when: k1-b\n');
    expect(await lenses(PROCEDURE, { [PROCEDURE]: text }, { uses: true, builds: false })).toEqual([]);
    expect(await lenses(FAMILY, { [PROCEDURE]: text }, { uses: false, builds: true })).toEqual([]);
  });
});
