import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { documentedPackages, loosePackages, type Manifest, namedPackages } from './dependencyRules';
import { repoPath } from './repoFiles';

const manifest = JSON.parse(readFileSync(repoPath('package.json'), 'utf8')) as Manifest;
const page = [
  '## Dependencies',
  '',
  '| package | what for | why this one | licence |',
  '|---|---|---|---|',
  '| `whole` | reading | small | MIT |',
  '| `no-licence` | reading | small | |',
  '| no-code-mark | reading | small | MIT |',
  '',
  '## Something else',
  '| `elsewhere` | reading | small | MIT |',
].join('\n');

test('only a whole row in the right section counts as documentation', () => {
  expect(documentedPackages(page)).toEqual(['whole']);
});

test('a range, a tag and a star are reported as loose', () => {
  const dependencies = { a: '^1.0.0', b: '~1.0.0', c: 'latest', d: '*', e: '1.0.0', f: '1.0.0-beta.0', g: '1.x' };
  expect(loosePackages({ dependencies }).map((line) => line[0])).toEqual(['a', 'b', 'c', 'd', 'g']);
});

test('every version is exact', () => {
  expect(namedPackages(manifest).length).toBeGreaterThan(0);
  expect(loosePackages(manifest)).toEqual([]);
});

test('DEVELOPERS.md says what each package is for, and names no other', () => {
  const documented = documentedPackages(readFileSync(repoPath('DEVELOPERS.md'), 'utf8')).sort();
  expect(documented).toEqual(
    namedPackages(manifest)
      .map(([name]) => name)
      .sort(),
  );
});
