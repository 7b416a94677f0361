/**
 * A line of formatted text. One that was set counts its indentation from the block that it stands in; one that is kept
 * stands as the writer left it, line end and all.
 */
export type Line =
  | { readonly is: 'set'; readonly text: string }
  | { readonly is: 'kept'; readonly text: string; readonly lineEnd: string };

export function set(text: string): Line {
  return { is: 'set', text };
}

export const BLANK: Line = set('');

export function isBlank(line: Line): boolean {
  return line.text.trim() === '';
}

/** Blank, or nothing but a comment. */
export function isTrivia(line: Line): boolean {
  return /^\s*(?:#|$)/.test(line.text);
}

/** The lines moved to the right; kept ones stand where they stood. */
export function indented(lines: readonly Line[], by: number): Line[] {
  const space = ' '.repeat(by);
  return lines.map((line) => (line.is === 'kept' || line.text === '' ? line : set(space + line.text)));
}

/** The lines of an entry behind its dash, `gap` columns behind it. A first line that is kept has its dash already. */
export function dashed(lines: readonly Line[], gap: number): Line[] {
  const [first, ...more] = lines;
  if (first === undefined) return [];
  const opening = first.is === 'kept' ? first : set(`-${' '.repeat(gap - 1)}${first.text}`);
  return [opening, ...indented(more, gap)];
}
