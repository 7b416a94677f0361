import { expect, test } from 'vitest';
import { inStep } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'text-lost';

test('what is lost is underlined, and the safe fix keeps every character', async () => {
  const example = inStep('- say: Tighten bolt #3 by hand');
  expect((await reported(example, RULE))[0]).toMatch(/^#3 by hand: "#3 by hand" is lost/);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('- say: "Tighten bolt #3 by hand"\n');
});

test('a text that began on the line above is quoted from its start', async () => {
  const mended = await fixed(inStep('- say: Tighten the first\n    bolt #3 by hand'), RULE);
  expect(mended.files[mended.at]).toContain('- say: "Tighten the first\n');
  expect(await formFindings(mended)).toEqual([]);
});

test('within brackets the fix is only a suggestion, and nothing else is said about the lost bracket', async () => {
  const findings = await formFindings(inStep('- { say: Tighten bolt #3, note: x }'));
  expect(findings.map((finding) => finding.rule)).toEqual([RULE]);
  expect(findings[0]?.fixes().map((fix) => fix.safety)).toEqual(['suggestion']);
});

test('a remark is no lost text', async () => {
  expect(await reported(inStep('- say: Tighten the bolt # by hand'), RULE)).toEqual([]);
});

test('a remark that stands against its # behind an id is not quoted unseen', async () => {
  const findings = await formFindings(inStep('- remove: cover #lift it'));
  expect(findings[0]?.fixes().map((fix) => `${fix.safety}: ${fix.title}`)).toEqual([
    'suggestion: Set a space behind the #',
    'suggestion: Put the text in quotes',
  ]);
});
