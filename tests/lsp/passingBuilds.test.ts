import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import {
  BUILDS_PASSING,
  type BuildsPassingResult,
  FAILING_BUILDS,
  type FailingBuildsResult,
  SHEET_CHANGED,
} from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;

test('the builds that pass are counted and told again when a family changes them', async () => {
  const { files } = inStep('- say: Look at <cover-seal>.\n- say: Look at <no-such-part>.\n  when: k1-b');
  const client = await TestClient.start(files);
  const text = `# 🔧\n${files[procedure]}`;
  client.open(procedure, text);
  const ask = <Result>(method: string) => client.connection.sendRequest<Result>(method, { uri: client.uri(procedure) });
  expect(await ask<BuildsPassingResult>(BUILDS_PASSING.method)).toEqual({ count: 3, passing: 2 });
  const { builds, count } = await ask<FailingBuildsResult>(FAILING_BUILDS.method);
  expect([count, builds.map((one) => one.label)]).toEqual([1, ['K1-B']]);
  expect(text.slice(builds[0]?.error.start, builds[0]?.error.end)).toBe('<no-such-part>');
  const changed = new Promise<unknown>((resolve) => client.connection.onNotification(SHEET_CHANGED.method, resolve));
  client.writeOnDisk(family, (files[family] ?? '').replace('  k1-b:', '  k1-c: { name: K1-C }\n  k1-b:'));
  expect(await changed).toEqual({ uri: client.uri(procedure) });
  expect(await ask<BuildsPassingResult>(BUILDS_PASSING.method)).toEqual({ count: 4, passing: 3 });
});
