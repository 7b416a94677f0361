// Paths of the repository, for the build scripts.
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root, absolute. */
export const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** An absolute path from one that is relative to the root. */
export function fromRoot(path) {
  return join(root, path);
}

/** Every file under a folder, absolute and sorted; none when the folder does not exist. */
export function filesUnder(folder) {
  if (!existsSync(folder)) return [];
  const found = [];
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) found.push(...filesUnder(path));
    else found.push(path);
  }
  return found.sort();
}
