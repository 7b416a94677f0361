import { expect, test } from 'vitest';
import { inFamily, withFiles } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'figure-missing';
const figure = (file: string) => inFamily(`figures:\n  front: { file: ${file}, alt: The front }`);

test('a drawing that holds SVG is fine, whatever stands before it', async () => {
  const svg = '<?xml version="1.0"?>\n<!-- drawn by hand -->\n<svg xmlns="http://www.w3.org/2000/svg"/>';
  expect(await reported(withFiles(figure('../f.svg'), { 'f.svg': svg }), RULE)).toEqual([]);
});

test('a file that is none, one of another kind, one outside', async () => {
  expect((await reported(figure('../f.svg'), RULE))[0]).toMatch(/^\.\.\/f\.svg: No file is at/);
  expect((await reported(figure('../f.png'), RULE))[0]).toContain('is not named *.svg');
  expect((await reported(figure('../../../f.svg'), RULE))[0]).toContain('leads out of the folder');
  expect((await reported(withFiles(figure('../f.svg'), { 'f.svg': 'a photograph' }), RULE))[0]).toContain(
    'holds no SVG',
  );
});
