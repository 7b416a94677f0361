import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import type { Snapshot } from '../../server/src/core/analysis/snapshot';
import { type SemanticToken, semanticTokensOf } from '../../server/src/core/ide/semanticTokens';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { loadAll, openMarks, variantsOf } from '../support/markedText';
import { example, FAMILY, steps } from './markedExample';

/** The tokens of the line with the cursor, as `text type.modifier`, the same in every variant of the files. */
async function tokensAt(source: Readonly<Record<string, string>>): Promise<string[]> {
  const answers: string[][] = [];
  for (const variant of variantsOf(source)) {
    const { marked, snapshot, document } = await openMarks(variant);
    const start = document.text.lastIndexOf('\n', marked.offset - 1) + 1;
    const end = `${document.text}\n`.indexOf('\n', marked.offset);
    answers.push(tokensIn(snapshot, document, { start, end }));
  }
  const [first = [], ...others] = answers;
  for (const other of others) expect(other).toEqual(first);
  return first;
}

function tokensIn(snapshot: Snapshot, document: SyntaxDocument, span: { start: number; end: number }): string[] {
  return semanticTokensOf(snapshot, document, span)
    .filter((token) => token.span.start >= span.start && token.span.end <= span.end)
    .map(
      ({ span: at, type, modifiers }) => `${document.text.slice(at.start, at.end)} ${[type, ...modifiers].join('.')}`,
    );
}

const inStep = (instruction: string) => tokensAt(example(steps(instruction)));

describe('tokens', () => {
  test('of ids by what they stand for, with the verb', async () => {
    expect(await inStep('- { remove: [‸cover, cap-nut], with: socket-8, using: degreaser }')).toEqual([
      'remove keyword',
      'cover part',
      'cap-nut part',
      'socket-8 tool',
      'degreaser consumable',
    ]);
    expect(await inStep('- { measure: ‸end-play, figure: view }')).toEqual([
      'measure keyword',
      'end-play limit',
      'view figure.unknown',
    ]);
    expect(await inStep('- { check: ‸free-turn, if-not: { go-to: fit-wheel } }')).toEqual([
      'check keyword',
      'free-turn check',
      'fit-wheel step',
    ]);
  });

  test('of quantities: each number and each unit', async () => {
    expect(await inStep('- { tighten: cap-nut, torque: "4.6 ± 0.3‸ N·m (41 ± 3 lbf·in)" }')).toEqual([
      'tighten keyword',
      'cap-nut part',
      '4.6 number',
      '0.3 number',
      'N·m unit',
      '41 number',
      '3 number',
      'lbf·in unit',
    ]);
    expect(await inStep('- say: Lift it by 2..3 mm ‸and turn it by 90°.')).toEqual([
      '2 number',
      '3 number',
      'mm unit',
      '90 number',
      '° unit',
    ]);
  });

  test('of conditions and outcomes, also as the keys of values', async () => {
    expect(await inStep('- { install: wheel, when: [k1-a, nut-hand=left‸] }')).toEqual([
      'install keyword',
      'wheel part',
      'k1-a condition',
      'nut-hand condition',
      'left enumMember',
    ]);
    expect(await inStep('- { tighten: cap-nut, torque: { k1-a: 4 N·m, otherwise: ‸5 N·m } }')).toEqual([
      'tighten keyword',
      'cap-nut part',
      'k1-a condition',
      '4 number',
      'N·m unit',
      '5 number',
      'N·m unit',
    ]);
  });

  test('of ids in a text for people', async () => {
    expect(await inStep('- say: Turn <cap-nut> with <tool/socket-8>, ‸not <cap-nutt>.')).toEqual([
      'cap-nut part.mention',
      'socket-8 tool.mention',
      'cap-nutt part.mention.unknown',
    ]);
  });

  test('of what nothing has, and of what is laid out and never used', async () => {
    expect(await inStep('- remove: cap-nutt‸')).toEqual(['remove keyword', 'cap-nutt part.unknown']);
    const text = steps('- { remove: wheel, with: socket-8 }').replace('tools: [', 'tools: [‸');
    expect(await tokensAt(example(text))).toEqual([
      'torque-wrench-10 tool.unused',
      'socket-8 tool',
      'socket-10 tool.unused',
      'dial-gauge tool.unused',
    ]);
  });

  test('of what a family declares, with the values that the bench may find', async () => {
    const line = (mark: readonly [string, string]) => tokensAt(example(steps('- remove: wheel'), { [FAMILY]: [mark] }));
    expect(await line(['nut-hand: {', 'nut-hand:‸ {'])).toEqual([
      'nut-hand condition.declaration',
      'left enumMember',
      'right enumMember',
      'k1-b condition',
    ]);
    expect(await line(['cover-seal: {', 'cover-seal:‸ {'])).toEqual([
      'cover-seal part.declaration',
      'core part',
      'cover part',
      'cover part',
    ]);
  });

  test('of no sentence as a whole', async () => {
    expect(await inStep('- Look ‸at <wheel>.')).toEqual(['wheel part.mention']);
  });

  test('line by line where a text is folded', async () => {
    const { marked, snapshot, document } = await openMarks(
      example(steps('- say: >-\n    Turn <cap-nut> until it has gone 2\n    mm, ‸then stop.')),
    );
    const all = semanticTokensOf(snapshot, document);
    const told = all.map(({ span }) => marked.files[marked.at]?.slice(span.start, span.end));
    expect(told.slice(-3)).toEqual(['cap-nut', '2', 'mm']);
  });
});

