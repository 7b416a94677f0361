import Ajv2020 from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { type Schemas, unitsOf } from './loadSchemas';
import { withHoles } from './schemaWithHoles';

/**
 * The compiled validators, one for each unit. Where a unit holds another one, its validator accepts anything: the other
 * one is validated by itself, so that a mistake gives one message about the unit that was meant.
 */
export function validatorsSource(schemas: Schemas, folder: string): Record<string, string> {
  const ajv = new Ajv2020({
    allErrors: true,
    strict: false,
    inlineRefs: false,
    code: { source: true, esm: true, lines: true },
  });
  for (const [name, schema] of Object.entries(schemas))
    ajv.addSchema(withHoles(schema, schemas), `${name}.schema.json`);
  const exports: Record<string, string> = {};
  const names: string[] = [];
  for (const unit of unitsOf(schemas)) {
    const identifier = unit.name.replace(/[^a-z]/g, '_');
    const [, def] = unit.name.split('/');
    exports[identifier] = `${unit.schemaName}.schema.json#${def === undefined ? '' : `/$defs/${def}`}`;
    names.push(`  '${unit.name}': ${identifier},`);
  }
  return {
    [`${folder}/validators.js`]: `// Generated from schemas/ by npm run generate; do not edit.\n${standaloneCode(ajv, exports)}\n`,
    [`${folder}/validators.d.ts`]: declarations(Object.keys(exports)),
    [`${folder}/validatorTable.ts`]: tableSource(Object.keys(exports), names),
  };
}

function declarations(names: readonly string[]): string {
  const lines = names.map((name) => `export declare const ${name}: Validator;`).join('\n');
  return `// Generated from schemas/ by npm run generate; do not edit.
import type { Validator } from '../validator';
${lines}
`;
}

function tableSource(identifiers: readonly string[], rows: readonly string[]): string {
  return `// Generated from schemas/ by npm run generate; do not edit.
import type { Validator } from '../validator';
import {
  ${identifiers.join(',\n  ')},
} from './validators';

export const VALIDATORS: Readonly<Record<string, Validator>> = {
${rows.join('\n')}
};
`;
}
