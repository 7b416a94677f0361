import { type Schemas, unitsOf } from './loadSchemas';
import { unitShape } from './shapeOf';

/** The source of shapes.ts: every unit's shape as data. */
export function shapesSource(schemas: Schemas): string {
  const units = unitsOf(schemas).map((unit) => unitShape(schemas, unit));
  const table = units.map((unit) => `  '${unit.def}': ${JSON.stringify(unit)},`).join('\n');
  const verbs = units.flatMap((unit) => (unit.verb !== undefined && unit.verb !== 'say' ? [unit.verb] : []));
  return `// Generated from schemas/ by npm run generate; do not edit.
import type { UnitShape } from '../shape';

export const UNIT_SHAPES: Readonly<Record<string, UnitShape>> = {
${table}
};

export const VERBS = ${JSON.stringify(verbs)} as const;
export type VerbName = (typeof VERBS)[number];
`;
}
