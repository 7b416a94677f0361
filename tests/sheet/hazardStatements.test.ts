import { describe, expect, test } from 'vitest';
import {
  HAZARD_CODES,
  hazardStatement,
  protectionOf,
  signalWordOf,
} from '../../server/src/core/sheet/build/hazardStatements';
import { labelsFor } from '../../server/src/core/sheet/labels';
import type { SheetLanguage } from '../../server/src/core/sheet/sheet';

const LANGUAGES: readonly SheetLanguage[] = ['en', 'de', 'es'];

describe.each(LANGUAGES)('hazard statements in %s', (language) => {
  const texts = HAZARD_CODES.map((code) => [code, hazardStatement(code, language)?.text ?? ''] as const);

  test('every code has a text of its own language, with a capital first and no stop', () => {
    expect(texts.filter(([, text]) => !/^\p{Lu}.*[^.\s]$/u.test(text))).toEqual([]);
    const elsewhere = LANGUAGES.filter((other) => other !== language).flatMap((other) =>
      texts.filter(([code, text]) => hazardStatement(code, other)?.text === text),
    );
    expect(elsewhere).toEqual([]);
  });

  // A text that stands twice would stand at a wrong code, and tell of a wrong hazard.
  test('no two codes have one text', () => {
    const known = texts.map(([, text]) => text);
    expect(known.filter((text, place) => known.indexOf(text) !== place)).toEqual([]);
  });

  test('a code with a suffix has the statement of its class', () => {
    expect(hazardStatement('H361d', language)).toEqual(hazardStatement('H361', language));
    expect(hazardStatement(' H225 ', language)).toEqual(hazardStatement('H225', language));
  });

  test('a code that is in no table has no statement', () => {
    expect(hazardStatement('H999', language)).toBeUndefined();
    expect(hazardStatement('constructor', language)).toBeUndefined();
  });
});

test('the statements of one substance in three languages', () => {
  const read = (language: SheetLanguage) =>
    ['H225', 'H319', 'H336'].map((code) => hazardStatement(code, language)?.text).join('; ');
  expect(LANGUAGES.map(read)).toEqual([
    'Highly flammable liquid and vapour; Causes serious eye irritation; May cause drowsiness or dizziness',
    'Flüssigkeit und Dampf leicht entzündbar; Verursacht schwere Augenreizung; Kann Schläfrigkeit und Benommenheit verursachen',
    'Líquido y vapores muy inflamables; Provoca irritación ocular grave; Puede provocar somnolencia o vértigo',
  ]);
});

test('danger takes the place of warning, and some statements carry no word', () => {
  expect(signalWordOf(['H319', 'H225'])).toBe('danger');
  expect(signalWordOf(['H319'])).toBe('warning');
  expect(signalWordOf(['H412'])).toBeUndefined();
  expect(protectionOf('H336')).toBe('breath');
  expect(protectionOf('H225')).toBeUndefined();
});

test('the label of a substance has the words of the GHS, not those of a panel', () => {
  expect(LANGUAGES.map((language) => labelsFor(language).labelWarning)).toEqual(['WARNING', 'ACHTUNG', 'ATENCIÓN']);
  expect(LANGUAGES.map((language) => labelsFor(language).signalWarning)).toEqual(['WARNING', 'WARNUNG', 'ADVERTENCIA']);
});
