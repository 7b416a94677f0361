import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'figure-text-missing';

test('a figure without a text, or with an empty one, is shown by its file or by the empty text', async () => {
  expect((await reported(inFamily('figures:\n  front: { file: a.svg }'), RULE))[0]).toMatch(/^a\.svg: This figure/);
  expect((await reported(inFamily('figures:\n  front: { file: a.svg, alt: "" }'), RULE))[0]).toMatch(
    /^"": This figure/,
  );
});

test('a key that is still being typed is told once', async () => {
  const found = await formFindings(inFamily('figures:\n  front:\n    alt:\n    file: a.svg'));
  expect(found.map((finding) => finding.rule)).toEqual(['value-shape', 'figure-missing']);
});
