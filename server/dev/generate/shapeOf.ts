import type { KeyShape, Keys, RefKind, ScalarShape, Shape, UnitShape } from '../../src/core/model/shape';
import { follow, type Schema, type SchemaName, type Schemas, type Unit } from './loadSchemas';

/** Makes the shape of a unit out of its schema; keys of `allOf` parts count as its own. */
export function unitShape(schemas: Schemas, unit: Unit): UnitShape {
  const shape = objectShape(schemas, unit.schemaName, unit.schema);
  return { def: unit.name, description: unit.schema.description ?? '', verb: unit.schema['x-verb'], shape };
}

function objectShape(schemas: Schemas, from: SchemaName, schema: Schema): Shape & { as: 'object' } {
  return {
    as: 'object',
    keys: keysOf(schemas, from, schema),
    shorthand: schema['x-shorthand'],
    many: allows(schema, 'array'),
  };
}

function keysOf(schemas: Schemas, from: SchemaName, schema: Schema): Keys {
  const keys: Record<string, KeyShape> = {};
  for (const [key, value] of Object.entries(schema.properties ?? {})) {
    const description = value.description ?? follow(schemas, from, value).schema.description ?? '';
    keys[key] = {
      shape: shapeOf(schemas, from, value),
      description,
      required: schema.required?.includes(key) ?? false,
    };
  }
  let ordered: Keys = keys;
  for (const part of schema.allOf ?? []) {
    const target = follow(schemas, from, part);
    const merged = { ...keys, ...keysOf(schemas, target.schemaName, target.schema), ...keys };
    ordered = inOrder(merged, [schema['x-verb'] ?? '', ...(target.schema['x-order'] ?? [])]);
  }
  return ordered;
}

function inOrder(keys: Keys, order: readonly string[]): Keys {
  const others = order.includes('…') ? order.indexOf('…') : order.length;
  const rank = (key: string): number => (order.includes(key) ? order.indexOf(key) : others);
  return Object.fromEntries(Object.entries(keys).sort(([a], [b]) => rank(a) - rank(b)));
}

function shapeOf(schemas: Schemas, from: SchemaName, written: Schema): Shape {
  const { schema, unit, schemaName } = follow(schemas, from, written);
  if (schema['x-instruction']) return { as: 'instruction' };
  if (unit !== undefined) return { as: 'unit', def: unit };
  if (schema['x-ref-or-prose'])
    return { as: 'scalar', scalar: { is: 'ref-or-prose', kind: refKind(schema) }, many: false };
  if (schema['x-condition']) return { as: 'condition' };
  if (schema['x-prose']) return { as: 'prose', many: allows(schema, 'array') };
  if (schema['x-by-build']) return { as: 'by-build', scalar: scalarOf(schema) };
  if (schema['x-counted']) return { as: 'counted', kind: refKind(schema) };
  if (schema.properties !== undefined) {
    const single =
      schema['x-shorthand'] ??
      (schema.required?.length === 1 && allows(schema, 'string') ? schema.required[0] : undefined);
    return { ...objectShape(schemas, schemaName, schema), shorthand: single };
  }
  if (typeof schema.additionalProperties === 'object') {
    const values = shapeOf(schemas, schemaName, schema.additionalProperties);
    return { as: 'entries', declares: schema['x-id'] as RefKind | undefined, values };
  }
  if (schema.type === 'array' && !isScalarList(schema))
    return { as: 'list', items: shapeOf(schemas, schemaName, schema.items ?? {}) };
  return { as: 'scalar', scalar: scalarOf(schema), many: allows(schema, 'array') };
}

function isScalarList(schema: Schema): boolean {
  return schema.items?.$ref === undefined && schema.items?.properties === undefined;
}

function scalarOf(schema: Schema): ScalarShape {
  if (schema['x-signed']) return { is: 'signed', kind: refKind(schema) };
  if (schema['x-ref'] !== undefined) return refShape(schema);
  if (schema['x-declares'] !== undefined) return { is: 'declares', kind: schema['x-declares'] as RefKind };
  if (schema['x-quantity'] !== undefined) return { is: 'quantity', dimension: schema['x-quantity'] };
  if (schema['x-path'] !== undefined) return { is: 'path', to: schema['x-path'] };
  if (schema['x-date']) return { is: 'date' };
  const choices = schema['x-choices'] ?? schema.enum ?? schema.items?.enum;
  if (choices !== undefined) return { is: 'choice', choices };
  if (allows(schema, 'boolean')) return { is: 'flag' };
  if (schema['x-count'] || schema.type === 'integer') return { is: 'count' };
  return { is: 'text' };
}

function refShape(schema: Schema): ScalarShape {
  const kind = refKind(schema);
  const words = schema['x-words'] === undefined ? {} : { words: schema['x-words'] };
  return { is: 'ref', kind, ...words, ...(schema['x-listing'] ? { listing: true as const } : {}) };
}

function refKind(schema: Schema): RefKind {
  return schema['x-ref'] as RefKind;
}

function allows(schema: Schema, type: string): boolean {
  return Array.isArray(schema.type) ? schema.type.includes(type) : schema.type === type;
}
