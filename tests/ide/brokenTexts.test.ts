import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import { definitionAt } from '../../server/src/core/ide/definition';
import { documentLinksOf } from '../../server/src/core/ide/documentLinks';
import { foldsOf } from '../../server/src/core/ide/folding';
import { highlightsAt } from '../../server/src/core/ide/highlight';
import { idUsesIn } from '../../server/src/core/ide/idUses';
import { outlineOf } from '../../server/src/core/ide/outline';
import { referencesAt } from '../../server/src/core/ide/references';
import { prepareRename, renameAt } from '../../server/src/core/ide/rename';
import { selectionsAt } from '../../server/src/core/ide/selection';
import { symbolsOf } from '../../server/src/core/ide/workspaceSymbols';
import { applyEdits } from '../../server/src/core/text/span';
import { openSamples, SAMPLE_PATHS } from '../support/sampleDocuments';

const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
const whole = await openSamples();

/** A sample with a stretch replaced by what makes YAML stumble, and a place in it. */
const broken = fc.record({
  path: fc.constantFrom(...SAMPLE_PATHS),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(40),
  put: fc.constantFrom('', '"', '[', '{ ', '\n', ': ', '\t', '- ', '<', '&a ', "'x\n", '🔧', '\r\n', 'when: ='),
  cursor: fc.double({ min: 0, max: 1, noNaN: true }),
});

test(`a broken document gives what it can, and every place lies in its text (seed ${seed})`, () => {
  fc.assert(
    fc.property(broken, ({ path, at, length, put, cursor }) => {
      const before = whole.document(`file:///work/${path}`);
      if (before === undefined) throw new Error(path);
      const start = Math.floor(at * before.text.length);
      const text = applyEdits(before.text, [{ span: { start, end: start + length }, text: put }]);
      const { snapshot, document } = withOtherText(whole, before, text);
      const offset = Math.floor(cursor * text.length);
      const spans = [
        ...highlightsAt(snapshot, document, offset).map((one) => one.span),
        ...documentLinksOf(snapshot, document).map((one) => one.span),
        ...selectionsAt(document, offset),
        ...outlineOf(document).flatMap((one) => [one.span, one.labelSpan]),
        ...symbolsOf(document).map((one) => one.span),
      ];
      for (const span of spans) expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
      for (const fold of foldsOf(document)) expect(fold.last).toBeGreaterThan(fold.first);
      definitionAt(snapshot, document, offset);
      prepareRename(snapshot, document, offset);
      const renaming = renameAt(snapshot, document, offset, 'quite-another-name');
      if (renaming.is === 'refused') expect(renaming.why).toMatch(/^\S.*[^.]$/);
    }),
    { seed, numRuns: 150 },
  );
});

test('whatever names something is among the references to it, and stands for its id in the text', () => {
  let found = 0;
  for (const path of SAMPLE_PATHS) {
    const document = whole.document(`file:///work/${path}`);
    if (document === undefined) throw new Error(path);
    for (const [id, uses] of idUsesIn(document)) {
      const [use] = uses;
      if (use === undefined) continue;
      const span = document.spanOf(use.range);
      expect(document.text.slice(span.start, span.end)).toBe(id);
      if (definitionAt(whole, document, span.start) === undefined || use.is === 'path') continue;
      const places = referencesAt(whole, document, span.start).map((one) => [one.uri, one.span]);
      expect(places).toContainEqual([document.uri, span]);
      found++;
    }
  }
  expect(found).toBeGreaterThan(150);
});
