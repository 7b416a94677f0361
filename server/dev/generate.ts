import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { loadSchemas } from './generate/loadSchemas';
import { ruleDocs } from './generate/ruleDocs';
import { settingsDocs } from './generate/settingsDocs';
import { shapesSource } from './generate/shapes';
import { soundSource } from './generate/sound';
import { typesSource } from './generate/types';
import { validatorsSource } from './generate/validators';

/**
 * Writes what is derived from the JSON Schemas, the rules and the manifest: the shapes that the reader follows, the types
 * of what it gives, what sound values look like, the compiled validators, and the pages about rules and settings. With --check it writes nothing and exits with 1 where a file is stale.
 */
const FOLDER = 'server/src/core/model/generated';

function main(): void {
  const schemas = loadSchemas();
  const files: Record<string, string> = {
    [`${FOLDER}/shapes.ts`]: shapesSource(schemas),
    [`${FOLDER}/types.ts`]: typesSource(schemas),
    [`${FOLDER}/soundUnits.ts`]: soundSource(schemas),
    ...validatorsSource(schemas, FOLDER),
    'server/docs/rules.md': ruleDocs(),
    'server/docs/settings.md': settingsDocs(),
  };
  const stale = Object.entries(files).filter(
    ([path, text]) => !existsSync(path) || readFileSync(path, 'utf8') !== text,
  );
  if (process.argv.includes('--check')) {
    for (const [path] of stale) console.error(`${path} is stale; run npm run generate`);
    process.exitCode = stale.length > 0 ? 1 : 0;
    return;
  }
  for (const [path, text] of stale) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    console.log(`wrote ${path}`);
  }
}

main();
