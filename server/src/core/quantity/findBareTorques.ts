import type { Span } from '../text/span';
import { plainCharacters } from './characters';
import { proseUnit } from './proseUnits';
import type { WrittenNumber } from './quantity';
import { Scanner } from './scanner';
import { scanStatement } from './scanStatement';
import type { Unit } from './unit';
import { usualUnits } from './units';

/** A torque in running text that lacks its unit, or has one that could be several. `span` holds the number and that unit. */
export interface BareTorque {
  readonly number: WrittenNumber;
  readonly span: Span;
  readonly unit:
    | { readonly kind: 'missing' }
    | { readonly kind: 'ambiguous'; readonly written: string; readonly span: Span };
  /** Units that may be meant, most usual first. */
  readonly candidates: readonly Unit[];
}

const tighteningWord = /\b(?:re-?)?(?:tighten(?:s|ed|ing)?|torqu(?:e|es|ed|ing))\b/gi;
/** The rest of the sentence that may still speak of the same tightening; a full stop inside a number does not end it. */
const restOfSentence = /(?:[^.;!?\n]|\.(?=\S)){0,120}/y;
const joiningWord =
  /(?:\b(?:to|at|above|over|beyond)\b|\btorque(?:\s+(?:value|setting|figure|of|is))*|\b(?:value|setting|figure)\s+of\b|[:=])\s*(?:a(?:n)? (?:maximum|minimum) of\s+|(?:about|approximately|max\.?|min\.?)\s+)?(?=[≤≥<>]?\s*[\d.½¼¾])/gi;
/** What may follow a number that has nothing to count. */
const nothingCounted =
  /^(?:\s*$|\s*[;:!?()\]](?!\d)|\s*[.,](?!\d)(?!\s*\d)|\s+(?:then|in|with|using|on|by|for|before|after|at|from|as|while|when|if|until|dry|oiled|wet|max|maximum|min|minimum|first|now|again|only|plus|is|are|was|and(?!\s*\d)|or(?!\s*\d))\b)/i;
const singleFastener = /\b(?:nut|bolt|screw|stud|plug|clamp|ring|fastener|cap|joint|pass|step)\s+$/i;

/** Most sentences have no number at all, and need no second look. */
const NUMERAL = /[\d½¼¾]/;

/** Finds "tighten to 45", "torque: 45", "tighten to 45 lb" in running text; spans are offsets into it. */
export function findBareTorques(prose: string): readonly BareTorque[] {
  if (!NUMERAL.test(prose)) return [];
  const text = plainCharacters(prose);
  const found = new Map<number, BareTorque>();
  for (const word of text.matchAll(tighteningWord)) {
    for (const start of numbersAfter(text, word.index)) {
      const bare = found.has(start) ? null : bareTorqueAt(text, start);
      if (bare !== null) found.set(start, bare);
    }
  }
  return [...found.values()].sort((a, b) => a.span.start - b.span.start);
}

/** Places where a number is said to be what the tightening leads to. */
function numbersAfter(text: string, wordStart: number): readonly number[] {
  restOfSentence.lastIndex = wordStart;
  const sentence = restOfSentence.exec(text)?.[0] ?? '';
  return [...sentence.matchAll(joiningWord)]
    .filter((join) => !isCountUpTo(sentence.slice(0, join.index), join[0]))
    .map((join) => wordStart + join.index + join[0].length);
}

/** `bolts 1 to 8` counts the bolts, `bolt 3 to 45` names one and says how tight. */
function isCountUpTo(before: string, join: string): boolean {
  const number = /(?:^|\s)[\d.]+\s+$/.exec(before);
  return /^to/i.test(join) && number !== null && !singleFastener.test(before.slice(0, number.index + 1));
}

function bareTorqueAt(text: string, start: number): BareTorque | null {
  const scanner = new Scanner(text, start, 'prose');
  const scanned = scanStatement(scanner);
  if (scanned === null) return null;
  const { number } = scanned.value.scanned;
  const unit = proseUnit(text, scanned);
  if (unit !== null) {
    const asTorque = unit.meanings.find((meaning) => meaning.dimension === 'torque');
    if (asTorque?.status !== 'ambiguous') return null;
    const span = { start: number.span.start, end: unit.span.end };
    return {
      number,
      span,
      unit: { kind: 'ambiguous', written: unit.text, span: unit.span },
      candidates: asTorque.candidates,
    };
  }
  const end = numbersEnd(scanned.upTo?.scanned.number ?? number, scanned.tolerance?.span.end);
  if (!nothingCounted.test(text.slice(end))) return null;
  return {
    number,
    span: { start: number.span.start, end },
    unit: { kind: 'missing' },
    candidates: usualUnits('torque'),
  };
}

function numbersEnd(last: WrittenNumber, toleranceEnd: number | undefined): number {
  return Math.max(last.span.end, toleranceEnd ?? 0);
}
