import type { Dimension } from './dimension';
import { refusedSpellings } from './refusedSpellings';
import type { Unit } from './unit';
import { allUnits } from './units';

/** How a written unit is to be taken: as it should be, understood, understood with a doubt, or not without asking. */
export type Spelling =
  | { readonly status: 'standard' | 'accepted' | 'doubtful'; readonly dimension: Dimension; readonly unit: Unit }
  | { readonly status: 'ambiguous'; readonly dimension: Dimension; readonly candidates: readonly Unit[] };

/** The words of a unit and what joins them: `ft. lbs` and `ft-lbs` have the same words. */
const wordPattern = /°[CFK](?![A-Za-z])|°|℃|℉|''|[%‰′″'"#]|[A-Za-zµΩ][A-Za-zµΩ0-9²³⁻¹₂^]*|1(?![\d.])/y;
const joinPattern = /\. ?[·*-]? ?| ?[·*/-] ?| /y;
const mostWords = 5;

interface WordEnd {
  readonly key: string;
  readonly end: number;
}

/** Every way to take a unit from `at`, shortest first: its key and where it ends. */
export function unitKeysAt(text: string, at: number): readonly WordEnd[] {
  const ends: WordEnd[] = [];
  let key = '';
  let position = at;
  for (let words = 0; words < mostWords; words++) {
    if (words > 0) {
      joinPattern.lastIndex = position;
      const join = joinPattern.exec(text);
      // Some units have no join at all between two words, as in `°C`; those are one word in the pattern.
      if (join === null) break;
      key += join[0].includes('/') ? '/' : '·';
      position = joinPattern.lastIndex;
    }
    wordPattern.lastIndex = position;
    const word = wordPattern.exec(text);
    if (word === null) break;
    key += word[0];
    position = wordPattern.lastIndex;
    ends.push({ key, end: position });
  }
  return ends;
}

const exactKeys = new Map<string, Spelling[]>();
const foldedKeys = new Map<string, Spelling[]>();

for (const unit of allUnits) {
  const { dimension } = unit;
  for (const text of [unit.symbol, ...unit.alsoStandard]) remember(text, { status: 'standard', dimension, unit });
  for (const text of unit.accepted) remember(text, { status: 'accepted', dimension, unit });
  for (const text of unit.doubtful) remember(text, { status: 'doubtful', dimension, unit });
}
for (const { spellings, dimension, candidates } of refusedSpellings) {
  for (const text of spellings) remember(text, { status: 'ambiguous', dimension, candidates });
}

/** The meanings of a unit key, at most one for each dimension; capitals count unless no unit has these capitals. */
export function spellingsOf(key: string): readonly Spelling[] {
  return (
    exactKeys.get(key) ?? (foldedKeys.get(key.toLowerCase()) ?? []).filter((spelling) => keepsPrefix(key, spelling))
  );
}

/** Whether `written` is exactly a standard way to write the unit; in a product a space is as good as the dot. */
export function isStandardSpelling(written: string, unit: Unit): boolean {
  return written === unit.symbol || written === unit.symbol.replaceAll('·', ' ') || unit.alsoStandard.includes(written);
}

/** Every key of a unit of this dimension, to find the nearest one to a misspelling. */
export function* keysOfDimension(dimension: Dimension): Generator<readonly [key: string, unit: Unit]> {
  for (const [key, spellings] of exactKeys) {
    for (const spelling of spellings) {
      if (spelling.dimension === dimension && spelling.status !== 'ambiguous') yield [key, spelling.unit];
    }
  }
}

/** Milli and mega differ by a capital only and by a factor of a thousand million, so this capital is never guessed. */
function keepsPrefix(key: string, spelling: Spelling): boolean {
  if (spelling.status === 'ambiguous') return true;
  const { symbol, name } = spelling.unit;
  const capitalDiffers = key[0] !== symbol[0] && key[0]?.toLowerCase() === symbol[0]?.toLowerCase();
  return !(capitalDiffers && /^m/i.test(key)) || name.length <= key.length;
}

function remember(pattern: string, spelling: Spelling): void {
  for (const text of alternatives(pattern)) {
    const key = unitKeysAt(text, 0).at(-1)?.key ?? text;
    add(exactKeys, key, spelling);
    add(foldedKeys, key.toLowerCase(), spelling.status === 'standard' ? { ...spelling, status: 'accepted' } : spelling);
  }
}

function add(map: Map<string, Spelling[]>, key: string, spelling: Spelling): void {
  const known = map.get(key) ?? [];
  if (!known.some((other) => other.dimension === spelling.dimension)) map.set(key, [...known, spelling]);
}

/** All texts of a pattern with alternatives in brackets: `met(re|er)` gives two. */
export function alternatives(pattern: string): readonly string[] {
  const group = /\(([^()]*)\)/.exec(pattern);
  if (group === null) return [pattern];
  const before = pattern.slice(0, group.index);
  const after = pattern.slice(group.index + group[0].length);
  return (group[1] ?? '').split('|').flatMap((choice) => alternatives(before + choice + after));
}
