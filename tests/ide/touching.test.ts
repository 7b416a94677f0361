import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { documentUnit } from '../../server/src/core/analysis/documentUnit';
import { scalarsOf } from '../../server/src/core/ide/nodePath';
import { touches, unitsWithin } from '../../server/src/core/ide/unitsWithin';
import { unitsIn } from '../../server/src/core/model/facts';
import { documentKindOf } from '../../server/src/core/syntax/documentKind';
import { readDocument, type SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import type { Span } from '../../server/src/core/text/span';
import { documentsBelow, uriOfPath } from '../../server/src/node/nodeFiles';
import { seededRandom } from '../support/seededRandom';
import { randomEdit } from '../support/typing';

const SEED = Number(process.env.WITNESSMARK_SEED ?? 20261126);
const paths = documentsBelow(resolve('sample-procedures')).filter((path) => !path.endsWith('witnessmark.yaml'));

function read(path: string, text: string): SyntaxDocument {
  const uri = uriOfPath(path);
  return readDocument(uri, documentKindOf(uri) ?? 'procedure', text, new ReadingMemo());
}

/** What touches a span, looked for in all of the document and from its first part on alone. */
function bothWays(document: SyntaxDocument, span: Span) {
  const isThere = (one: Span) => one.start <= span.end && span.start <= one.end;
  const scalars = (found: ReturnType<typeof scalarsOf>) =>
    [...found].map(({ scalar }) => document.spanOf(scalar)).filter(isThere);
  const unit = documentUnit(document);
  const units = [...(unit === undefined ? [] : unitsIn(unit))].filter((one) => touches(document, one.node, span));
  return [
    { scalars: scalars(scalarsOf(document)), units: new Set(units) },
    { scalars: scalars(scalarsOf(document, span)), units: new Set(unitsWithin(document, span)) },
  ] as const;
}

test.each(paths)('the same is found at a place of %s as by looking through all of it, torn or not', (path) => {
  const random = seededRandom(SEED);
  let text = readFileSync(path, 'utf8');
  for (let round = 0; round < 6; round++) {
    const document = read(path, text);
    for (let i = 0; i < 12; i++) {
      const start = Math.floor(random() * (text.length + 1));
      const span = { start, end: Math.min(text.length, start + (i % 3 === 0 ? Math.floor(random() * 400) : 0)) };
      const [whole, halved] = bothWays(document, span);
      expect(halved, `seed ${SEED}, round ${round}, ${span.start}–${span.end}`).toEqual(whole);
    }
    text = randomEdit(text, random);
  }
});
