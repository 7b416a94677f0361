// What package.json and DEVELOPERS.md must agree on about the packages that are used.

/** The parts of package.json that name packages. */
export interface Manifest {
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  optionalDependencies?: Record<string, string>;
}

/** Every package that the manifest names, with its version, in the manifest's order. */
export function namedPackages(manifest: Manifest): [name: string, version: string][] {
  return [manifest.dependencies, manifest.optionalDependencies, manifest.devDependencies].flatMap((group) =>
    Object.entries(group ?? {}),
  );
}

/** The packages whose version is a range or a tag, not one exact version. */
export function loosePackages(manifest: Manifest): string[] {
  return namedPackages(manifest)
    .filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[0-9A-Za-z.-]+)?$/.test(version))
    .map(([name, version]) => `${name} ${version}`);
}

/** The packages with a whole row (name, what for, why this one, licence) in the table under `## Dependencies`. */
export function documentedPackages(developersPage: string): string[] {
  const section = /^## Dependencies\n([\s\S]*?)(?=^## |(?![\s\S]))/m.exec(developersPage)?.[1] ?? '';
  const rows = section.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
  return rows
    .filter((cells) => cells.length === 6 && cells.slice(1, 5).every((cell) => cell !== ''))
    .map((cells) => /^`([^`]+)`$/.exec(cells[1] ?? '')?.[1])
    .filter((name) => name !== undefined);
}
