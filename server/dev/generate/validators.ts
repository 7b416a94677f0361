import Ajv2020 from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { type Schema, type Schemas, unitsOf } from './loadSchemas';

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

/** A copy in which every reference to a unit of its own accepts anything. */
function withHoles(schema: Schema, schemas: Schemas): Schema {
  const owned = new Set(
    Object.values(schemas).flatMap((one) =>
      Object.entries(one.$defs ?? {})
        .filter(([, def]) => def['x-own'])
        .map(([name]) => `#/$defs/${name}`),
    ),
  );
  const copy = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(copy);
    if (typeof value !== 'object' || value === null) return value;
    const { $ref } = value as Schema;
    if ($ref !== undefined && owned.has($ref)) return {};
    return asSourceText(Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copy(inner)])));
  };
  const result = copy(schema) as Schema;
  // The choice among verbs is ours: the generic one would answer one mistake with an error for each verb.
  if (result.$defs?.instruction !== undefined) result.$defs.instruction = {};
  return result;
}

/**
 * Every scalar reaches the validators as its source text, so what the schema calls an integer or a boolean is a text of
 * that form to them. Without coercion the compiled code is a fraction of the size and changes nothing it is given.
 */
function asSourceText(schema: Schema): Schema {
  const types = [schema.type ?? []].flat();
  if (types.length === 0) return schema;
  const { minimum, const: constant, ...rest } = schema as Schema & { minimum?: number; const?: unknown };
  const texts = new Set(types.map((type) => (['number', 'integer', 'boolean'].includes(type) ? 'string' : type)));
  const pattern = types.includes('boolean')
    ? '^(true|false)$'
    : types.includes('integer')
      ? minimum === 0
        ? '^\\d+$'
        : '^[1-9]\\d*$'
      : undefined;
  return {
    ...rest,
    type: texts.size === 1 ? [...texts][0] : [...texts],
    ...(pattern === undefined ? {} : { pattern }),
    ...(constant === undefined ? {} : { pattern: `^${constant}$` }),
  } as Schema;
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
