import { readFileSync } from 'node:fs';
import { digestOf } from './checking/fileDigests';

/** The file that this program runs from, where it is the bundled one: other threads can be started from it. */
export function bundledProgram(): string | undefined {
  return typeof __filename === 'string' && /[\\/]cli\.js$/.test(__filename) ? __filename : undefined;
}

/** What tells this program from every other version of it. */
export function programDigest(): string | undefined {
  const path = bundledProgram();
  return path === undefined ? undefined : digestOf(readFileSync(path, 'utf8'));
}
