import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { documentUnit } from '../../server/src/core/analysis/documentUnit';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import { completionsAt } from '../../server/src/core/ide/completion/complete';
import { scalarsOf } from '../../server/src/core/ide/nodePath';
import { unitsIn } from '../../server/src/core/model/facts';
import { UNIT_SHAPES } from '../../server/src/core/model/generated/shapes';
import type { Prose } from '../../server/src/core/model/values';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { sourceRange } from '../../server/src/core/syntax/scalarSource';
import { applyEdits, type Span } from '../../server/src/core/text/span';
import { loadAll } from '../support/markedText';

const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
const PATHS = [
  'procedures/v4-wheel-44.procedure.yaml',
  'procedures/h9-rebuild.procedure.yaml',
  'families/ostrel-v4.family.yaml',
  'families/brendahl-h9.family.yaml',
  'kits/v4-major.kit.yaml',
  'kits/h9-rebuild.kit.yaml',
  'stores/bay-2.stores.yaml',
  'stores/heavy-bay.stores.yaml',
  'witnessmark.yaml',
];
const files = Object.fromEntries(PATHS.map((path) => [path, readFileSync(`sample-procedures/${path}`, 'utf8')]));
const whole = await loadAll(files);
const uris = [...whole.uris];

/** A word that the definitions and the other documents tell: a key, an id, one of a few words, a path. */
interface Word {
  readonly path: string;
  readonly span: Span;
  readonly text: string;
  readonly is: 'key' | 'id' | 'mention' | 'condition' | 'choice' | 'path';
}

const keys = new Set(Object.values(UNIT_SHAPES).flatMap(({ shape }) => Object.keys(shape.keys)));

function documentAt(path: string): SyntaxDocument {
  const document = whole.document(`file:///work/${path}`);
  if (document === undefined) throw new Error(path);
  return document;
}

/** What the model reads as such, so that completion is not measured by itself. */
function wordsOf(path: string): Word[] {
  const document = documentAt(path);
  const unit = documentUnit(document);
  const units = new Map((unit === undefined ? [] : unitsIn(unit)).map((one) => [one.node, one]));
  return [...scalarsOf(document)].flatMap(({ scalar, isKey, nodes, pairs }): Word[] => {
    const span = document.spanOf(sourceRange(scalar, 0, scalar.text.length));
    const word = (is: Word['is']): Word[] => [{ path, span, text: scalar.text, is }];
    const facts = nodes.flatMap((node) => units.get(node)?.facts ?? []);
    if (facts.some(({ paths }) => paths.some((one) => one.node === scalar))) {
      return scalar.text.endsWith('.svg') ? [] : word('path');
    }
    const ref = facts.flatMap(({ refs }) => refs).find((one) => one.ref.node === scalar)?.ref;
    if (ref !== undefined) return ref.id === scalar.text ? word('id') : [];
    const names = [...facts.flatMap(({ conditions }) => conditions.flatMap((one) => one.condition.names))];
    const cases = facts.flatMap(({ byBuilds }) => byBuilds.map((one) => one.byBuild));
    const isCase = cases.some((one) => one.is === 'cases' && one.cases.some(({ key }) => key === scalar));
    if (isCase || names.some(({ node }) => node === scalar)) return word('condition');
    const prose = facts.flatMap((one) => one.prose).find((one) => one.prose.scalar === scalar)?.prose;
    if (prose !== undefined) return mentionsOf(document, path, prose);
    if (isKey) {
      const owner = nodes.findLast((node) => node.kind === 'map' && units.has(node));
      const isOwn = owner?.kind === 'map' && owner.pairs.some((pair) => pair === pairs.at(-1));
      return isOwn && keys.has(scalar.text) ? word('key') : [];
    }
    const key = pairs.at(-1)?.key.text ?? '';
    return CHOICES.has(key) && /^[a-z0-9-]+$/.test(scalar.text) ? word('choice') : [];
  });
}

/** The ids in a text, each without its signs. */
function mentionsOf(document: SyntaxDocument, path: string, { scalar, mentions }: Prose): Word[] {
  return mentions.map(({ id, from, to }) => {
    const span = document.spanOf(sourceRange(scalar, from + 1, to - 1));
    return { path, span, text: id, is: 'mention' };
  });
}

const CHOICES = new Set([
  'kind',
  'renew',
  'hand',
  'before-fitting',
  'status',
  'sign',
  'by',
  'trial',
  'reject',
  'paper',
]);

const all = PATHS.flatMap(wordsOf);

/** What is offered where a word was, once it is gone. */
function labelsWithout({ path, span }: Word): string[] {
  const before = documentAt(path);
  const text = applyEdits(before.text, [{ span, text: '' }]);
  const { snapshot, document } = withOtherText(whole, before, text);
  const found = completionsAt({ snapshot, document, offset: span.start, files: uris });
  return (found?.candidates ?? []).map(({ label }) => label);
}

test.each<[Word['is'], number]>([
  ['key', 120],
  ['id', 200],
  ['mention', 40],
  ['condition', 80],
  ['choice', 80],
  ['path', 20],
])(`a word that was there is offered again where it is taken out: %s (seed ${seed})`, (is, numRuns) => {
  const words = all.filter((word) => word.is === is);
  expect(words.length).toBeGreaterThan(5);
  const missing = fc.sample(fc.constantFrom(...words), { seed, numRuns }).flatMap((word) => {
    if (labelsWithout(word).includes(word.text)) return [];
    const line = documentAt(word.path).text.slice(0, word.span.start).split('\n').length;
    return [`${word.path}:${line} ${word.text}`];
  });
  expect(missing).toEqual([]);
});

const place = fc.record({
  path: fc.constantFrom(...PATHS),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(30),
  put: fc.constantFrom('', '"', '[', '{ ', '\n', ': ', '\t', '- ', '<', "'x\n", '🔧', '\r\n', '\n      ', '|\n', '#'),
  cursor: fc.integer({ min: -20, max: 20 }),
});

test(`at any place of a broken document what is replaced lies around the cursor, on its line (seed ${seed})`, () => {
  let offered = 0;
  fc.assert(
    fc.property(place, ({ path, at, length, put, cursor }) => {
      const before = documentAt(path);
      const start = Math.floor(at * before.text.length);
      const text = applyEdits(before.text, [{ span: { start, end: start + length }, text: put }]);
      const { snapshot, document } = withOtherText(whole, before, text);
      const offset = Math.max(0, Math.min(text.length, start + cursor));
      const found = completionsAt({ snapshot, document, offset, files: uris });
      if (found === undefined) return;
      offered++;
      const { replace, insert } = found;
      expect(insert.start).toBe(replace.start);
      expect(replace.start <= offset && offset <= replace.end && insert.end <= offset).toBe(true);
      expect(text.slice(replace.start, replace.end)).not.toMatch(/[\r\n]/);
      const labels = found.candidates.map(({ label }) => label);
      expect(new Set(labels).size).toBe(labels.length);
    }),
    { seed, numRuns: 300 },
  );
  expect(offered).toBeGreaterThan(60);
});
