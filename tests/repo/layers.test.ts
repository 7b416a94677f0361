import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cruiseLayers, type LayerReport } from './cruiseLayers';
import { coreBaseFiles, coreFolders, layerRules } from './layerRules';
import { innocentFiles, innocentPlants, plants } from './plantedLayers';
import { repoPath, repoRoot } from './repoFiles';

describe('a tree with planted violations', () => {
  let tree = '';
  let report: LayerReport;

  beforeAll(async () => {
    mkdirSync(repoPath('.cache'), { recursive: true });
    // Within the repository, so that packages are found as they are from the real files.
    tree = mkdtempSync(repoPath('.cache/layers-'));
    writeTree(tree);
    report = await cruiseLayers(tree);
  });

  afterAll(() => rmSync(tree, { recursive: true, force: true }));

  test('is seen whole', () => {
    expect(report.files).toEqual(expect.arrayContaining([...plants, ...innocentPlants].map((plant) => plant.file)));
  });

  test.each(plants)('$rule is reported at $file', ({ rule, file }) => {
    expect(
      report.violations.filter((violation) => violation.from === file).map((violation) => violation.rule),
    ).toContain(rule);
  });

  test('every rule has its plant', () => {
    const planted = new Set(plants.map((plant) => plant.rule));
    expect(
      layerRules.forbidden.map((rule) => rule.name).filter((name) => name === undefined || !planted.has(name)),
    ).toEqual([]);
  });

  test('allowed imports stay unreported', () => {
    const allowed = [...innocentFiles, ...innocentPlants.map((plant) => plant.file)];
    const ring = 'server/src/core/text/ringB.ts';
    expect(report.violations.filter(({ from }) => allowed.includes(from) && from !== ring)).toEqual([]);
  });
});

describe('this tree', () => {
  test('keeps its layers, and every import resolves', async () => {
    const report = await cruiseLayers(repoRoot);
    expect(report.files).toContain('tests/repo/layers.test.ts');
    expect(report.violations).toEqual([]);
  });

  test('has no folder or file in the core that the rules do not know', () => {
    const entries = readdirSync(repoPath('server/src/core'), { withFileTypes: true });
    const strangers = entries.filter((entry) =>
      entry.isDirectory() ? !coreFolders.includes(entry.name) : isStranger(entry.name),
    );
    expect(strangers.map((entry) => entry.name)).toEqual([]);
  });
});

function isStranger(name: string): boolean {
  return ![...coreBaseFiles, 'index.ts', 'tsconfig.json'].includes(name);
}

function writeTree(tree: string): void {
  const manifest = { name: 'planted', private: true, dependencies: { yaml: '*', 'vscode-languageserver': '*' } };
  write(join(tree, 'package.json'), JSON.stringify(manifest));
  for (const file of innocentFiles) write(join(tree, file), 'export const value = 1;\nexport type Value = number;\n');
  for (const { file, text } of [...plants, ...innocentPlants]) write(join(tree, file), text);
}

function write(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
