import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';

let known: { readonly page: string | undefined } | undefined;

/** Where a rule is described, on the page that comes with the server; undefined where it has come without. */
export function rulePage(rule: string): string | undefined {
  known ??= { page: findPage(__dirname) };
  return known.page === undefined ? undefined : `${pathToFileURL(known.page).href}#${rule}`;
}

/** The page lies beside the folder of a bundle, and further up beside the sources. */
function findPage(folder: string, steps = 3): string | undefined {
  const page = join(folder, 'docs/rules.md');
  if (existsSync(page)) return page;
  return steps === 0 ? undefined : findPage(dirname(folder), steps - 1);
}
