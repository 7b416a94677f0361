import { longestRising } from '../../text/longestRising';
import type { TextEdit } from '../../text/span';

interface SourceLine {
  readonly start: number;
  readonly text: string;
  readonly lineEnd: string;
}

/** A run of lines that differs: old lines and what stands there now. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly newFrom: number;
  readonly newTo: number;
}

/**
 * The edits that turn one text into another, line by line and each as small as it can be, so that cursors and folds stay.
 * Lines that stand once in both texts are taken for the same line.
 */
export function textDifference(before: string, after: string): TextEdit[] {
  const head = commonLines(before, after);
  const tail = commonLinesAtEnd(before, after, head);
  const old = linesOf(before, head, before.length - tail);
  const now = linesOf(after, head, after.length - tail);
  const end = before.length - tail;
  return changesBetween(old, now).flatMap((change) => editsOf(end, old, now, change));
}

/** The length of the lines at the start that both texts have. */
function commonLines(before: string, after: string): number {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && before.charCodeAt(at) === after.charCodeAt(at)) at++;
  return at === 0 ? 0 : before.lastIndexOf('\n', at - 1) + 1;
}

/** The length of the lines at the end that both texts have, not counting what they have at the start. */
function commonLinesAtEnd(before: string, after: string, head: number): number {
  const most = Math.min(before.length, after.length) - head;
  let length = 0;
  while (length < most && before.charCodeAt(before.length - 1 - length) === after.charCodeAt(after.length - 1 - length))
    length++;
  const newline = before.indexOf('\n', before.length - length);
  return newline < 0 ? 0 : before.length - newline - 1;
}

function linesOf(text: string, from: number, to: number): SourceLine[] {
  const lines: SourceLine[] = [];
  for (let start = from; start < to; ) {
    const newline = text.indexOf('\n', start);
    const next = newline < 0 || newline >= to ? to : newline + 1;
    const length = newline < 0 || newline >= to ? 0 : text.charAt(newline - 1) === '\r' && newline > start ? 2 : 1;
    lines.push({ start, text: text.slice(start, next - length), lineEnd: text.slice(next - length, next) });
    start = next;
  }
  return lines;
}

function changesBetween(old: readonly SourceLine[], now: readonly SourceLine[]): Change[] {
  const anchors = [...anchorsOf(old, now), [old.length, now.length] as const];
  const changes: Change[] = [];
  let [from, newFrom] = [0, 0];
  for (const [to, newTo] of anchors) {
    const change = trimmed(old, now, { from, to, newFrom, newTo });
    if (change.from < change.to || change.newFrom < change.newTo) changes.push(change);
    [from, newFrom] = [to + 1, newTo + 1];
  }
  return changes;
}

/** Pairs of lines that stand once in each text, the longest chain of them that is in order in both. */
function anchorsOf(old: readonly SourceLine[], now: readonly SourceLine[]): (readonly [number, number])[] {
  const places = onlyPlaces(now);
  const pairs: (readonly [number, number])[] = [];
  for (const [line, index] of onlyPlaces(old)) {
    const other = places.get(line);
    if (index >= 0 && other !== undefined && other >= 0) pairs.push([index, other]);
  }
  return longestRising(pairs.sort((a, b) => a[0] - b[0]));
}

/** Where each line stands; −1 for one that stands several times. */
function onlyPlaces(lines: readonly SourceLine[]): Map<string, number> {
  const places = new Map<string, number>();
  for (const [index, line] of lines.entries()) places.set(keyOf(line), places.has(keyOf(line)) ? -1 : index);
  return places;
}

function trimmed(old: readonly SourceLine[], now: readonly SourceLine[], change: Change): Change {
  let { from, to, newFrom, newTo } = change;
  while (from < to && newFrom < newTo && isSame(old[from], now[newFrom])) [from, newFrom] = [from + 1, newFrom + 1];
  while (from < to && newFrom < newTo && isSame(old[to - 1], now[newTo - 1])) [to, newTo] = [to - 1, newTo - 1];
  return { from, to, newFrom, newTo };
}

function editsOf(endOfOld: number, old: readonly SourceLine[], now: readonly SourceLine[], change: Change): TextEdit[] {
  const { from, to, newFrom, newTo } = change;
  if (to - from === newTo - newFrom) {
    return old.slice(from, to).flatMap((line, i) => {
      const other = now[newFrom + i];
      return other === undefined || isSame(line, other) ? [] : [editOfLine(line, other)];
    });
  }
  const start = old[from]?.start ?? endOfOld;
  const end = old[to]?.start ?? endOfOld;
  return [{ span: { start, end }, text: now.slice(newFrom, newTo).map(keyOf).join('') }];
}

function editOfLine(line: SourceLine, other: SourceLine): TextEdit {
  // Where the line end changes, the whole line is replaced, since no position lies inside a line end.
  if (line.lineEnd !== other.lineEnd) {
    const end = line.start + line.text.length + line.lineEnd.length;
    return { span: { start: line.start, end }, text: other.text + other.lineEnd };
  }
  const most = Math.min(line.text.length, other.text.length);
  let head = 0;
  while (head < most && line.text[head] === other.text[head]) head++;
  let tail = 0;
  while (tail < most - head && line.text.at(-1 - tail) === other.text.at(-1 - tail)) tail++;
  // The two halves of one character are not parted.
  if (/[\uD800-\uDBFF]/.test(line.text[head - 1] ?? '')) head--;
  if (/[\uDC00-\uDFFF]/.test(line.text.at(-tail) ?? '') && tail > 0) tail--;
  const span = { start: line.start + head, end: line.start + line.text.length - tail };
  return { span, text: other.text.slice(head, other.text.length - tail) };
}

function keyOf({ text, lineEnd }: SourceLine): string {
  return text + lineEnd;
}

function isSame(a: SourceLine | undefined, b: SourceLine | undefined): boolean {
  return a?.text === b?.text && a?.lineEnd === b?.lineEnd;
}
