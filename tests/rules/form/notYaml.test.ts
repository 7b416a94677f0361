import { expect, test } from 'vitest';
import { asStep, inFamily, inStep, wholeDocument } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'not-yaml';

test('a second colon is shown with its whole text, and quotes mend it', async () => {
  const example = inStep('- say: Stop here: the shaft breaks');
  expect(await reported(example, RULE)).toEqual([
    'Stop here: the shaft breaks: A second ": " on the line makes this unreadable; put the whole text in quotes',
  ]);
  const mended = await fixed(example, RULE, 'Put the text in quotes');
  expect(mended.files[mended.at]).toContain('- say: "Stop here: the shaft breaks"\n');
});

test('an open quote is shown where it opens, not where the step ends, and can be closed', async () => {
  const example = asStep('title: "Do the work\ndo:\n  - install: cover');
  expect(await reported(example, RULE)).toEqual(['"Do the work: A closing quote is missing']);
  const mended = await fixed(example, RULE, 'Close the quote');
  expect(mended.files[mended.at]).toContain('title: "Do the work"\n');
  expect(await formFindings(mended)).toEqual([]);
});

test('a broken step says nothing else about itself', async () => {
  const findings = await formFindings(asStep('title: [Do\ndo:\n  - instal: cover'));
  expect(findings.map((finding) => finding.rule)).toEqual([RULE]);
});

test('a tab becomes the indentation that the line before asks for', async () => {
  const example = inFamily('figures:\n\tsection: { file: section.svg, alt: The section }');
  const mended = await fixed(example, RULE, 'Indent with spaces');
  expect(mended.files[mended.at]).toContain('figures:\n  section: {');
});

test('a merge that was left undone is told once, and its doubled keys are not', async () => {
  const conflict = '<<<<<<< ours\nstatus: draft\n=======\nstatus: released\n>>>>>>> theirs\n';
  const base = inStep('- install: cover');
  const text = base.files[base.at]?.replace('phases:', `${conflict}phases:`) ?? '';
  const example = wholeDocument(base.at, text);
  const found = await formFindings(example);
  expect(found.map((finding) => finding.message)).toEqual([
    'Two versions stand here, as a merge left them; keep one of them and take out the lines that mark them',
  ]);
});

test('a key that stands twice points to the first one', async () => {
  const findings = await formFindings(inStep('- install: cover\n  note: a\n  note: b'));
  const [finding] = findings.filter((one) => one.rule === RULE);
  expect(finding?.message).toContain('"note" stands twice');
  expect(finding?.related[0]?.span.start).toBeLessThan(finding?.span.start ?? 0);
});

test('a key whose colon its value stands against gets its space', async () => {
  const example = inStep('- tighten: cap-nut\n  torque:4.6 ± 0.3 N·m\n  with: socket-8');
  expect(await reported(example, RULE)).toEqual([
    'torque:4.6 ± 0.3 N·m: A space is missing behind the colon of "torque"; write one',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('  torque: 4.6 ± 0.3 N·m\n');
});
