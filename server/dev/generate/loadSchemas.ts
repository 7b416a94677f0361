import { readFileSync } from 'node:fs';

/** A JSON Schema with our annotations, as far as the generator looks at it. */
export interface Schema {
  $ref?: string;
  $defs?: Record<string, Schema>;
  description?: string;
  type?: string | string[];
  properties?: Record<string, Schema>;
  additionalProperties?: boolean | Schema;
  items?: Schema;
  required?: string[];
  enum?: string[];
  allOf?: Schema[];
  'x-ref'?: string;
  'x-words'?: string[];
  'x-listing'?: boolean;
  'x-ref-or-prose'?: boolean;
  'x-signed'?: boolean;
  'x-counted'?: boolean;
  'x-count'?: boolean;
  'x-declares'?: string;
  'x-id'?: string;
  'x-quantity'?: string;
  'x-by-build'?: boolean;
  'x-prose'?: boolean;
  'x-condition'?: boolean;
  'x-date'?: boolean;
  'x-path'?: string;
  'x-choices'?: string[];
  'x-shorthand'?: string;
  /** How keys follow each other behind that of the verb; `…` stands for all that are not named. */
  'x-order'?: string[];
  'x-own'?: boolean;
  'x-verb'?: string;
  'x-instruction'?: boolean;
}

export const DOCUMENT_KINDS = ['family', 'kit', 'stores', 'procedure', 'settings'] as const;
export type SchemaName = (typeof DOCUMENT_KINDS)[number] | 'common';
export type Schemas = Record<SchemaName, Schema>;

export function loadSchemas(): Schemas {
  const names: SchemaName[] = [...DOCUMENT_KINDS, 'common'];
  const read = (name: SchemaName): Schema => JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8'));
  return Object.fromEntries(names.map((name) => [name, read(name)])) as Schemas;
}

/** A definition that is read by itself: the root of a document, or a `$defs` entry that says so. */
export interface Unit {
  /** Unique over all schemas: `procedure`, `procedure/step`, `procedure/verb-tighten`. */
  readonly name: string;
  readonly schemaName: SchemaName;
  readonly schema: Schema;
}

export function unitsOf(schemas: Schemas): Unit[] {
  return DOCUMENT_KINDS.flatMap((schemaName) => {
    const root: Unit = { name: schemaName, schemaName, schema: schemas[schemaName] };
    const defs = Object.entries(schemas[schemaName].$defs ?? {}).filter(
      ([, def]) => def['x-own'] && !def['x-instruction'],
    );
    return [root, ...defs.map(([name, schema]) => ({ name: `${schemaName}/${name}`, schemaName, schema }))];
  });
}

/** Follows a `$ref` to its definition; annotations and description beside the `$ref` win. */
export function follow(
  schemas: Schemas,
  from: SchemaName,
  schema: Schema,
): { schema: Schema; unit: string | undefined; schemaName: SchemaName } {
  if (schema.$ref === undefined) return { schema, unit: undefined, schemaName: from };
  const [file = '', path = ''] = schema.$ref.split('#');
  const schemaName = file === '' ? from : (file.replace('.schema.json', '') as SchemaName);
  const name = path.replace('/$defs/', '');
  const target = schemas[schemaName].$defs?.[name];
  if (target === undefined) throw new Error(`No definition ${schema.$ref}`);
  const { $ref: _, ...beside } = schema;
  const inner = follow(schemas, schemaName, target);
  const unit = target['x-own'] ? `${schemaName}/${name}` : inner.unit;
  return { schema: { ...inner.schema, ...beside }, unit, schemaName: inner.schemaName };
}
