/** What a value may be. Numbers are places in a table, so that a shape may contain itself. */
export type Shape =
  | { readonly is: 'anything' }
  | { readonly is: 'string' | 'number' | 'integer' | 'uinteger' | 'boolean' | 'null' }
  | { readonly is: 'literal'; readonly value: string | number | boolean }
  | { readonly is: 'array'; readonly of: number }
  | { readonly is: 'tuple'; readonly of: readonly number[] }
  | { readonly is: 'object'; readonly properties: Readonly<Record<string, Property>>; readonly others?: number }
  | { readonly is: 'one of'; readonly of: readonly number[] };

export interface Property {
  readonly shape: number;
  readonly optional: boolean;
}

/**
 * What is wrong with a value, each with where; empty where it has the shape. A property that the shape does not know is
 * wrong. What would not survive JSON (`undefined`) counts as absent.
 */
export function shapeProblems(table: readonly Shape[], shape: number, value: unknown, at = 'value'): string[] {
  const wanted = table[shape] ?? { is: 'anything' };
  switch (wanted.is) {
    case 'anything':
      return [];
    case 'literal':
      return value === wanted.value ? [] : [`${at} is ${shown(value)} instead of ${shown(wanted.value)}`];
    case 'array':
    case 'tuple':
      return listProblems(table, wanted, value, at);
    case 'object':
      return objectProblems(table, wanted, value, at);
    case 'one of':
      return choiceProblems(table, wanted.of, value, at);
    default:
      return isPlain(wanted.is, value) ? [] : [`${at} is ${shown(value)} instead of ${wanted.is}`];
  }
}

function isPlain(kind: string, value: unknown): boolean {
  if (kind === 'null') return value === null || value === undefined;
  if (kind === 'integer') return Number.isInteger(value);
  if (kind === 'uinteger') return Number.isInteger(value) && Number(value) >= 0;
  // Infinity and not-a-number cannot be written as JSON.
  return kind === 'number' ? Number.isFinite(value) : typeof value === kind;
}

function listProblems(
  table: readonly Shape[],
  wanted: Extract<Shape, { is: 'array' | 'tuple' }>,
  value: unknown,
  at: string,
): string[] {
  if (!Array.isArray(value)) return [`${at} is ${shown(value)} instead of a list`];
  if (wanted.is === 'array') return value.flatMap((one, i) => shapeProblems(table, wanted.of, one, `${at}[${i}]`));
  if (value.length !== wanted.of.length) return [`${at} has ${value.length} elements instead of ${wanted.of.length}`];
  return wanted.of.flatMap((shape, i) => shapeProblems(table, shape, value[i], `${at}[${i}]`));
}

function objectProblems(
  table: readonly Shape[],
  wanted: Extract<Shape, { is: 'object' }>,
  value: unknown,
  at: string,
): string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return [`${at} is ${shown(value)} instead of an object`];
  }
  const given = Object.entries(value).filter(([, one]) => one !== undefined);
  const names = new Set(given.map(([name]) => name));
  const missing = Object.entries(wanted.properties)
    .filter(([name, one]) => !one.optional && !names.has(name))
    .map(([name]) => `${at} has no ${name}`);
  const wrong = given.flatMap(([name, one]) => {
    const shape = Object.hasOwn(wanted.properties, name) ? wanted.properties[name]?.shape : wanted.others;
    return shape === undefined ? [`${at}.${name} is not known`] : shapeProblems(table, shape, one, `${at}.${name}`);
  });
  return [...missing, ...wrong];
}

/** Of the choices that do not fit, the one that comes nearest is told. */
function choiceProblems(table: readonly Shape[], choices: readonly number[], value: unknown, at: string): string[] {
  const tried = choices
    .toSorted((a, b) => Number(table[a]?.is === 'null') - Number(table[b]?.is === 'null'))
    .map((shape) => shapeProblems(table, shape, value, at));
  if (tried.some((problems) => problems.length === 0)) return [];
  const deepest = (problems: readonly string[]) => Math.max(...problems.map((one) => one.split(' ')[0]?.length ?? 0));
  const nearest = tried.toSorted((a, b) => a.length - b.length || deepest(b) - deepest(a))[0];
  return nearest ?? [`${at} is ${shown(value)}, and nothing may stand there`];
}

function shown(value: unknown): string {
  return (JSON.stringify(value) ?? String(value)).slice(0, 80);
}
