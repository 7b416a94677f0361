import type { Span } from '../../text/span';
import { type Hand, otherHand } from './handOfThread';
import { sentencesIn } from './sentenceAt';

/** What is done to a fastener where its text stands, so that "turn it clockwise" says which hand it has. */
export type Turning = 'loosen' | 'tighten' | undefined;

/** Words that say which hand a thread has. */
export interface HandClaim extends Span {
  readonly hand: Hand;
  /** The words with the other hand in their place; undefined where a person should choose them. */
  readonly turnedRound: string | undefined;
  readonly sentence: Span;
}

/** A sentence that weighs cases, or speaks against something, claims nothing of one fastener. */
const WEIGHS =
  /\b(?:if|when|whether|unless|except|means?|may|might|or|not|never|either|depend(?:s|ing)|others?|(?:seen|viewed|looking) from)\b/i;
const SIDES = '(?!\\s+(?:side|end|edge|corner|half|wall|face|glove|flange|bank|cylinder|engine)\\b)';
const THREADED = '(?=\\s+(?:thread|nut|bolt|screw|stud|plug|fitting))';
/** With a space it is a hand of the fitter, unless a thread follows. */
const HAND = new RegExp(`\\b(left|right)(?:-hand(?:ed)?\\b${SIDES}|\\s?hand(?:ed)?\\b${THREADED})`, 'gi');
const MARK = /\b(LH|RH)(?=\s+(?:thread|nut|bolt|screw|stud|plug|fitting)|\s*[).]|\s*$)|(?<=\bthread\s+)(LH|RH)\b/g;
const REVERSE = /\brevers(?:e|ed)[- ]thread(?:s|ed)?\b/gi;
const TURN =
  /\b(?:turn|rotate|loosen|undo|unscrew|remove|tighten|screw|torque)\w*\b([^.;:]{0,60}?)(?<!\w)(counter-?\s?clockwise|anti-?\s?clockwise|clockwise)\b/gi;
const LOOSENS = /\b(?:loosen|undo|unscrew|remov|slacken|take (?:it|them)? ?off)/i;
const TIGHTENS = /\b(?:tighten|torque|screw (?:it|them|in|on))/i;
const FASTENER = /\b(?:it|them|nuts?|bolts?|screws?|studs?|plugs?|fittings?|clamps?)\b/i;
const ROTATES = /\b(?:rotor|shaft|wheel|impeller|compressor|turbine|wrench|ring|lever)\b/i;

/** What a text claims of the hand of threads, sentence by sentence. */
export function handClaims(text: string, turning: Turning): HandClaim[] {
  if (!/hand|\b[LR]H\b|revers|clockwise/i.test(text)) return [];
  return sentencesIn(text).flatMap((sentence) => {
    const words = text.slice(sentence.start, sentence.end);
    if (WEIGHS.test(words)) return [];
    const claims = [...handWords(words), ...directions(words, turning)];
    const hands = new Set(claims.map((claim) => claim.hand));
    if (hands.size !== 1) return [];
    return claims
      .map(({ start, end, ...rest }) => ({
        ...rest,
        sentence,
        start: sentence.start + start,
        end: sentence.start + end,
      }))
      .sort((a, b) => a.start - b.start);
  });
}

type Found = Omit<HandClaim, 'sentence'>;

function handWords(words: string): Found[] {
  const found: Found[] = [];
  for (const { 0: said, 1: side = '', index } of words.matchAll(HAND)) {
    const hand = side.toLowerCase() as Hand;
    const other = otherHand(hand);
    const turned = /^[LR]/.test(side) ? other.charAt(0).toUpperCase() + other.slice(1) : other;
    found.push({ start: index, end: index + said.length, hand, turnedRound: turned + said.slice(side.length) });
  }
  for (const { 0: said, index } of words.matchAll(MARK)) {
    const left = said === 'LH';
    found.push({ start: index, end: index + 2, hand: left ? 'left' : 'right', turnedRound: left ? 'RH' : 'LH' });
  }
  for (const { 0: said, index } of words.matchAll(REVERSE)) {
    found.push({ start: index, end: index + said.length, hand: 'left', turnedRound: undefined });
  }
  return found;
}

/** Clockwise tightens a right-hand thread and loosens a left-hand one. */
function directions(words: string, given: Turning): Found[] {
  const turning = turningOf(words) ?? given;
  if (turning === undefined || turning === 'both') return [];
  return Array.from(words.matchAll(TURN), ({ 0: all, 1: between = '', 2: said = '', index }): Found[] => {
    if (ROTATES.test(between) && !FASTENER.test(between)) return [];
    const clockwise = /^clockwise$/i.test(said);
    const hand: Hand = clockwise === (turning === 'tighten') ? 'right' : 'left';
    const end = index + all.length;
    return [{ start: end - said.length, end, hand, turnedRound: clockwise ? 'counter-clockwise' : 'clockwise' }];
  }).flat();
}

function turningOf(words: string): Turning | 'both' {
  const [loosens, tightens] = [LOOSENS.test(words), TIGHTENS.test(words)];
  if (loosens && tightens) return 'both';
  return loosens ? 'loosen' : tightens ? 'tighten' : undefined;
}
