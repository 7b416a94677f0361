import { ruleById } from '../rules/registry';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';

/** What is said about the word at a place. */
export interface HoverText {
  readonly span: Span;
  readonly markdown: string;
  /** The same for a client that shows no Markdown. */
  readonly plain: string;
}

/** Explains the id of a rule where one is written: in the severities of settings, in the `rule` of a concession. */
export function ruleHover(document: SyntaxDocument, offset: number): HoverText | undefined {
  const line = lineAround(document.text, offset);
  const text = document.text.slice(line.start, line.end);
  const character = offset - line.start;
  for (const match of text.matchAll(/[a-z][a-z0-9-]+/g)) {
    if (character < match.index || character > match.index + match[0].length) continue;
    const rule = ruleById(match[0]);
    if (rule === undefined || !standsAsRule(document, text.slice(0, match.index))) return undefined;
    const start = line.start + match.index;
    const about = `${rule.doc.what} ${rule.doc.why}`;
    return {
      span: { start, end: start + match[0].length },
      markdown: `**${rule.id}** (${rule.severity})\n\n${about}`,
      plain: `${rule.id} (${rule.severity})\n\n${about}`,
    };
  }
  return undefined;
}

/** The line that holds an offset, without its end. */
function lineAround(text: string, offset: number): Span {
  const isEnd = (at: number) => text.charAt(at) === '\n' || text.charAt(at) === '\r';
  let start = offset;
  while (start > 0 && !isEnd(start - 1)) start--;
  let end = offset;
  while (end < text.length && !isEnd(end)) end++;
  return { start, end };
}

function standsAsRule(document: SyntaxDocument, before: string): boolean {
  return document.kind === 'settings' ? /^[\s{,"']*$|[{,]\s*["']?$/.test(before) : /\brule:\s*["']?$/.test(before);
}
