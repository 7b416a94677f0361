// What the tree may hold: plain functions over names and texts, so that a test can show them failing.

const topLevelNames = [
  'README.md',
  'DEVELOPERS.md',
  'CHANGELOG.md',
  'LICENSE',
  'package.json',
  // The editor looks for the manifest's texts beside the manifest.
  'package.nls.json',
  'package.nls.de.json',
  'package.nls.es.json',
  'package-lock.json',
  'tsconfig.json',
  'client',
  'server',
  'schemas',
  'tests',
  'sample-procedures',
];

const longestFile = 400;

/** The names that have no business at the top level; dot files and folders belong to tools and are let be. */
export function deniedTopLevelNames(names: readonly string[]): string[] {
  return names.filter((name) => !name.startsWith('.') && !topLevelNames.includes(name));
}

/** One line for each hand-written code file that is too long to be read at a sitting. */
export function overlongFiles(paths: readonly string[], read: (path: string) => string): string[] {
  return paths
    .filter((path) => /\.(?:ts|mts|mjs)$/.test(path) && !/(?:^|\/)generated\//.test(path))
    .map((path) => ({ path, lines: read(path).replace(/\n$/, '').split('\n').length }))
    .filter(({ lines }) => lines > longestFile)
    .map(({ path, lines }) => `${path} has ${lines} lines`);
}
