import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { layerRules } from './layerRules';

/** One broken rule: its name, the importing file and what it imports, both relative to the tree. */
export interface LayerViolation {
  rule: string;
  from: string;
  to: string;
}

/** What a look at a tree found: how many files it saw, and what they break. A tree of no files is no proof. */
export interface LayerReport {
  files: string[];
  violations: LayerViolation[];
}

/** Checks the imports of a tree laid out like the repository; type-only imports count like any other. */
export async function cruiseLayers(tree: string): Promise<LayerReport> {
  const folders = ['client', 'server', 'tests'].filter((folder) => existsSync(join(tree, folder)));
  const { output } = await cruise(
    folders,
    {
      baseDir: tree,
      ruleSet: layerRules,
      validate: true,
      tsPreCompilationDeps: true,
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '^(?:(?:client|server)/dist|\\.cache)/' },
      combinedDependencies: true,
    },
    { exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  );
  const result = output as ICruiseResult;
  const own = result.modules
    .map((module) => module.source)
    .filter((source) => /^(?:client|server|tests)\//.test(source));
  const violations = result.summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to }));
  return { files: own, violations };
}
