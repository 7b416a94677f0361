import type { Item, ListNode, MapNode, Node, Pair, ScalarNode } from './node';
import { readBlockText } from './usualBlockText';
import { atBracket, readFlow } from './usualFlow';
import { atQuote, continuePlain, readPlain, readQuoted } from './usualScalar';
import { COLON, isGap, UNUSUAL, UsualText, unusual } from './usualText';

/** Signs that YAML or its library treat in a way of their own: tabs, control characters, marks between documents. */
const UNUSUAL_SIGNS = /[^\n\r\x20-\x7e\xa0-\u2027\u202a-\ufefe\uff00-\uffff]|\r(?!\n)|^(?:---|\.\.\.|%)/m;
const DEEPEST = 50;
/** The library objects to a longer key. */
const LONGEST_KEY = 1000;

/**
 * Reads the text of an item where it is written in the usual way: maps and lists in lines or brackets, texts with and
 * without quotes, remarks. Gives exactly what the YAML library gives, in a fraction of its time; undefined where the
 * text holds anything else, and where it may hold a fault.
 */
export function readUsually(item: Item): Node | undefined {
  if (UNUSUAL_SIGNS.test(item.text)) return undefined;
  try {
    return readRoot(new UsualText(item));
  } catch (error) {
    if (error === UNUSUAL) return undefined;
    throw error;
  }
}

function readRoot(at: UsualText): Node {
  at.skipSpaces();
  if (at.atLineEnd()) unusual();
  at.indent = at.at;
  const root = readBlock(at, -1, 0);
  return at.indent === -1 && root.kind !== 'scalar' ? root : unusual();
}

/** Reads what starts a line of its own. */
function readBlock(at: UsualText, parentIndent: number, depth: number): Node {
  if (depth > DEEPEST || isBlockText(at)) unusual();
  return at.atDash() ? readList(at, depth) : readMapOr(at, parentIndent, at.indent, depth);
}

function readList(at: UsualText, depth: number): ListNode {
  const { at: from, indent } = at;
  const items: Node[] = [];
  while (at.indent === indent && at.atDash()) {
    const dash = at.at;
    at.at++;
    at.skipSpaces();
    items.push(readEntry(at, indent, indent + at.at - dash, depth));
  }
  if (at.indent > indent) unusual();
  return at.list(from, at.blockEnd(from), false, items);
}

function readEntry(at: UsualText, indent: number, column: number, depth: number): Node {
  if (at.atLineEnd()) unusual();
  return isBlockText(at) ? readOnLine(at, indent) : readMapOr(at, indent, column, depth + 1);
}

/** Reads a map where a key stands here, else a text or what stands in brackets. */
function readMapOr(at: UsualText, parentIndent: number, column: number, depth: number): Node {
  if (atBracket(at)) return readOnLine(at, parentIndent);
  const scalar = readScalar(at);
  const end = at.at;
  at.skipSpaces();
  if (at.code() === COLON) return readMap(at, column, endKey(at, scalar), depth);
  at.at = end;
  return endScalar(at, scalar, parentIndent);
}

/** Reads a map from behind its first key. */
function readMap(at: UsualText, indent: number, first: ScalarNode, depth: number): MapNode {
  const pairs: Pair[] = [{ key: first, value: readValue(at, indent, depth) }];
  while (at.indent === indent && !at.atDash()) {
    const key = readScalar(at);
    at.skipSpaces();
    endKey(at, key);
    pairs.push({ key, value: readValue(at, indent, depth) });
  }
  if (at.indent >= indent) unusual();
  return at.map(first.from, at.blockEnd(first.from), false, pairs);
}

function readScalar(at: UsualText): ScalarNode {
  return atQuote(at) ? readQuoted(at) : readPlain(at, false);
}

/** Passes over the colon behind a key. */
function endKey(at: UsualText, key: ScalarNode): ScalarNode {
  if (at.code() !== COLON || key.to - key.from > LONGEST_KEY || (key.style === 'plain' && key.text === '<<')) unusual();
  at.at++;
  return isGap(at.code()) ? key : unusual();
}

function readValue(at: UsualText, indent: number, depth: number): Node | undefined {
  const colonEnd = at.at;
  at.skipSpaces();
  if (!at.atLineEnd()) return readOnLine(at, indent);
  const behind = at.passRemark();
  const above = at.nextLine();
  if (at.indent > indent || (at.indent === indent && at.atDash())) return readBlock(at, indent, depth + 1);
  // A remark below a key without a value counts to the value that is missing.
  if (behind || above) unusual();
  at.valueEnd = colonEnd;
  return undefined;
}

/** Reads a value that starts on the line of its key or dash. */
function readOnLine(at: UsualText, indent: number): Node {
  if (isBlockText(at)) return readBlockText(at, indent);
  if (!atBracket(at)) return endScalar(at, readScalar(at), indent);
  const flow = readFlow(at, indent);
  at.endValue();
  return flow;
}

/** A text without quotes may go on below; then its line must end. */
function endScalar(at: UsualText, scalar: ScalarNode, indent: number): ScalarNode {
  const whole = scalar.style === 'plain' ? continuePlain(at, scalar, indent) : scalar;
  at.endValue();
  return whole;
}

function isBlockText(at: UsualText): boolean {
  const code = at.code();
  return code === 124 || code === 62;
}
