import { describe, expect, test } from 'vitest';
import { RULES } from '../../server/src/core/rules/registry';
import { checkExample } from '../support/checkText';

describe.each(RULES.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test('its wrong example is reported by it', async () => {
    const { findings } = await checkExample(rule.doc.wrong);
    expect(findings.map((finding) => finding.rule)).toContain(id);
  });

  test('its right example is not reported by it', async () => {
    const { findings } = await checkExample(rule.doc.right);
    expect(findings.filter((finding) => finding.rule === id).map((finding) => finding.message)).toEqual([]);
  });

  test('its messages start with a capital and have no full stop at their end', async () => {
    const { findings } = await checkExample(rule.doc.wrong);
    for (const finding of findings.filter((one) => one.rule === id)) {
      expect(finding.message).toMatch(/^[A-Z<"].*[^.]$/s);
      expect(finding.message).not.toMatch(/\binvalid\b|undefined|\[object/i);
    }
  });

  test('a rule that says it has a fix offers one in its wrong example', async () => {
    const { findings } = await checkExample(rule.doc.wrong);
    const fixes = findings.filter((finding) => finding.rule === id).flatMap((finding) => finding.fixes());
    if (rule.fix === 'none') expect(fixes).toEqual([]);
    else expect(fixes.length).toBeGreaterThan(0);
  });
});
