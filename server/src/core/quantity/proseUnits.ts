import type { WrittenUnit } from './scanner';
import type { ScannedStatement } from './scanStatement';
import { writtenUnit } from './scanStatement';
import type { Spelling } from './spellings';

/** Spellings that are more often a word or a letter of a name than a unit when another word follows: `in each`, `A seals`. */
const alsoWords = new Set(['in', 'ins', 'A', 'C', 'F', 'K', 'M', 'k', 'd', 't', 'mil', 'second', 'mu', '#', '"', "'"]);

/** The unit of a statement in running prose, or null where its letters are more likely part of the sentence. */
export function proseUnit(text: string, statement: ScannedStatement): WrittenUnit | null {
  const unit = writtenUnit(statement);
  if (unit === null || unit.meanings.length === 0) return null;
  const after = text.slice(unit.span.end, unit.span.end + 3);
  if (/^[A-Za-z0-9µΩ]/.test(after)) return null;
  if (unit.text.length === 1 && (/^-[A-Za-z]/.test(after) || !hasThisLetter(unit))) return null;
  const hasPoint = /[./½¼¾⅛⅜⅝⅞]/.test(statement.value.scanned.number.text);
  const wordFollows = /^ [A-Za-z]/.test(after);
  return alsoWords.has(unit.text) && wordFollows && !hasPoint ? null : unit;
}

function hasThisLetter(unit: WrittenUnit): boolean {
  return /[#°%‰′″'"CFl]/.test(unit.text) || unit.meanings.some((meaning) => isSymbol(meaning, unit.text));
}

function isSymbol(meaning: Spelling, text: string): boolean {
  return meaning.status === 'ambiguous' || meaning.unit.symbol === text;
}

/** Whether the sentence up to `at` speaks of tightening, so that ounces and pounds are meant as torques. */
export function speaksOfTorque(text: string, at: number): boolean {
  const before = text.slice(Math.max(0, at - 100), at);
  const sentence = before.slice(Math.max(0, before.search(/[.!?;]\s(?!.*[.!?;]\s)/s)));
  return /\btight|\btorqu/i.test(sentence);
}
