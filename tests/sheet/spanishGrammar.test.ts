import { describe, expect, test } from 'vitest';
import { plain, type Thing, text } from '../../server/src/core/sheet/sentences/grammar';
import { contractedText, spanishGrammar as grammar } from '../../server/src/core/sheet/sentences/spanish/grammar';
import { nounOf, pluralName } from '../../server/src/core/sheet/sentences/spanish/nouns';

const thing = (entry: string, count: number | undefined = 1, more: Partial<Thing> = {}): Thing => ({
  kind: 'part',
  name: grammar.nameIn(entry),
  entry,
  count,
  sort: undefined,
  ...more,
});
const the = (entry: string, count?: number) => plain(grammar.the(thing(entry, count)));
const and = (...items: string[]) => plain(grammar.and(items.map((item) => [text(item)])));
const or = (...items: string[]) => plain(grammar.or(items.map((item) => [text(item)])));

describe('gender and number of a name', () => {
  test.each([
    // What the writer says comes first.
    ['la mano de obra', 'la mano de obra'],
    ['los alicates para anillos', 'los alicates para anillos'],
    ['las galgas', 'las galgas'],
    // Else a list of the trade's nouns, else the ending.
    ['tuerca del compresor', 'la tuerca del compresor'],
    ['llave dinamométrica', 'la llave dinamométrica'],
    ['base', 'la base'],
    ['unión', 'la unión'],
    ['válvula', 'la válvula'],
    ['esquema', 'el esquema'],
    ['avión', 'el avión'],
    ['eje con rueda de turbina', 'el eje con rueda de turbina'],
    ['chasis', 'el chasis'],
    ['alicates', 'los alicates'],
    ['portaherramientas', 'el portaherramientas'],
    // A stressed a at the start.
    ['agua de refrigeración', 'el agua de refrigeración'],
    ['arandela', 'la arandela'],
  ])('%s: %s', (entry, expected) => expect(the(entry)).toBe(expected));

  test('an adjective stands between `la` and a stressed a', () => {
    expect(plain(grammar.theNew(thing('agua')))).toBe('la nueva agua');
    expect(plain(grammar.theNew(thing('cojinete', 2)))).toBe('los dos nuevos cojinetes');
    expect(plain(grammar.theNew(thing('junta', 4)))).toBe('las cuatro nuevas juntas');
  });
});

describe('the plural', () => {
  test.each([
    ['tuerca del compresor', 'tuercas del compresor'],
    ['junta tórica de la tapa', 'juntas tóricas de la tapa'],
    ['cojinete axial', 'cojinetes axiales'],
    ['tornillo M5', 'tornillos M5'],
    ['vaso de 8 mm', 'vasos de 8 mm'],
    ['rueda de compresor mecanizada de 44 mm', 'ruedas de compresor mecanizada de 44 mm'],
    ['tapón ciego', 'tapones ciegos'],
    ['racor', 'racores'],
    ['matriz', 'matrices'],
    ['imagen', 'imágenes'],
    ['volumen', 'volúmenes'],
    ['clip', 'clips'],
    ['chasis', 'chasis'],
    ['alicates', 'alicates'],
    ['anillo de sellado lado turbina', 'anillos de sellado lado turbina'],
    // As the writer gives it.
    ['el eje con rueda, los ejes con ruedas', 'ejes con ruedas'],
  ])('%s: %s', (entry, expected) => expect(pluralName(nounOf(entry))).toBe(expected));

  test('counts agree, and some of several are named', () => {
    expect(the('tornillo', 12)).toBe('los doce tornillos');
    expect(the('tornillo', 13)).toBe('los 13 tornillos');
    expect(plain(grammar.someOf(1, thing('arandela', 4)))).toBe('una de las arandelas');
    expect(plain(grammar.someOf(2, thing('tornillo', 4)))).toBe('dos de los tornillos');
  });
});

describe('words where they meet', () => {
  test('y is e before the sound of an i, o is u before that of an o', () => {
    expect([and('eje', 'hilo'), and('agua', 'hielo'), and('tapa', 'inserto'), and('a', 'b', 'y')]).toEqual([
      'eje e hilo',
      'agua y hielo',
      'tapa e inserto',
      'a, b y y',
    ]);
    expect([or('7', '8'), or('siete', 'ocho'), or('10', '11'), or('1', '110'), or('aro', 'hombro')]).toEqual([
      '7 u 8',
      'siete u ocho',
      '10 u 11',
      '1 o 110',
      'aro u hombro',
    ]);
  });

  test('de el and a el are drawn together, El of a name and él are not', () => {
    expect(contractedText('la rosca de el eje, junto a el anillo')).toBe('la rosca del eje, junto al anillo');
    expect(contractedText('De el eje')).toBe('Del eje');
    expect(contractedText('desde el eje, hacia el anillo, de él')).toBe('desde el eje, hacia el anillo, de él');
  });

  test('a pronoun agrees with all that it stands for', () => {
    const pronoun = (...entries: string[]) => grammar.pronoun(entries.map((entry) => thing(entry)));
    expect([pronoun('junta'), pronoun('anillo'), pronoun('junta', 'tapa'), pronoun('junta', 'anillo')]).toEqual([
      'la',
      'lo',
      'las',
      'los',
    ]);
    expect(grammar.pronoun([thing('junta', 4)])).toBe('las');
  });
});

describe('a mention within words of the writer', () => {
  const mention = (entry: string, before: string, more: Partial<Thing> = {}) =>
    plain(grammar.mention(thing(entry, 4, more), before));

  test('gets an article unless one stands before it', () => {
    expect(mention('la tuerca', 'Apriete ')).toBe('la tuerca');
    expect(mention('la tuerca', 'Apriete la ')).toBe('tuerca');
    expect(mention('el soporte', 'en el ')).toBe('soporte');
    expect(mention('el soporte', 'junto al ')).toBe('soporte');
    expect(mention('el anillo', 'cada ')).toBe('anillo');
    expect(mention('el anillo', '(')).toBe('anillo');
  });

  test('names what is used up without one', () => {
    expect(mention('el aceite de montaje', '20 ml de ', { kind: 'consumable' })).toBe('aceite de montaje');
  });
});

test('a name in another language has the gender of its sort and is not inflected', () => {
  const foreign = thing('lock nut', 4, { sort: 'nut', language: 'en' });
  expect(grammar.the(foreign)).toEqual([text('las cuatro '), { kind: 'part', text: 'lock nut', lang: 'en' }]);
  expect(plain(grammar.the(thing('snap ring', 1, { sort: 'retaining-ring', language: 'en' })))).toBe('el snap ring');
});
