import type { KeyShape, Keys, ScalarShape, Shape, UnitShape } from '../../src/core/model/shape';
import { type Schemas, unitsOf } from './loadSchemas';
import { unitShape } from './shapeOf';

/** The source of types.ts: an interface for every unit. Every key may be absent, since a document may be half-typed. */
export function typesSource(schemas: Schemas): string {
  const units = unitsOf(schemas).map((unit) => unitShape(schemas, unit));
  const instructions = units.filter((unit) => unit.verb !== undefined).map((unit) => typeName(unit.def));
  return `// Generated from schemas/ by npm run generate; do not edit.
import type { Node, ScalarNode } from '../../syntax/node';
import type {
  ByBuild, Choice, Condition, Count, CountedRef, DateText, Declared, Entry, Flag, PathRef, Prose, QuantityValue, Ref,
  RefOrProse, SignedTerm, Text,
} from '../values';

${units.map(unitInterface).join('\n')}
export type Instruction =
${instructions.map((name) => `  | ${name}`).join('\n')};
`;
}

/** \`procedure/verb-tighten\` becomes Tighten, \`family/part\` Part, \`procedure\` ProcedureDocument. */
function typeName(def: string): string {
  const [document = '', name] = def.split('/');
  if (name === undefined) return `${pascal(document)}Document`;
  const plain = pascal(name.replace(/^verb-/, ''));
  if (name.startsWith('verb-')) return `${plain}Instruction`;
  return document === 'procedure' && (name === 'reading' || name === 'figure') ? `Procedure${plain}` : plain;
}

function unitInterface(unit: UnitShape): string {
  const verb = unit.verb === undefined ? '' : `  readonly verb: '${unit.verb}';\n  readonly verbKey: ScalarNode;\n`;
  return `/** ${unit.description} */
export interface ${typeName(unit.def)} {
  readonly node: Node;
${verb}${keyLines(unit.shape.keys, '  ')}}
`;
}

function keyLines(keys: Keys, indent: string): string {
  return Object.entries(keys)
    .map(([key, value]) => keyLine(key, value, indent))
    .join('');
}

function keyLine(key: string, value: KeyShape, indent: string): string {
  return `${indent}/** ${value.description} */\n${indent}readonly ${camel(key)}?: ${typeOf(value.shape, indent)};\n`;
}

function typeOf(shape: Shape, indent: string): string {
  switch (shape.as) {
    case 'scalar':
      return list(scalarType(shape.scalar), shape.many);
    case 'prose':
      return list('Prose', shape.many);
    case 'condition':
      return 'Condition';
    case 'by-build':
      return `ByBuild<${scalarType(shape.scalar)}>`;
    case 'counted':
      return 'readonly CountedRef[]';
    case 'list':
      return `readonly ${typeOf(shape.items, indent)}[]`;
    case 'entries':
      return `readonly Entry<${typeOf(shape.values, indent)}>[]`;
    case 'unit':
      return typeName(shape.def);
    case 'instruction':
      return 'Instruction';
    case 'object':
      return objectType(shape, indent);
  }
}

function objectType(shape: Shape & { as: 'object' }, indent: string): string {
  const inner = `{\n${indent}  readonly node: Node;\n${keyLines(shape.keys, `${indent}  `)}${indent}}`;
  return shape.many ? `readonly (${inner})[]` : inner;
}

function scalarType(scalar: ScalarShape): string {
  switch (scalar.is) {
    case 'text':
      return 'Text';
    case 'prose':
      return 'Prose';
    case 'declares':
      return 'Declared';
    case 'ref':
      return 'Ref';
    case 'ref-or-prose':
      return 'RefOrProse';
    case 'signed':
      return 'SignedTerm';
    case 'quantity':
      return 'QuantityValue';
    case 'count':
      return 'Count';
    case 'flag':
      return 'Flag';
    case 'date':
      return 'DateText';
    case 'choice':
      return `Choice<${scalar.choices.map((choice) => `'${choice}'`).join(' | ')}>`;
    case 'path':
      return 'PathRef';
  }
}

function list(type: string, many: boolean): string {
  return many ? `readonly ${type}[]` : type;
}

export function camel(key: string): string {
  return key.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

function pascal(name: string): string {
  const text = camel(name);
  return text.charAt(0).toUpperCase() + text.slice(1);
}
