/** One instruction before it is written: what breakers take away, repeat and change. */
export interface Planned {
  readonly verb: string;
  /** Ids, or a text for people. */
  readonly object: readonly string[];
  /** Further keys as they are written. */
  readonly keys: Readonly<Record<string, string>>;
  /** Keys of `if-not`, without its instructions. */
  readonly ifNot: Readonly<Record<string, string>>;
  readonly nested: readonly Planned[];
}

export interface PlannedStep {
  readonly id: string;
  readonly keys: Readonly<Record<string, string>>;
  readonly do: readonly Planned[];
}

export function planned(verb: string, object: string | readonly string[], keys: Record<string, string> = {}): Planned {
  return { verb, object: typeof object === 'string' ? [object] : object, keys, ifNot: {}, nested: [] };
}

export function withIfNot(one: Planned, ifNot: Record<string, string>, nested: readonly Planned[] = []): Planned {
  return { ...one, ifNot, nested };
}

/** The steps with the head of the procedure before them, as a document. */
export function writeProcedure(head: string, steps: readonly PlannedStep[]): string {
  const lines = ['phases:', '  - phase: Work', '    steps:'];
  for (const step of steps) {
    lines.push(`      - step: ${step.id}`, '        title: Work');
    for (const [key, value] of Object.entries(step.keys)) lines.push(`        ${key}: ${value}`);
    lines.push('        do:', ...step.do.flatMap((one) => instructionLines(one, 10)));
  }
  return `${head}${lines.join('\n')}\n`;
}

function instructionLines({ verb, object, keys, ifNot, nested }: Planned, indent: number): string[] {
  const pad = ' '.repeat(indent);
  const value = object.length === 1 ? object[0] : `[${object.join(', ')}]`;
  const lines = [`${pad}- ${verb}: ${value}`];
  for (const [key, text] of Object.entries(keys)) lines.push(`${pad}  ${key}: ${text}`);
  const own = Object.entries(ifNot);
  if (own.length === 0 && nested.length === 0) return lines;
  lines.push(`${pad}  if-not:`, ...own.map(([key, text]) => `${pad}    ${key}: ${text}`));
  if (nested.length > 0) lines.push(`${pad}    do:`, ...nested.flatMap((one) => instructionLines(one, indent + 6)));
  return lines;
}

/** All instructions in the order of the document, those of `if-not` behind the one that they belong to. */
export function flatPlanned(steps: readonly PlannedStep[]): Planned[] {
  return steps.flatMap((step) => step.do.flatMap(withNested));
}

function withNested(one: Planned): Planned[] {
  return [one, ...one.nested.flatMap(withNested)];
}
