import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { repoPath } from './repoFiles';

interface Grammar {
  repository: { keys: { patterns: { comment?: string; match: string }[] } };
}

function readJson<T>(path: string): T {
  return JSON.parse(readFileSync(repoPath(path), 'utf8')) as T;
}

test('the editor colours every verb of the schema, and no other word, as a verb', () => {
  const { $defs } = readJson<{ $defs: Record<string, unknown> }>('schemas/procedure.schema.json');
  const verbs = Object.keys($defs)
    .filter((name) => name.startsWith('verb-'))
    .map((name) => name.slice('verb-'.length));
  const { repository } = readJson<Grammar>('client/syntaxes/witnessmark.tmLanguage.json');
  const pattern = repository.keys.patterns.find(({ comment }) => comment === 'Verbs of an instruction.');
  const coloured = /\((?!\?)([a-z|]+)\)/.exec(pattern?.match ?? '')?.[1]?.split('|') ?? [];
  expect(verbs.length).toBeGreaterThan(0);
  expect(coloured.sort()).toEqual(verbs.sort());
});
