import type { ScalarMark, Sound } from '../../src/core/model/sound';
import { type Schema, type Schemas, type Unit, unitsOf } from './loadSchemas';
import { isHole, withHoles } from './schemaWithHoles';

/** What a schema for validators may say; anything else would have to be looked at by the reader of sound values too. */
const KNOWN = new Set([
  ...['$ref', 'type', 'properties', 'required', 'additionalProperties', 'unevaluatedProperties', 'allOf', 'items'],
  ...['minItems', 'maxItems', 'minProperties', 'enum', 'pattern', 'propertyNames'],
  ...['$schema', '$defs', 'title', 'description'],
]);

/** The source of soundUnits.ts: what each unit looks like where nothing is wrong with its shape. */
export function soundSource(schemas: Schemas): string {
  const maker = new SoundMaker(schemas);
  const rows = unitsOf(schemas).map((unit) => `  '${unit.name}': ${maker.unit(unit)},`);
  return `// Generated from schemas/ by npm run generate; do not edit.
import type { Sound } from '../sound';

${maker.constants.join('\n')}

export const SOUND_UNITS: Readonly<Record<string, Sound>> = {
${rows.join('\n')}
};

export const SOUND_BY_NAME: Readonly<Record<string, Sound>> = {
${[...maker.named].map(([name, source]) => `  '${name}': ${source},`).join('\n')}
};
`;
}

class SoundMaker {
  readonly constants: string[] = [];
  /** What refers to itself is looked up by its name. */
  readonly named = new Map<string, string>();
  readonly #names = new Map<string, string>();
  readonly #open: string[] = [];

  constructor(readonly schemas: Schemas) {}

  unit({ schemaName, schema }: Unit): string {
    return this.#source(this.#sound(withHoles(schema, this.schemas), schemaName));
  }

  #sound(schema: Schema | boolean, from: string): Sound {
    if (typeof schema === 'boolean') return { any: true };
    const { $ref } = schema;
    if ($ref !== undefined) return this.#referred($ref, from);
    const keywords = Object.keys(schema).filter((key) => !key.startsWith('x-'));
    const strange = keywords.filter((key) => !KNOWN.has(key));
    if (strange.length > 0) throw new Error(`A sound value cannot be told by ${strange.join(', ')}`);
    // Of a closed choice there are texts alone.
    const types = schema.enum === undefined ? [schema.type ?? []].flat() : ['string'];
    if (types.length === 0 && keywords.every((key) => key === 'description')) return { any: true };
    return {
      ...(types.includes('string') ? { text: textOf(schema) } : {}),
      ...(types.includes('array') ? { list: this.#list(schema, from) } : {}),
      ...(types.includes('object') ? { map: this.#map(schema, from) } : {}),
    };
  }

  #referred($ref: string, from: string): Sound {
    const [file = '', path = ''] = $ref.split('#');
    const schemaName = (file === '' ? from : file.replace('.schema.json', '')) as keyof Schemas;
    const name = path.replace('/$defs/', '');
    const schema = this.schemas[schemaName].$defs?.[name];
    if (schema === undefined) throw new Error(`No definition ${$ref}`);
    if (isHole(this.schemas, $ref)) return { any: true };
    if (this.#open.includes(name)) return { named: name };
    this.#open.push(name);
    const sound = this.#sound(withHoles(schema, this.schemas), schemaName);
    this.#open.pop();
    if (JSON.stringify(sound).includes(`{"named":"${name}"}`)) this.named.set(name, this.#source(sound));
    return sound;
  }

  #list(schema: Schema, from: string): NonNullable<Sound['list']> {
    const { items, minItems, maxItems } = schema as Schema & { minItems?: number; maxItems?: number };
    return {
      of: this.#sound(items ?? {}, from),
      ...(minItems === undefined ? {} : { least: minItems }),
      ...(maxItems === undefined ? {} : { most: maxItems }),
    };
  }

  #map(schema: Schema, from: string): NonNullable<Sound['map']> {
    const { minProperties } = schema as Schema & { minProperties?: number };
    const parts = [schema, ...(schema.allOf ?? []).map((part) => this.#definition(part, from))];
    const entries = parts.flatMap((part) => Object.entries(part.properties ?? {}));
    const closed = schema.additionalProperties === false || 'unevaluatedProperties' in schema;
    const others = closed ? {} : { others: this.#sound(schema.additionalProperties ?? {}, from) };
    return {
      keys: Object.fromEntries(entries.map(([key, value]) => [key, this.#sound(value, from)])),
      required: parts.flatMap((part) => part.required ?? []),
      ...others,
      ...(minProperties === undefined ? {} : { least: minProperties }),
      ...(schema['x-id'] === undefined ? {} : { ids: true }),
    };
  }

  /** A part of \`allOf\` is a definition of the same file that only has keys. */
  #definition({ $ref }: Schema, from: string): Schema {
    const schema = this.schemas[from as keyof Schemas].$defs?.[($ref ?? '').replace('#/$defs/', '')];
    if (schema === undefined) throw new Error(`No definition ${$ref}`);
    return withHoles(schema, this.schemas);
  }

  #source(sound: Sound): string {
    const { list, map, ...rest } = sound;
    const parts = Object.entries(rest).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
    if (list !== undefined) parts.push(`list: { of: ${this.#source(list.of)}${membersOf(list, ['least', 'most'])} }`);
    if (map !== undefined) parts.push(`map: ${this.#mapSource(map)}`);
    return this.#once(`{ ${parts.join(', ')} }`);
  }

  #mapSource(map: NonNullable<Sound['map']>): string {
    const keys = Object.entries(map.keys).map(([key, sound]) => `${JSON.stringify(key)}: ${this.#source(sound)}`);
    const others = map.others === undefined ? '' : `, others: ${this.#source(map.others)}`;
    return `{ keys: { ${keys.join(', ')} }${others}${membersOf(map, ['required', 'least', 'ids'])} }`;
  }

  /** The same value is written once. */
  #once(source: string): string {
    const known = this.#names.get(source);
    if (known !== undefined) return known;
    const name = `sound${this.#names.size}`;
    this.#names.set(source, name);
    this.constants.push(`const ${name}: Sound = ${source};`);
    return name;
  }
}

function membersOf<Key extends string>(object: { readonly [key in Key]?: unknown }, keys: readonly Key[]): string {
  const present = keys.filter((key) => object[key] !== undefined);
  return present.map((key) => `, ${key}: ${JSON.stringify(object[key])}`).join('');
}

function textOf(schema: Schema): ScalarMark {
  const pattern = (schema as { pattern?: string }).pattern;
  return {
    ...(schema.enum === undefined ? {} : { among: schema.enum }),
    ...(pattern === undefined ? {} : { pattern }),
    ...(schema['x-declares'] === undefined ? {} : { is: 'id' as const }),
    ...(schema['x-date'] === undefined ? {} : { is: 'day' as const }),
  };
}
