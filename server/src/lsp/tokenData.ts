import type { SemanticTokensEdit } from 'vscode-languageserver';
import type { SemanticToken } from '../core/ide/semanticTokens';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from '../core/ide/tokens/tokenTypes';
import type { LineIndex } from '../core/text/lineIndex';

/** Numbers for one token: lines and characters since the one before, its length, its type and modifiers as in the legend. */
const numbersPerToken = 5;

/** Tokens as the protocol sends them. They stand in the order of the text, so that lines are only gone down. */
export function tokenData(lines: LineIndex, tokens: readonly SemanticToken[]): number[] {
  // Filled in place: a long document has a hundred thousand numbers.
  const data = new Array<number>(tokens.length * numbersPerToken);
  let at = 0;
  let line = 0;
  let from = { line: 0, offset: 0 };
  for (const { span, type, modifiers } of tokens) {
    while (line + 1 < lines.lineCount && lines.lineStart(line + 1) <= span.start) line++;
    const offset = line === from.line ? from.offset : lines.lineStart(line);
    data[at++] = line - from.line;
    data[at++] = span.start - offset;
    data[at++] = span.end - span.start;
    data[at++] = TOKEN_TYPES.indexOf(type);
    data[at++] = bitsOf(modifiers);
    from = { line, offset: span.start };
  }
  return data;
}

function bitsOf(modifiers: SemanticToken['modifiers']): number {
  return modifiers.reduce((bits, modifier) => bits | (1 << TOKEN_MODIFIERS.indexOf(modifier)), 0);
}

/** What has to be put where in the numbers sent before: one stretch, in whole tokens, since people type in one place. */
export function tokenEdits(before: readonly number[], after: readonly number[]): SemanticTokensEdit[] {
  const shorter = Math.min(before.length, after.length);
  let same = 0;
  while (same < shorter && before[same] === after[same]) same++;
  if (same === before.length && same === after.length) return [];
  let tail = 0;
  while (tail < shorter - same && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  const start = same - (same % numbersPerToken);
  const kept = tail - (tail % numbersPerToken);
  return [{ start, deleteCount: before.length - start - kept, data: after.slice(start, after.length - kept) }];
}
