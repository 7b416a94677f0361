import type { ListNode, MapNode, Node, Pair, ScalarNode } from './node';
import { atQuote, readPlain, readQuoted } from './usualScalar';
import { COLON, CR, isGap, LF, type UsualText, unusual } from './usualText';

const COMMA = 44;
const OPEN_LIST = 91;
const CLOSE_LIST = 93;
const OPEN_MAP = 123;
const CLOSE_MAP = 125;
/** Brackets nested deeper than anybody writes them are left to the library, which minds its stack. */
const DEEPEST = 20;

export function atBracket(at: UsualText): boolean {
  const code = at.code();
  return code === OPEN_MAP || code === OPEN_LIST;
}

/** A list or map in brackets; on lines below, it is indented more than what holds it. */
export function readFlow(at: UsualText, parentIndent: number, depth = 1): ListNode | MapNode {
  if (depth > DEEPEST) unusual();
  return at.code() === OPEN_MAP ? readFlowMap(at, parentIndent, depth) : readFlowList(at, parentIndent, depth);
}

function readFlowList(at: UsualText, parentIndent: number, depth: number): ListNode {
  const from = at.at;
  const items: Node[] = [];
  readEntries(at, CLOSE_LIST, parentIndent, depth, () => items.push(readFlowValue(at, parentIndent, depth)));
  return at.list(from, at.at, true, items);
}

function readFlowMap(at: UsualText, parentIndent: number, depth: number): MapNode {
  const from = at.at;
  const pairs: Pair[] = [];
  readEntries(at, CLOSE_MAP, parentIndent, depth, () => {
    const key = readFlowScalar(at);
    if (key.style === 'plain' && key.text === '<<') unusual();
    at.skipSpaces();
    if (at.code() !== COLON || !isGap(at.text.charCodeAt(at.at + 1))) unusual();
    at.at++;
    skipGap(at, parentIndent, 0);
    pairs.push({ key, value: readFlowValue(at, parentIndent, depth) });
  });
  return at.map(from, at.at, true, pairs);
}

/** From the opening bracket to behind the closing one, with a comma between two entries. */
function readEntries(at: UsualText, close: number, parentIndent: number, depth: number, readEntry: () => void): void {
  at.at++;
  skipGap(at, parentIndent, depth === 1 ? close : 0);
  let isFirst = true;
  while (at.code() !== close || !isFirst) {
    readEntry();
    isFirst = false;
    skipGap(at, parentIndent, depth === 1 ? close : 0);
    if (at.code() === close) break;
    if (at.code() !== COMMA) unusual();
    at.at++;
    skipGap(at, parentIndent, 0);
  }
  at.at++;
}

function readFlowValue(at: UsualText, parentIndent: number, depth: number): Node {
  return atBracket(at) ? readFlow(at, parentIndent, depth + 1) : readFlowScalar(at);
}

function readFlowScalar(at: UsualText): ScalarNode {
  return atQuote(at) ? readQuoted(at) : readPlain(at, true);
}

/** Passes over spaces and line ends. Only the outermost closing bracket may stand as far left as what holds it. */
function skipGap(at: UsualText, parentIndent: number, close: number): void {
  at.skipSpaces();
  for (let code = at.code(); code === LF || code === CR; code = at.code()) {
    const start = at.at + (code === CR ? 2 : 1);
    at.at = start;
    at.skipSpaces();
    const indent = at.at - start;
    const first = at.code();
    if (first === LF || first === CR || indent > parentIndent) continue;
    if (indent < parentIndent || first !== close) unusual();
  }
}
