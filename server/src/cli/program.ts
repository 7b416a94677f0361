import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The part of the bundled program that checks, where this is the bundled one: threads are started from it. */
export function bundledChecker(): string | undefined {
  const isBundled = typeof __filename === 'string' && /[\\/]cli\.js$/.test(__filename);
  return isBundled ? join(dirname(__filename), 'checking.js') : undefined;
}

/** What tells the checks of this program from those of every other version of it. */
export function programDigest(): string | undefined {
  const checker = bundledChecker();
  if (checker === undefined) return undefined;
  const hash = createHash('sha256');
  for (const file of [__filename, checker]) hash.update(readFileSync(file));
  return hash.digest('base64');
}
