import { indentAt, isTriviaFrom, lineSpanAt, type OpenedLine, type Opener, openedLineAt } from './openers';

/**
 * The dashes and keys that a place stands under, outermost first, told from indentation alone: the nearest line above
 * that starts further left, then the nearest that starts further left than that. A line that is broken is passed over.
 */
export function openersAbove(text: string, lineStart: number, column: number, isEntry: boolean): Opener[] {
  const found: Opener[] = [];
  let limit = column;
  // A list may stand as far left as the key that holds it.
  let belowDash = isEntry;
  for (let start = lineStart; start > 0 && (limit > 0 || belowDash); ) {
    const { start: lineAt, end } = lineSpanAt(text, start - 1);
    start = text.charCodeAt(lineAt - 1) === 0xfeff ? lineAt - 1 : lineAt;
    const indent = indentAt(text, lineAt, end);
    if (indent > limit || (indent === limit && !belowDash) || isTriviaFrom(text, lineAt, end)) continue;
    const taken = openedLineAt(text, lineAt).openers.filter((one) => isAbove(one, limit, belowDash));
    const [first] = taken;
    if (first === undefined) {
      // Text that stands further left ends whatever stood deeper, and opens nothing.
      limit = Math.min(limit, Math.max(indent, 1));
      continue;
    }
    found.unshift(...taken);
    limit = first.column;
    belowDash = first.is === 'dash';
  }
  return found;
}

function isAbove(opener: Opener, limit: number, belowDash: boolean): boolean {
  return opener.column < limit || (belowDash && opener.is === 'key' && opener.column === limit);
}

/** The keys of the block map that has its keys at a column, but for that on the line itself. */
export function keysAround(text: string, lineStart: number, column: number): string[] {
  return [...linesAround(text, lineStart, column)].flatMap(({ openers }) => {
    const key = openers.find((one) => one.is === 'key' && one.column === column);
    return key?.is === 'key' ? [key.name] : [];
  });
}

/** The texts in the entries of the block list that has its dashes at a column, but for that on the line itself. */
export function entriesAround(text: string, lineStart: number, column: number): string[] {
  return [...linesAround(text, lineStart, column, true)].flatMap(({ openers, content, end }) => {
    const [first, second] = openers;
    if (first?.is !== 'dash' || first.column !== column || second !== undefined) return [];
    const written = text
      .slice(content, end)
      .replace(/\s+#.*$/, '')
      .trim();
    return written === '' ? [] : [written];
  });
}

/** The lines of the block that has its keys or dashes at a column, in both directions from a line, without that line. */
function* linesAround(text: string, lineStart: number, column: number, isList = false): Generator<OpenedLine> {
  if (isList || !startsEntryAt(text, lineStart, column)) yield* linesAbove(text, lineStart, column, isList);
  for (let at = text.indexOf('\n', lineStart); at >= 0; at = text.indexOf('\n', at + 1)) {
    const { start, end } = lineSpanAt(text, at + 1);
    const indent = indentAt(text, start, end);
    if (indent > column || isTriviaFrom(text, start, end)) continue;
    if (indent < column || (isList && text.charAt(start + indent) !== '-')) return;
    yield openedLineAt(text, start);
  }
}

function* linesAbove(text: string, lineStart: number, column: number, isList: boolean): Generator<OpenedLine> {
  for (let next = lineStart; next > 0; ) {
    const { start, end } = lineSpanAt(text, next - 1);
    next = start > 0 && text.charCodeAt(start - 1) === 0xfeff ? 0 : start;
    const indent = indentAt(text, start, end);
    if (indent > column || isTriviaFrom(text, start, end)) continue;
    // The dash of an entry stands further left than the keys in it.
    if (indent === column || (!isList && startsEntryAt(text, start, column))) yield openedLineAt(text, start);
    if (indent < column || (isList && text.charAt(start + indent) !== '-')) return;
  }
}

/** Whether a line opens a list entry whose content may stand at a column; then nothing above it belongs there. */
function startsEntryAt(text: string, lineStart: number, column: number): boolean {
  const { start, end } = lineSpanAt(text, lineStart);
  const indent = indentAt(text, start, end);
  return indent < column && text.charAt(start + indent) === '-';
}
