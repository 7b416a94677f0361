import { expect, test } from 'vitest';
import { inStep, wholeDocument } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'not-plain-yaml';

test('a text that starts with an exclamation mark is put in quotes', async () => {
  const mended = await fixed(inStep('- say: ! Hot parts'), RULE, 'Put the text in quotes');
  expect(mended.files[mended.at]).toContain('- say: "! Hot parts"\n');
});

test('a tag is taken out', async () => {
  const mended = await fixed(inStep('- say: !!str Hot parts'), RULE, 'Take out !!str');
  expect(mended.files[mended.at]).toContain('- say: Hot parts\n');
});

test('an alias is written out with the value of its anchor', async () => {
  const example = inStep(
    '- loosen: cap-nut\n  hold: &hold { at: hexagon }\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  hold: *hold',
  );
  expect(await reported(example, RULE)).toHaveLength(2);
  const mended = await fixed(example, RULE, 'Write out { at: hexagon }');
  expect(mended.files[mended.at]).toContain('hold: { at: hexagon }\n');
});

test('a merge key is told once', async () => {
  const findings = await formFindings(inStep('- <<: *all\n  install: cover'));
  expect(findings.map((finding) => finding.message)).toEqual([
    '"<<" draws in keys from elsewhere; write those keys out here',
  ]);
  expect(await offered(inStep('- <<: *all\n  install: cover'), RULE)).toEqual([]);
});

test('directives and second documents are told at their line', async () => {
  const base = inStep('- install: cover');
  const text = `%YAML 1.2\n---\n${base.files[base.at]}---\nwitnessmark: 1\n`;
  const found = await formFindings(wholeDocument(base.at, text));
  expect(found.map((finding) => finding.rule)).toEqual([RULE, RULE]);
});

test('a star before words is no alias', async () => {
  const example = inStep('- say: *careful* now');
  expect(await reported(example, 'not-plain-yaml')).toEqual([
    '*careful*: A text that starts with * is not read as it stands; put it in quotes',
  ]);
  const mended = await fixed(example, 'not-plain-yaml');
  expect(mended.files[mended.at]).toContain('- say: "*careful* now"\n');
});
