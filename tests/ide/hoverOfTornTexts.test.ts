import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import { hoverAt } from '../../server/src/core/ide/hover';
import { hintDetail, inlayHintsIn } from '../../server/src/core/ide/inlayHints';
import { openSamples, SAMPLE_PATHS } from '../support/sampleDocuments';

const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
const whole = await openSamples();

/** A sample with a stretch replaced by what makes YAML stumble, and a place near it. */
const torn = fc.record({
  path: fc.constantFrom(...SAMPLE_PATHS),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(60),
  put: fc.constantFrom('', '"', '[', '{ ', '\n', ': ', '- ', '<', '🔧', '\r\n', 'when: nut-hand=', 'unless: { none: ['),
  away: fc.integer({ min: -200, max: 200 }),
});

test(`hovers and hints of a torn text lie in it, and say something (seed ${seed})`, () => {
  let hovers = 0;
  let hints = 0;
  fc.assert(
    fc.property(torn, ({ path, at, length, put, away }) => {
      const before = whole.document(`file:///work/${path}`);
      if (before === undefined) throw new Error(path);
      const start = Math.floor(at * before.text.length);
      const text = before.text.slice(0, start) + put + before.text.slice(start + length);
      const { snapshot, document } = withOtherText(whole, before, text);
      const offset = Math.max(0, Math.min(text.length, start + away));
      const hover = hoverAt(snapshot, document, offset, []);
      if (hover !== undefined) {
        hovers++;
        expect(hover.span.start <= offset && offset <= hover.span.end && hover.span.end <= text.length).toBe(true);
        expect(hover.markdown.trim()).not.toBe('');
        expect(hover.plain).not.toMatch(/undefined|\[object/);
      }
      const choices = { secondUnit: true, turn: true, kitItem: true };
      const within = { start: offset, end: Math.min(text.length, offset + 500) };
      for (const hint of inlayHintsIn(snapshot, document, within, choices)) {
        hints++;
        expect(within.start <= hint.offset && hint.offset <= within.end).toBe(true);
        expect(hintDetail(snapshot, document, hint.kind, hint.offset)?.plain.trim()).not.toBe('');
      }
    }),
    { seed, numRuns: 150 },
  );
  // Texts that say nothing at all would prove nothing.
  expect(hovers).toBeGreaterThan(10);
  expect(hints).toBeGreaterThan(10);
});
