import type { Schema, Schemas } from './loadSchemas';

/** A copy in which every reference to a unit of its own accepts anything. */
export function withHoles(schema: Schema, schemas: Schemas): Schema {
  const owned = ownedBy(schemas);
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

/** Whether a reference leads to a unit of its own. */
export function isHole(schemas: Schemas, $ref: string): boolean {
  return ownedBy(schemas).has($ref) || $ref === '#/$defs/instruction';
}

function ownedBy(schemas: Schemas): ReadonlySet<string> {
  const defs = Object.values(schemas).flatMap((one) => Object.entries(one.$defs ?? {}));
  return new Set(defs.filter(([, def]) => def['x-own']).map(([name]) => `#/$defs/${name}`));
}
