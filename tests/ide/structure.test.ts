import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { documentLinksOf } from '../../server/src/core/ide/documentLinks';
import { foldsOf } from '../../server/src/core/ide/folding';
import { selectionsAt } from '../../server/src/core/ide/selection';
import { openMarks, pathOf, variantsOf } from '../support/markedText';
import { read } from '../support/read';
import { example, HEAD, KIT, steps } from './markedExample';

describe('folding', () => {
  /** The folds as `first line … last line`. */
  function folds(text: string): string[] {
    const lines = text.split(/\r?\n/);
    return foldsOf(read(text)).map(
      ({ kind, first, last }) => `${kind}: ${lines[first]?.trim()} … ${lines[last]?.trim()}`,
    );
  }

  const TEXT = `# One comment
# of two lines
procedure: OP-9

tools: [
  socket-8,
]
# A single line
phases:
  # Both
  # of these
  - phase: Strip
    steps:
      - step: open-cover
        title: Take off
        do:
          - loosen: cover-screw
            with: socket-8

  - phase: Assemble
    note: |
      # no comment
      # but text
    steps: []
`;
  const EXPECTED = [
    'comment: # One comment … # of two lines',
    'block: tools: [ … ]',
    'block: phases: … steps: []',
    'comment: # Both … # of these',
    'block: - phase: Strip … with: socket-8',
    'block: steps: … with: socket-8',
    'block: - step: open-cover … with: socket-8',
    'block: do: … with: socket-8',
    'block: - loosen: cover-screw … with: socket-8',
    'block: - phase: Assemble … steps: []',
    'block: note: | … # but text',
  ];

  test('phases, steps, keys and runs of comments, with either line end', () => {
    expect(folds(TEXT)).toEqual(EXPECTED);
    expect(folds(TEXT.replaceAll('\n', '\r\n'))).toEqual(EXPECTED);
  });

  test('nothing but comments, nothing, and what is broken', () => {
    expect(folds('')).toEqual([]);
    expect(folds('# a\n# b')).toEqual(['comment: # a … # b']);
    expect(folds(`${TEXT}  - phase: [\n    steps: "\n`)).toEqual(expect.arrayContaining(EXPECTED.slice(3, 9)));
  });

  test('a comment line in a folded text is text there and a comment behind it', () => {
    expect(folds('note: >\n  # one\n  # two\n# three\n# four\ntitle: x\n')).toEqual([
      'block: note: > … # two',
      'comment: # three … # four',
    ]);
  });

  test.each(['procedures/v4-major.procedure.yaml', 'faulty/broken-in-the-middle.procedure.yaml'])(
    'of %s: each lies within another or beside it',
    (path) => {
      const all = foldsOf(read(readFileSync(`sample-procedures/${path}`, 'utf8')));
      expect(all.length).toBeGreaterThan(20);
      for (const one of all) {
        expect(one.last).toBeGreaterThan(one.first);
        const crossing = all.filter(
          (other) => other.first > one.first && other.first <= one.last && other.last > one.last,
        );
        expect(crossing).toEqual([]);
      }
    },
  );
});

describe('growing a selection', () => {
  async function grown(instruction: string): Promise<string[]> {
    const { marked, document } = await openMarks(example(steps(instruction)));
    return selectionsAt(document, marked.offset).map(({ start, end }) => document.text.slice(start, end));
  }

  test('from a word to its id, value, entry and on to the whole document', async () => {
    const all = await grown('- say: "Turn the <cap-‸nut> back."\n  with: socket-8');
    expect(all.slice(0, 6)).toEqual([
      'nut',
      'cap-nut',
      'Turn the <cap-nut> back.',
      '"Turn the <cap-nut> back."',
      'say: "Turn the <cap-nut> back."',
      'say: "Turn the <cap-nut> back."\n            with: socket-8',
    ]);
    expect(all.at(-1)).toMatch(/^witnessmark: 1\n[\s\S]*socket-8\n$/);
  });

  test('from a name in a condition, and from a key', async () => {
    const all = await grown('- install: wheel\n  when: [nut-hand=le‸ft, k1-a]');
    expect(all.slice(0, 4)).toEqual(['left', 'nut-hand=left', '[nut-hand=left, k1-a]', 'when: [nut-hand=left, k1-a]']);
    expect((await grown('- ins‸tall: wheel')).slice(0, 2)).toEqual(['install', 'install: wheel']);
  });

  test('each holds the one before, at every place of a sample, broken ones too', () => {
    for (const text of [HEAD, 'phases: [\n  "x', '', '- a', steps('- say: "x\n- install: wheel')]) {
      for (const source of [text, text.replaceAll('\n', '\r\n')]) {
        const document = read(source);
        for (let offset = 0; offset <= source.length; offset++) {
          const spans = selectionsAt(document, offset);
          expect(spans.at(-1)).toEqual({ start: 0, end: source.length });
          spans.forEach((span, i) => {
            const inner = spans[i - 1] ?? { start: offset, end: offset };
            expect(span.start <= inner.start && inner.end <= span.end).toBe(true);
          });
        }
      }
    }
  });
});

describe('links in a document', () => {
  test('lead from paths to the files that there are, quotes left out', async () => {
    const text = steps('- install: wheel‸', 'figures:\n  view: { file: "nut.svg" }\n  none: { file: other.svg }\n');
    for (const variant of variantsOf({ ...example(text), 'nut.svg': '<svg/>' })) {
      const { snapshot, document } = await openMarks(variant);
      const links = documentLinksOf(snapshot, document).map(({ span, target }) => [
        document.text.slice(span.start, span.end),
        pathOf(target),
      ]);
      expect(links).toEqual([
        ['k1.family.yaml', 'k1.family.yaml'],
        ['k1.kit.yaml', KIT],
        ['bay.stores.yaml', 'bay.stores.yaml'],
        ['nut.svg', 'nut.svg'],
      ]);
    }
  });
});
