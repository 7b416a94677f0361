/** A comment or a run of blank lines between two tokens, with where it ends and, for a comment, in which column it stands. */
export interface Trivia {
  readonly text: string;
  readonly column: number;
  readonly end: number;
}

/** Reads comments and blank lines from an offset on; `next` is where something else stands. Runs of blank lines are one. */
export function scanTrivia(text: string, from: number): { readonly trivia: readonly Trivia[]; readonly next: number } {
  const trivia: Trivia[] = [];
  let lineEnds = from === 0 ? 1 : 0;
  let at = from;
  for (; at < text.length; at++) {
    const char = text.charAt(at);
    if (char === '\n') {
      lineEnds++;
      if (lineEnds === 2) trivia.push({ text: '', column: 0, end: at });
    } else if (char === '#') {
      const end = lineEndAfter(text, at);
      trivia.push({ text: text.slice(at, end).trimEnd(), column: columnOf(text, at), end });
      lineEnds = 0;
      at = end - 1;
    } else if (!/[ \t\r]/.test(char)) break;
  }
  return { trivia, next: at };
}

export function columnOf(text: string, offset: number): number {
  return offset - (text.lastIndexOf('\n', offset - 1) + 1);
}

/** The comment on the same line, with the space that it needs before it; empty where there is none. */
export function scanRemark(text: string, from: number): { readonly remark: string; readonly end: number } {
  const found = /[ \t]*(#[^\n]*)/y;
  found.lastIndex = from;
  const match = found.exec(text);
  if (match === null) return { remark: '', end: from };
  return { remark: remarkOf((match[1] ?? '').trimEnd()), end: from + match[0].length };
}

/** A sign alone or one before a number would be taken for text that was lost, unless it stands apart. */
export function remarkOf(comment: string): string {
  return `${/^#(?:$| \d)/.test(comment) ? '  ' : ' '}${comment}`;
}

function lineEndAfter(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
}
