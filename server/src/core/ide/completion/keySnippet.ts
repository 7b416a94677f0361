import { UNIT_SHAPES } from '../../model/generated/shapes';
import type { Keys, ScalarShape, Shape } from '../../model/shape';

/** How the value of a key is laid out where the key is written. */
export interface KeyLayout {
  readonly flow: boolean;
  /** Blanks before the key's column, counted from the indentation of its line. */
  readonly indent: string;
}

/** A key with what it needs behind it, as plain text: what follows is typed. */
export function keyText(name: string, shape: Shape): string {
  return isLaidOutBelow(shape) ? `${name}:` : `${name}: `;
}

/** A key with its value laid out, as a snippet of the protocol. `numbers` counts the places to fill in. */
export function keySnippet(name: string, shape: Shape, layout: KeyLayout, numbers = new Places()): string {
  return `${escaped(name)}:${valueSnippet(shape, layout, numbers)}`;
}

/** All required keys of a map, each on its line, as they stand behind the dash of a list entry. */
export function requiredSnippet(keys: Keys, layout: KeyLayout): string {
  const numbers = new Places();
  const required = Object.entries(keys).filter(([, key]) => key.required);
  return required.map(([name, { shape }]) => keySnippet(name, shape, layout, numbers)).join(`\n${layout.indent}`);
}

class Places {
  #last = 0;

  next(): string {
    return `$${++this.#last}`;
  }

  choice(words: readonly string[]): string {
    const shown = words.map((word) => word.replace(/[\\,|$}]/g, (char) => `\\${char}`));
    return `\${${++this.#last}|${shown.join(',')}|}`;
  }
}

function valueSnippet(shape: Shape, { flow, indent }: KeyLayout, numbers: Places): string {
  switch (shape.as) {
    case 'scalar':
      return ` ${shape.many ? numbers.next() : scalarSnippet(shape.scalar, numbers)}`;
    case 'list':
      return flow ? ` [${numbers.next()}]` : `\n${indent}  - ${numbers.next()}`;
    case 'entries':
      return flow ? ` { ${numbers.next()} }` : `\n${indent}  ${numbers.next()}`;
    case 'object':
      return shape.shorthand === undefined ? ` { ${objectSnippet(shape.keys, numbers)} }` : ` ${numbers.next()}`;
    case 'unit':
      return ` { ${objectSnippet(UNIT_SHAPES[shape.def]?.shape.keys ?? {}, numbers)} }`;
    default:
      return ` ${numbers.next()}`;
  }
}

function scalarSnippet(scalar: ScalarShape, numbers: Places): string {
  if (scalar.is === 'choice') return numbers.choice(scalar.choices);
  return scalar.is === 'flag' ? numbers.choice(['true', 'false']) : numbers.next();
}

function objectSnippet(keys: Keys, numbers: Places): string {
  const required = Object.entries(keys).filter(([, key]) => key.required);
  if (required.length === 0) return numbers.next();
  const layout = { flow: true, indent: '' };
  return required.map(([name, { shape }]) => keySnippet(name, shape, layout, numbers)).join(', ');
}

function isLaidOutBelow(shape: Shape): boolean {
  return shape.as === 'list' || shape.as === 'entries';
}

function escaped(text: string): string {
  return text.replace(/[\\$}]/g, (char) => `\\${char}`);
}
