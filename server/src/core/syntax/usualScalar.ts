import type { ScalarNode } from './node';
import { COLON, CR, DASH, HASH, isGap, LF, SPACE, type UsualText, unusual } from './usualText';

/** Signs that give a text another meaning where it starts with one of them. */
const NO_TEXT_STARTS_WITH = '?:,[]{}#&*!|>\'"%@`';
const FLOW_SIGNS = ',[]{}';

export function atQuote(at: UsualText): boolean {
  const code = at.code();
  return code === 34 || code === 39;
}

/** A quoted text on one line, without escapes. */
export function readQuoted(at: UsualText): ScalarNode {
  const { text, at: from } = at;
  const quote = text.charAt(from);
  let end = text.indexOf(quote, from + 1);
  if (quote === "'") while (end >= 0 && text.charAt(end + 1) === quote) end = text.indexOf(quote, end + 2);
  if (end < 0) unusual();
  const inside = text.slice(from + 1, end);
  if (inside.includes('\n') || (quote === '"' && inside.includes('\\'))) unusual();
  at.at = end + 1;
  return quote === '"'
    ? at.scalar(from, end + 1, 'double', inside)
    : at.scalar(from, end + 1, 'single', inside.replaceAll("''", "'"));
}

/** A text without quotes that ends on its line. */
export function readPlain(at: UsualText, flow: boolean): ScalarNode {
  const from = at.at;
  startPlain(at, flow);
  const end = plainEnd(at, flow);
  at.at = end;
  return at.scalar(from, end, 'plain', at.text.slice(from, end));
}

/** Goes on with a text without quotes on the lines below that are indented more than what holds it. */
export function continuePlain(at: UsualText, first: ScalarNode, parentIndent: number): ScalarNode {
  const { text } = at;
  let end = first.to;
  for (let next = continuation(at, parentIndent); next >= 0; next = continuation(at, parentIndent)) {
    at.at = next;
    end = plainEnd(at, false);
    at.at = end;
  }
  return end === first.to ? first : at.scalar(first.from, end, 'plain', unfolded(text.slice(first.from, end)));
}

function startPlain(at: UsualText, flow: boolean): void {
  const { text } = at;
  if (NO_TEXT_STARTS_WITH.includes(text.charAt(at.at))) unusual();
  if (at.code() !== DASH) return;
  const next = text.charAt(at.at + 1);
  if (next === '' || isGap(next.charCodeAt(0)) || (flow && FLOW_SIGNS.includes(next))) unusual();
}

/** Where the text that goes on here ends on its line: before a remark, before a colon that makes it a key. */
function plainEnd(at: UsualText, flow: boolean): number {
  const { text } = at;
  let end = at.at;
  for (let i = at.at; ; i++) {
    const code = text.charCodeAt(i);
    if (code === SPACE) {
      if (text.charCodeAt(i + 1) === HASH) break;
    } else if (code === COLON) {
      const next = text.charCodeAt(i + 1);
      if (isGap(next)) break;
      if (flow && isFlowSign(next)) unusual();
      end = i + 1;
    } else if (code === LF || code === CR || Number.isNaN(code) || (flow && isFlowSign(code))) break;
    else end = i + 1;
  }
  return end === at.at ? unusual() : end;
}

function isFlowSign(code: number): boolean {
  return code === 44 || code === 91 || code === 93 || code === 123 || code === 125;
}

/** Where the text goes on below, or -1. */
function continuation(at: UsualText, parentIndent: number): number {
  const { text } = at;
  let i = at.at;
  while (text.charCodeAt(i) === SPACE) i++;
  for (let code = text.charCodeAt(i); code === LF || code === CR; code = text.charCodeAt(i)) {
    if (code === CR) i++;
    const start = i + 1;
    i = start;
    while (text.charCodeAt(i) === SPACE) i++;
    const first = text.charCodeAt(i);
    if (first === LF || first === CR) continue;
    return Number.isNaN(first) || first === HASH || i - start <= parentIndent ? -1 : i;
  }
  return -1;
}

/** A line break becomes a space, and more of them one line break less. */
function unfolded(source: string): string {
  const [first = '', ...rest] = source.split('\n').map((line) => line.replace(/^ +|[ \r]+$/g, ''));
  let text = first;
  let between = ' ';
  for (const line of rest) {
    if (line !== '') {
      text += between + line;
      between = ' ';
    } else if (between === '\n') text += between;
    else between = '\n';
  }
  return text;
}
