import { ruleById } from '../rules/registry';
import type { SyntaxDocument } from '../syntax/readDocument';
import { LineIndex } from '../text/lineIndex';
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
  const lines = new LineIndex(document.content);
  const { line, character } = lines.position(offset);
  const text = lines.lineText(line);
  for (const match of text.matchAll(/[a-z][a-z0-9-]+/g)) {
    if (character < match.index || character > match.index + match[0].length) continue;
    const rule = ruleById(match[0]);
    if (rule === undefined || !standsAsRule(document, text.slice(0, match.index))) return undefined;
    const start = lines.lineStart(line) + match.index;
    const about = `${rule.doc.what} ${rule.doc.why}`;
    return {
      span: { start, end: start + match[0].length },
      markdown: `**${rule.id}** (${rule.severity})\n\n${about}`,
      plain: `${rule.id} (${rule.severity})\n\n${about}`,
    };
  }
  return undefined;
}

function standsAsRule(document: SyntaxDocument, before: string): boolean {
  return document.kind === 'settings' ? /^[\s{,"']*$|[{,]\s*["']?$/.test(before) : /\brule:\s*["']?$/.test(before);
}
