import type { Span } from '../text/span';
import { type Spelling, spellingsOf, unitKeysAt } from './spellings';
import { type ScannedNumber, scanNumber } from './writtenNumber';

/** A unit as written, with the number of spaces before it; no meaning where it is not known. */
export interface WrittenUnit {
  readonly text: string;
  readonly span: Span;
  readonly spaces: number;
  readonly meanings: readonly Spelling[];
}

/** Running prose has words after numbers that are no units, and full stops that end sentences. */
export type Setting = 'value' | 'prose';

const signs = {
  atMost: / *(?:≤|<=|=<|<|(?:max(?:imum)?\b\.?|at most\b|up to\b|not more than\b|no more than\b):? *(?=[\d.+-]))/iy,
  atLeast: / *(?:≥|>=|=>|>|(?:min(?:imum)?\b\.?|at least\b|not less than\b|no less than\b):? *(?=[\d.+-]))/iy,
  maxAfter: /,? *max(?:imum\b|\.|\b)/iy,
  minAfter: /,? *min(?:imum\b|\.|\b)/iy,
  range: / *(?:\.\.\.?|…|[-–]|to\b|through\b) *(?=[-+]?[\d.½¼¾⅛⅜⅝⅞])/iy,
  plusMinus: / *(?:±|\+ ?\/? ?-|plus or minus\b|plus\/minus\b)/iy,
  offsetJoin: / *[/,;|] */y,
  angleJoin: /,? *(?:\+|and then\b|then\b|plus\b|followed by\b) *(?=[\d.±])/iy,
  bracketOpen: / *[([]/y,
  bracketClose: / *[)\]]/y,
} as const;

const space = / */y;
const sign = /[+-]? */y;
/** What may be an unknown unit: letters up to a sign that goes on with the quantity. */
const unknownWord = /[^\s\d()[\]±+≤≥<>,;:=…][^\s()[\]±+≤≥<>,;:=…]*/y;
const moreOfWord = /[-·*/.]?[A-Za-zµΩ]/y;
const prepositionPhrase =
  / (?:the|an?|this|that|one|two|three|four|five|six|\d|order|sequence|steps|stages|passes|turn|each|both|several|small|equal|even)\b/iy;
const joiningWord = /(?:to|then|and|plus|max|maximum|minimum|through)\b/iy;

interface Place {
  readonly position: number;
  readonly end: number;
}

/** Walks along a text of plain characters. Every reader either takes something and moves on, or stays where it was. */
export class Scanner {
  position: number;
  /** End of the last thing taken. */
  end: number;

  constructor(
    readonly text: string,
    start: number,
    readonly setting: Setting,
  ) {
    this.position = start;
    this.end = start;
  }

  /** Where the scanner is, to come back to. */
  mark(): Place {
    return { position: this.position, end: this.end };
  }

  goTo(place: Place): void {
    this.position = place.position;
    this.end = place.end;
  }

  skipSpace(): void {
    this.match(space);
  }

  take(what: keyof typeof signs): boolean {
    const found = this.match(signs[what]) !== null;
    if (found) this.end = this.position;
    return found;
  }

  number(): ScannedNumber | null {
    const back = this.position;
    this.skipSpace();
    const signAt = this.position;
    const spaceAfterSign = (this.match(sign) ?? '').length > 1;
    const scanned = scanNumber(this.text, this.position, signAt);
    if (scanned === null || (spaceAfterSign && this.setting === 'prose')) {
      this.position = back;
      return null;
    }
    this.position = scanned.number.span.end;
    this.end = this.position;
    return scanned;
  }

  /** The longest known unit from here, else a word that stands where a unit should, else null. */
  unit(): WrittenUnit | null {
    const back = this.position;
    const spaces = (this.match(space) ?? '').length;
    const start = this.position;
    const found = this.knownUnit(start) ?? this.unknownUnit(start);
    if (found === null) {
      this.position = back;
      return null;
    }
    this.position = found.end;
    this.end = found.end;
    return {
      text: this.text.slice(start, found.end),
      span: { start, end: found.end },
      spaces,
      meanings: found.meanings,
    };
  }

  private knownUnit(start: number): { end: number; meanings: readonly Spelling[] } | null {
    for (const { key, end } of unitKeysAt(this.text, start).toReversed()) {
      const meanings = spellingsOf(key);
      if (meanings.length === 0 || !this.isWhole(start, end)) continue;
      return { end: this.afterAbbreviation(end), meanings };
    }
    return null;
  }

  /** `lbf` is not the unit of `lbf-fr`, and in `45 lbs in two passes` the inch is a preposition. */
  private isWhole(start: number, end: number): boolean {
    if (this.setting === 'value') return !this.looksAt(moreOfWord, end);
    return !(this.looksAt(prepositionPhrase, end) && / in$/i.test(this.text.slice(start, end)));
  }

  /** The full stop of `lbs.` belongs to the unit; in prose it may end the sentence, and two stops are a range. */
  private afterAbbreviation(end: number): number {
    const stop = this.setting === 'value' && this.text[end] === '.' && !/[\d.]/.test(this.text[end + 1] ?? '');
    return stop ? end + 1 : end;
  }

  private unknownUnit(start: number): { end: number; meanings: readonly Spelling[] } | null {
    if (this.setting === 'prose' || this.looksAt(joiningWord, start)) return null;
    unknownWord.lastIndex = start;
    const word = unknownWord.exec(this.text);
    const isRange = word === null || /^(?:\.\.|[-–/])/.test(word[0]);
    return isRange ? null : { end: unknownWord.lastIndex, meanings: [] };
  }

  private looksAt(pattern: RegExp, at: number): boolean {
    pattern.lastIndex = at;
    return pattern.test(this.text);
  }

  private match(pattern: RegExp): string | null {
    pattern.lastIndex = this.position;
    const found = pattern.exec(this.text);
    if (found === null) return null;
    this.position = pattern.lastIndex;
    return found[0];
  }
}
