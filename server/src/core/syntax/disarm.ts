import type { Line } from './lines';

/** A line that must not reach the YAML reader, and what it is. A first `---` is a start marker: nothing is wrong. */
export interface DisarmedLine {
  readonly line: Line;
  readonly what: 'conflict-marker' | 'directive' | 'second-document' | 'start-marker';
}

export interface Disarmed {
  readonly text: string;
  readonly lines: readonly Line[];
  readonly disarmed: readonly DisarmedLine[];
}

const CONFLICT = /^(?:<{7}|={7}|>{7}|\|{7})(?:\s|$)/;

/**
 * Turns merge-conflict markers, directives and document markers into comments of the same length, so that one such
 * line costs one finding and the rest of the document is still read at its true offsets.
 */
export function disarm(text: string, lines: readonly Line[]): Disarmed {
  const disarmed: DisarmedLine[] = [];
  let contentSeen = false;
  let safeLines: Line[] | undefined;
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i];
    if (line === undefined || line.trivia) continue;
    const what = line.indent === 0 ? dangerOf(text.slice(line.start, line.end), contentSeen) : undefined;
    if (what === undefined) {
      contentSeen = true;
      continue;
    }
    disarmed.push({ line, what });
    // Nearly every document has nothing to disarm, and keeps its lines.
    safeLines ??= [...lines];
    safeLines[i] = { ...line, first: '#', trivia: true };
  }
  return { text: withComments(text, disarmed), lines: safeLines ?? lines, disarmed };
}

function withComments(text: string, disarmed: readonly DisarmedLine[]): string {
  let result = '';
  let at = 0;
  for (const { line } of disarmed) {
    result += `${text.slice(at, line.start)}#`;
    at = line.start + 1;
  }
  return result + text.slice(at);
}

function dangerOf(content: string, contentSeen: boolean): DisarmedLine['what'] | undefined {
  if (CONFLICT.test(content)) return 'conflict-marker';
  if (/^---(?:\s|$)/.test(content)) return contentSeen || content.trim() !== '---' ? 'second-document' : 'start-marker';
  if (/^\.\.\.(?:\s|$)/.test(content)) return 'second-document';
  return content.startsWith('%') ? 'directive' : undefined;
}
