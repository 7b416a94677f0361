import { describe, expect, test } from 'vitest';
import { germanGrammar } from '../../server/src/core/sheet/sentences/german/grammar';
import { mentioned } from '../../server/src/core/sheet/sentences/german/mentions';
import { decline, type Noun, nameIn, nounOf } from '../../server/src/core/sheet/sentences/german/nouns';
import { plain, type Thing } from '../../server/src/core/sheet/sentences/grammar';

function noun(entry: string): Noun {
  const found = nounOf(entry);
  if (found === undefined) throw new Error(`${entry} is read as no noun`);
  return found;
}

describe('a name as a dictionary writes it', () => {
  test.each([
    ['die Verdichtermutter', 'Verdichtermutter'],
    ['der breite Einlassring', 'breiter Einlassring'],
    ['das dünne Blech', 'dünnes Blech'],
    ['die Nuss, die Nüsse', 'Nuss'],
    ['die fusselfreien Tücher (Pl.)', 'fusselfreie Tücher'],
    ['die Wischtücher', 'Wischtücher'],
    ['der Verdichterdeckel für das 44-mm-Rad', 'Verdichterdeckel für das 44-mm-Rad'],
    ['compressor nut', 'compressor nut'],
  ])('%s is listed as %s', (entry, name) => {
    expect(nameIn(entry)).toBe(name);
  });

  test.each([
    ['die Verdichtermutter', 'Verdichtermuttern'],
    ['der Dichtring', 'Dichtringe'],
    ['das Radiallager', 'Radiallager'],
    ['die 10-mm-Nuss', '10-mm-Nüsse'],
    ['der 8-mm-Einsatz', '8-mm-Einsätze'],
    ['das 44-mm-Verdichterrad', '44-mm-Verdichterräder'],
    ['die lange Dehnschraube', 'lange Dehnschrauben'],
    ['die Schraube des Auslasses', 'Schrauben des Auslasses'],
    ['das Gerank, die Geränke', 'Geränke'],
  ])('several of %s are %s', (entry, many) => {
    expect(decline(noun(entry), 'nominative', 'none', true)).toBe(many);
  });

  test.each([
    ['das Lagergehäuse', 'Lagergehäuses'],
    ['der Anlaufbund', 'Anlaufbunds'],
    ['der Auslass', 'Auslasses'],
    ['die Welle', 'Welle'],
    ['der Kunde', 'Kunden'],
    ['der Radius', 'Radius'],
    ['das Zeugnis', 'Zeugnisses'],
  ])('the genitive of %s is %s', (entry, genitive) => {
    expect(decline(noun(entry), 'genitive', 'definite', false)).toBe(genitive);
  });
});

test.each([['cover O-ring'], ['V-band clamp'], ['T-handle with a universal joint'], ['8 mm socket'], ['EGR valve']])(
  'the English name %s is no German noun',
  (name) => {
    expect(nounOf(name)).toBeUndefined();
  },
);

describe('a mention behind words that the writer has inflected', () => {
  test.each([
    ['der breite Einlassring', 'Den ', 'breiten Einlassring'],
    ['der breite Einlassring', 'mit dem ', 'breiten Einlassring'],
    ['der breite Einlassring', 'Der ', 'breite Einlassring'],
    ['der breite Einlassring', '', 'breiter Einlassring'],
    ['der breite Einlassring', 'mit ', 'breitem Einlassring'],
    ['der breite Einlassring', 'ein neuer ', 'breiter Einlassring'],
    ['das dünne Blech', 'ein ', 'dünnes Blech'],
    ['das Lagergehäuse', 'der Rand des ', 'Lagergehäuses'],
    ['das Lagergehäuse', 'im ', 'Lagergehäuse'],
    ['das Radiallager', 'an den 2 ', 'Radiallagern'],
    ['die hochfeste Schraubensicherung', 'mit ', 'hochfester Schraubensicherung'],
    ['die fusselfreien Tücher (Pl.)', 'mit ', 'fusselfreien Tüchern'],
    ['die hochfeste Schraubensicherung', 'zur ', 'hochfesten Schraubensicherung'],
    ['die lange Schraube', 'die ', 'lange Schraube'],
    ['der lange Stift', 'die ', 'langen Stifte'],
    ['der lange Stift', 'die 3 ', 'langen Stifte'],
  ])('%s behind “%s” is %s', (entry, before, words) => {
    expect(mentioned(noun(entry), before)).toBe(words);
  });
});

describe('a thing in a list and in a sentence', () => {
  const thing = (name: string, count: number | undefined, language?: 'en'): Thing =>
    ({ kind: 'part', name, count, sort: undefined, ...(language === undefined ? {} : { language }) }) as Thing;

  test('a name in another language is counted and never inflected', () => {
    expect(plain(germanGrammar.theNew(thing('Ring', 2, 'en')))).toBe('2 × Ring (neu)');
  });

  test('some of several stand in the dative', () => {
    expect(plain(germanGrammar.someOf(2, thing('Radiallager', 4))).replaceAll('\u00a0', ' ')).toBe(
      '2 von 4 Radiallagern',
    );
  });
});