const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
const inFolder = (folder: string) =>
  readdirSync(`sample-procedures/${folder}`).flatMap((name) => (name.endsWith('.yaml') ? [`${folder}/${name}`] : []));
const PATHS = ['families', 'kits', 'stores', 'procedures'].flatMap(inFolder);
const FAULTY = inFolder('faulty');
const samples = await loadAll(
  Object.fromEntries([...PATHS, ...FAULTY].map((path) => [path, readFileSync(`sample-procedures/${path}`, 'utf8')])),
);

/** In order, apart from each other, each on one line of the text. */
function checkSound(text: string, tokens: readonly SemanticToken[]): void {
  let end = 0;
  for (const { span } of tokens) {
    const isSound = end <= span.start && span.start < span.end && span.end <= text.length;
    if (!isSound || /[\r\n]/.test(text.slice(span.start, span.end))) throw new Error(JSON.stringify(span));
    end = span.end;
  }
}

function sample(path: string): SyntaxDocument {
  const document = samples.document(`file:///work/${path}`);
  if (document === undefined) throw new Error(path);
  return document;
}

test.each([...PATHS, ...FAULTY])('the tokens of %s are sound', (path) => {
  const document = sample(path);
  const tokens = semanticTokensOf(samples, document);
  expect(tokens.length).toBeGreaterThan(2);
  checkSound(document.text, tokens);
});

test(`the tokens of a text that is cut anywhere are sound, and a stretch has those of the whole (seed ${seed})`, () => {
  const cut = fc.record({
    path: fc.constantFrom(...PATHS),
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat(200),
    put: fc.constantFrom('', '"', '[', '\n', '<', '🔧', '\r\n', '>-\n', '≤ 5'),
  });
  fc.assert(
    fc.property(cut, ({ path, from, length, put }) => {
      const before = sample(path);
      const start = Math.floor(from * before.text.length);
      const text = before.text.slice(0, start) + put + before.text.slice(start + length);
      const { snapshot, document } = withOtherText(samples, before, text);
      const all = semanticTokensOf(snapshot, document);
      checkSound(text, all);
      const within = { start, end: Math.min(text.length, start + 300) };
      const touching = all.filter(({ span }) => span.start <= within.end && within.start <= span.end);
      expect(semanticTokensOf(snapshot, document, within)).toEqual(touching);
    }),
    { seed, numRuns: 100 },
  );
});
