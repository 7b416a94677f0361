import { expect, test } from 'vitest';
import { EXAMPLE_HEAD } from '../../../server/src/core/rules/exampleDocuments';
import { inFamily, inProcedure } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'id-duplicate';

test('two steps of different phases with one id, the second one pointing to the first', async () => {
  const phase = (name: string): string =>
    `  - phase: ${name}\n    steps:\n      - { step: open-up, title: Open, do: [{ remove: cover }] }\n`;
  const example = inProcedure('', `${EXAMPLE_HEAD}phases:\n${phase('Strip')}${phase('Assemble')}`);
  const [finding, second] = await formFindings(example);
  const text = example.files[example.at] ?? '';
  expect(second).toBeUndefined();
  expect(finding?.span.start).toBe(text.lastIndexOf('open-up'));
  expect(finding?.related[0]?.span.start).toBe(text.indexOf('open-up'));
});

test('two parts with one id are told once, although a key stands twice', async () => {
  const found = await formFindings(
    inFamily('figures:\n  front: { alt: a, file: a.svg }\n  front: { alt: b, file: b.svg }'),
  );
  expect(found.map((finding) => finding.rule).filter((rule) => rule !== 'figure-missing')).toEqual([RULE]);
});

test('things of different kinds may share an id', async () => {
  expect(await reported(inFamily('checks:\n  cover: { say: The cover is tight. }'), RULE)).toEqual([]);
});
