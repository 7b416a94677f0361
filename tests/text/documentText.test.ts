import { expect, test } from 'vitest';
import { DocumentText } from '../../server/src/core/text/documentText';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { seededRandom } from '../support/seededRandom';

const SEED = Number(process.env.SEED ?? 20261125);
const ROUNDS = Number(process.env.ROUNDS ?? 4000);
/** Pieces short enough for a short text to have many. */
const USUAL = 8;

const ADDED = [
  '',
  'x',
  '\n',
  '\r',
  '\r\n',
  '\n\r',
  '🔧',
  '\ud83d',
  '\udd27',
  '\ufeff',
  'three\r\nlines\n',
  'y'.repeat(50),
];

function startsOf(text: string): number[] {
  return [0, ...Array.from(text.matchAll(/\r\n|\n|\r/g), (found) => found.index + found[0].length)];
}

function check(content: DocumentText, text: string, from: number, to: number): void {
  const told = {
    length: content.length,
    starts: [...content.lineStarts].join(),
    slice: content.slice(from, to),
    code: content.charCodeAt(from),
    whole: content.pieces.texts.join(''),
  };
  const wanted = {
    length: text.length,
    starts: startsOf(text).join(),
    slice: text.slice(from, to),
    code: text.charCodeAt(from),
    whole: text,
  };
  if (JSON.stringify(told) !== JSON.stringify(wanted)) expect({ text, ...told }).toEqual({ text, ...wanted });
}

test(`after any edits it is the text that they leave (seed ${SEED}, ${ROUNDS} edits)`, () => {
  const random = seededRandom(SEED);
  const below = (limit: number): number => Math.floor(random() * limit);
  let text = 'one\r\ntwo 🔧\n'.repeat(20);
  let content = DocumentText.of(text, USUAL);
  for (let round = 0; round < ROUNDS; round++) {
    const from = below(text.length + 1);
    const to = Math.min(text.length, from + (below(40) === 0 ? below(200) : below(5)));
    const added = ADDED[below(ADDED.length - (text.length > 500 ? 2 : 0))] ?? '';
    const before = content;
    const textBefore = text;
    content = content.edited(from, to, added);
    text = text.slice(0, from) + added + text.slice(to);
    const at = below(text.length + 1);
    // What is asked for as a whole now and then answers as what never was.
    if (below(10) === 0) expect(content.whole).toBe(text);
    check(content, text, at, Math.min(text.length, at + below(30)));
    check(before, textBefore, from, to);
    expect(content.isSame(before)).toBe(text === textBefore);
    expect(content.isSame(DocumentText.of(text, 5))).toBe(true);
    const lengths = content.pieces.texts.map(({ length }) => length);
    if (text !== '') expect(Math.min(...lengths)).toBeGreaterThan(0);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(2 * USUAL);
  }
});

test('typing and deleting leave no trail of short pieces', () => {
  let content = DocumentText.of('x'.repeat(200), USUAL);
  for (let i = 0; i < 180; i++)
    content = content.edited((i * 37) % content.length, ((i * 37) % content.length) + 1, '');
  expect(content.length).toBeLessThan(60);
  expect(content.pieces.texts.length).toBeLessThan(content.length / 2 + 1);
});

test('an edit shares what it leaves alone', () => {
  const before = DocumentText.of('0123456789'.repeat(5000));
  const after = before.edited(20000, 20001, 'abc');
  const known = new Set(before.pieces.texts);
  expect(after.pieces.texts.filter((text) => !known.has(text)).length).toBeLessThan(3);
  expect(before.edited(7, 7, '')).toBe(before);
});

test('offsets outside of the text count as its ends', () => {
  const content = DocumentText.of('abc');
  expect(content.edited(-5, 1, 'x').whole).toBe('xbc');
  expect(content.edited(2, 99, 'x').whole).toBe('abx');
  expect(content.edited(2, 1, 'x').whole).toBe('abxc');
  expect(content.slice(-1, 2)).toBe('ab');
  expect(content.slice(2)).toBe('c');
  expect(content.slice(2, 1)).toBe('');
  expect(DocumentText.of('').edited(0, 0, 'a').edited(0, 1, '').whole).toBe('');
});

test('an edit between CR and LF makes two line ends of them, and back', () => {
  const one = DocumentText.of('a\r\nb');
  expect([...one.lineStarts]).toEqual([0, 3]);
  const two = one.edited(2, 2, 'x');
  expect([...two.lineStarts]).toEqual([0, 2, 4]);
  expect([...two.edited(2, 3, '').lineStarts]).toEqual([0, 3]);
});

test('places are found as in a string', () => {
  const content = DocumentText.of('a\r\nb🔧\nc', 2);
  const [pieces, string] = [new LineIndex(content), new LineIndex('a\r\nb🔧\nc')];
  for (let offset = 0; offset <= content.length; offset++) {
    expect(pieces.position(offset)).toEqual(string.position(offset));
    expect(pieces.offset({ line: offset % 4, character: offset })).toBe(
      string.offset({ line: offset % 4, character: offset }),
    );
  }
  expect([0, 1, 2].map((line) => pieces.lineText(line))).toEqual(['a', 'b🔧', 'c']);
});
