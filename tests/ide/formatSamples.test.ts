import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDocument, formatRange } from '../../server/src/core/ide/format/formatDocument';
import { formatOnType } from '../../server/src/core/ide/format/onType';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { fullMessage } from '../../server/src/core/rules/finding';
import { type DocumentKind, documentKindOf } from '../../server/src/core/syntax/documentKind';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { applyEdits } from '../../server/src/core/text/span';
import { openFiles } from '../support/memoryFiles';
import { plainRoot, read } from '../support/read';
import { type Disorder, disordered, disorders } from './formatting/disorder';
import { commentsIn, entriesInOrder, groupsIn } from './formatting/structure';

const seed = Number(process.env.WITNESSMARK_SEED ?? Date.now() % 2 ** 31);
console.log(`seed ${seed}: set WITNESSMARK_SEED to run the same values again`);

const folder = join(import.meta.dirname, '../../sample-procedures');
const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => documentKindOf(path) !== undefined)
  .sort();
const samples = Object.fromEntries(names.map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
const kindOf = (path: string): DocumentKind => documentKindOf(path) ?? 'procedure';
const format = (document: SyntaxDocument): string => applyEdits(document.text, formatDocument(document));
const readable = names.filter((path) => read(samples[path] ?? '', kindOf(path)).problems.length === 0);

function forDisordered(runs: number, holds: (path: string, text: string) => void | Promise<void>): Promise<void> {
  const property = fc.asyncProperty(fc.constantFrom(...readable), disorders, async (path: string, how: Disorder) => {
    await holds(path, disordered(samples[path] ?? '', how));
  });
  return fc.assert(property, { seed, numRuns: runs });
}

test('the samples are formatted', () => {
  const changed = names.filter((path) => formatDocument(read(samples[path] ?? '', kindOf(path))).length > 0);
  expect(changed).toEqual([]);
});

describe('a sample in disorder', () => {
  test('is as disordered as the test means it to be, and still says the same', async () => {
    let changed = 0;
    await forDisordered(40, (path, text) => {
      const before = read(samples[path] ?? '', kindOf(path));
      const after = read(text, kindOf(path));
      expect(after.problems).toEqual([]);
      expect(plainRoot(after)).toEqual(plainRoot(before));
      if (formatDocument(after).length > 0) changed++;
    });
    expect(changed).toBeGreaterThan(30);
  });

  test('is formatted so that it says the same, with every comment and every group', async () => {
    await forDisordered(80, (path, text) => {
      const before = read(text, kindOf(path));
      const after = read(format(before), kindOf(path));
      expect(after.problems).toEqual([]);
      expect(plainRoot(after)).toEqual(plainRoot(before));
      expect(entriesInOrder(after)).toEqual(entriesInOrder(before));
      expect(commentsIn(after.text)).toEqual(commentsIn(text));
      expect(groupsIn(after)).toEqual(groupsIn(before));
    });
  });

  test('is formatted once and for all, with its line ends', async () => {
    await forDisordered(80, (path, text) => {
      const once = format(read(text, kindOf(path)));
      expect(format(read(once, kindOf(path)))).toBe(once);
      expect(once).not.toMatch(/[ \t]\r?\n|\n\r?\n\r?\n/);
      expect(once).toMatch(/\S\r?\n$/);
      const lineEnds = new Set(once.match(/\r?\n/g));
      expect([...lineEnds]).toEqual([text.includes('\r\n') ? '\r\n' : '\n']);
    });
  });

  test('has the same findings before and after', async () => {
    await forDisordered(12, async (path, text) => {
      const misspelt = text.replaceAll(/(torque: .*?\d) N·m/g, '$1Nm');
      const after = format(read(misspelt, kindOf(path)));
      expect(await findings(path, after)).toEqual(await findings(path, text));
    });
  });

  test('changes nowhere but in the items that a range touches', async () => {
    const range = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 400 }));
    const property = fc.property(fc.constantFrom(...readable), disorders, range, (path, how, [part, length]) => {
      const document = read(disordered(samples[path] ?? '', how), kindOf(path));
      const start = Math.floor(part * document.text.length);
      const span = { start, end: Math.min(start + length, document.text.length) };
      const edits = formatRange(document, span);
      const allowed = touchedBy(document, span);
      for (const edit of edits)
        expect(allowed.some((one) => one.start <= edit.span.start && edit.span.end <= one.end)).toBe(true);
      const after = read(applyEdits(document.text, edits), kindOf(path));
      expect(plainRoot(after)).toEqual(plainRoot(document));
      expect(commentsIn(after.text)).toEqual(commentsIn(document.text));
    });
    fc.assert(property, { seed, numRuns: 120 });
  });

  test('changes on no other line while somebody types', () => {
    const typed = fc.constantFrom('\n', '-', ':', '\n-', '\n  -', '\n    with:');
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const property = fc.property(fc.constantFrom(...names), place, typed, (path, part, what) => {
      const source = samples[path] ?? '';
      const at = Math.floor(part * source.length);
      const text = source.slice(0, at) + what + source.slice(at);
      const offset = at + what.length;
      const line = { start: text.lastIndexOf('\n', offset - 1) + 1, end: text.indexOf('\n', offset) };
      for (const { span, text: added } of formatOnType(read(text, kindOf(path)), offset, what.slice(-1))) {
        expect(span.start).toBeGreaterThanOrEqual(line.start);
        expect(span.end).toBeLessThanOrEqual(line.end < 0 ? text.length : line.end);
        expect(added).not.toContain('\n');
      }
    });
    fc.assert(property, { seed, numRuns: 300 });
  });
});

/** What was found but for spellings, without where: rules and messages. */
async function findings(path: string, text: string): Promise<string[]> {
  const { workspace, document } = await openFiles({ ...samples, [path]: text }, path);
  const { findings } = checkDocument(workspace.snapshot, document, { today: '2026-11-01' });
  return findings
    .filter(({ rule }) => rule !== 'unit-spelling')
    .map((finding) => `${finding.rule}: ${fullMessage(finding)}`)
    .sort();
}

/** The lines of a span, and those of the items that it touches. */
function touchedBy(document: SyntaxDocument, span: { start: number; end: number }): { start: number; end: number }[] {
  const wholeLines = ({ start, end }: { start: number; end: number }) => {
    const next = document.text.indexOf('\n', end);
    return { start: document.text.lastIndexOf('\n', start - 1) + 1, end: next < 0 ? document.text.length : next + 1 };
  };
  const lines = wholeLines({ start: span.start, end: Math.max(span.start, span.end - 1) });
  const items = document.items
    .map((item) => wholeLines(document.spanOf({ item, from: 0, to: item.text.length })))
    .filter((item) => item.start < lines.end && lines.start < item.end);
  return [
    {
      start: Math.min(lines.start, ...items.map(({ start }) => start)),
      end: Math.max(lines.end, ...items.map(({ end }) => end)),
    },
  ];
}
