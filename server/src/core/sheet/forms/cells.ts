import type { Condition, StepPlace } from '../sheet';
import type { CellBlank, FormBox, FormCell, FormColumn, FormTable } from './form';

/** Words in a cell, one line for each that says something. */
export function words(...texts: readonly (string | undefined)[]): FormCell {
  return { kind: 'text', texts: texts.flatMap((text) => (text ? [{ text, strong: false }] : [])) };
}

export function strongWords(text: string): FormCell {
  return { kind: 'text', texts: [{ text, strong: true }] };
}

/** Words with what they depend on below them. */
export function wordsWhen(text: string, condition: Condition | undefined): FormCell {
  const texts = [{ text, strong: false }];
  return condition === undefined ? { kind: 'text', texts } : { kind: 'text', texts, condition };
}

export function stepsCell(at: readonly StepPlace[]): FormCell {
  return { kind: 'steps', at: [...at] };
}

/** A cell that is written into as a whole. */
export const toFill: FormCell = { kind: 'blanks', blanks: [] };

/** One line to write on for each piece and place that is measured. */
export function blanksOf({
  rows,
  places,
  unit,
}: {
  readonly rows: readonly string[];
  readonly places: readonly string[];
  readonly unit: string;
}): FormCell {
  const named = (names: readonly string[]) => (names.length === 0 ? [''] : names);
  const blanks = named(rows).flatMap((row) =>
    named(places).map((place): CellBlank => ({ label: [row, place].filter((name) => name !== '').join(', '), unit })),
  );
  return { kind: 'blanks', blanks };
}

export function formTable(
  name: string,
  columns: readonly (readonly [head: string, width: FormColumn['width']])[],
  rows: FormCell[][],
  height: FormTable['height'] = 'plain',
): FormTable {
  return { kind: 'table', name, columns: columns.map(([head, width]) => ({ head, width })), rows, height };
}

/** A box to write in. */
export function box(label: string, more: Partial<Omit<FormBox, 'label'>> = {}): FormBox {
  return { label, at: [], share: 1, ...more };
}
