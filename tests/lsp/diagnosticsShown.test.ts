import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DiagnosticTag } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { RULES } from '../../server/src/core/rules/registry';
import { TestClient } from './client';

const { procedure, kit } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const RULE = 'torque-unit-missing';
const shownTags = {
  publishDiagnostics: { tagSupport: { valueSet: [DiagnosticTag.Unnecessary, DiagnosticTag.Deprecated] } },
};

describe('the page of a rule', () => {
  test('can be opened from a finding, where the client opens pages', async () => {
    const client = await TestClient.start(FAULTY.files, {
      textDocument: { publishDiagnostics: { codeDescriptionSupport: true } },
    });
    const page = new URL((await client.finding(procedure, RULE)).codeDescription?.href ?? 'none:');
    expect(page.hash).toBe(`#${RULE}`);
    page.hash = '';
    expect(readFileSync(page, 'utf8')).toContain(`\n## ${RULE}\n`);
  });

  test('is not offered to a client that does not say that it opens it', async () => {
    const client = await TestClient.start(FAULTY.files);
    expect((await client.finding(procedure, RULE)).codeDescription).toBeUndefined();
  });
});

describe('what nothing needs', () => {
  const unused = RULES.find((rule) => rule.id === 'tool-unused')?.doc.wrong.files ?? {};
  const superseded = RULES.find((rule) => rule.id === 'kit-line-superseded')?.doc.wrong.files ?? {};

  test('is shown faintly, and what has been replaced struck through', async () => {
    const one = await TestClient.start(unused, { textDocument: shownTags });
    expect((await one.finding(procedure, 'tool-unused')).tags).toEqual([DiagnosticTag.Unnecessary]);
    const other = await TestClient.start(superseded, { textDocument: shownTags });
    expect((await other.finding(kit, 'kit-line-superseded')).tags).toEqual([DiagnosticTag.Deprecated]);
  });

  test('is shown as anything else by a client that knows no tags', async () => {
    const client = await TestClient.start(unused);
    expect((await client.finding(procedure, 'tool-unused')).tags).toBeUndefined();
  });
});
