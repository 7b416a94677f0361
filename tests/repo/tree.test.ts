import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { repoFiles, repoPath, repoRoot, versionedFiles } from './repoFiles';
import { deniedTopLevelNames, overlongFiles } from './treeRules';

describe('the top level', () => {
  test('a stray name is denied, a dot name and an agreed one are not', () => {
    expect(deniedTopLevelNames(['README.md', '.biome.json', 'biome.json', 'src', 'client'])).toEqual([
      'biome.json',
      'src',
    ]);
  });

  test('holds only the agreed names', () => {
    // Installed packages are the one thing that npm insists on putting there.
    const names = readdirSync(repoRoot).filter((name) => name !== 'node_modules');
    expect(names).toContain('package.json');
    expect(deniedTopLevelNames(names)).toEqual([]);
  });
});

describe('the length of a file', () => {
  test('one line too many is reported, generated and other files are not', () => {
    const long = 'x\n'.repeat(401);
    const files = { 'a.ts': long, 'b.ts': 'x\n'.repeat(400), 'core/generated/c.ts': long, 'd.md': long, 'e.mjs': long };
    expect(overlongFiles(Object.keys(files), (path) => files[path as keyof typeof files])).toEqual([
      'a.ts has 401 lines',
      'e.mjs has 401 lines',
    ]);
  });

  test('stays within 400 lines', () => {
    const files = repoFiles();
    expect(files).toContain('tests/repo/tree.test.ts');
    expect(overlongFiles(files, (path) => readFileSync(repoPath(path), 'utf8'))).toEqual([]);
  });
});

test('what is installed or built is not under version control', (context) => {
  const files = versionedFiles();
  context.skip(files === undefined, 'this is not a clone');
  expect(files).toContain('package.json');
  expect(files?.filter((path) => /(?:^|\/)(?:dist|node_modules|\.cache)\/|\.vsix$/.test(path))).toEqual([]);
});
