import { expect, test } from 'vitest';
import type { TextDocumentEdit } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../../server/src/core/rules/examples';
import { TestClient } from '../../lsp/client';

const { procedure } = EXAMPLE_PATHS;

test('an editor offers the fix at the finding, and the finding goes when it is applied', async () => {
  const example = inStep('- remove: [cover-screw, cover]\n- install: cover');
  const client = await TestClient.start(example.files);
  client.open(procedure, example.files[procedure] ?? '');
  const finding = await client.finding(procedure, 'seal-not-renewed');
  const fix = (await client.fixes(procedure, finding)).find((action) => action.title === 'Renew the cover seal');
  expect(fix?.isPreferred).not.toBe(true);
  const change = fix?.edit?.documentChanges?.[0] as TextDocumentEdit;
  for (const edit of change.edits) client.change(procedure, edit as never);
  await client.noFinding(procedure, 'seal-not-renewed');
});
