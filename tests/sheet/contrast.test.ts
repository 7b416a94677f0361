import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetStyles } from '../../server/src/core/sheet/styles';

/*
 * Contrast as WCAG 2.2 defines it (success criterion 1.4.3: 4.5 to 1 for text; 1.4.11: 3 to 1 for what must be seen to
 * be used), computed for every pair of colours that the printed page and the page on a screen put together.
 */
type Colour = readonly [red: number, green: number, blue: number];

const template = readFileSync('server/src/pdf/parts.typ', 'utf8');

function hex(text: string): Colour {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => Number.parseInt(text.slice(at, at + 2), 16));
  return [red, green, blue];
}

const grey = (value: number): Colour => [value, value, value];
const BLACK = grey(0);
const WHITE = grey(255);

function luminance(colour: Colour): number {
  const [red = 0, green = 0, blue = 0] = colour.map((value) => {
    const part = value / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: Colour, other: Colour): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

function mixed(share: number, one: Colour, other: Colour): Colour {
  const [red = 0, green = 0, blue = 0] = one.map((value, at) => share * value + (1 - share) * (other[at] ?? 0));
  return [red, green, blue];
}

test('is 21 to 1 for black on white, and 1 for a colour on itself', () => {
  expect(contrast(BLACK, WHITE)).toBeCloseTo(21);
  expect(contrast(hex('#c8102e'), hex('#c8102e'))).toBe(1);
});

describe('on paper', () => {
  const luma = (name: string): Colour => {
    const found = new RegExp(`#let ${name} = (?:[\\d.]+pt \\+ )?luma\\((\\d+)\\)`, 'u').exec(template);
    expect(found, name).not.toBeNull();
    return grey(Number(found?.[1]));
  };

  const signals = [...template.matchAll(/rgb\("(#[0-9a-f]{6})"\), (white|black), ([\d.]+)pt/gu)];

  test('every signal word reads on its ground, in colour and in grey', () => {
    expect(signals).toHaveLength(4);
    for (const [, ground = '', ink] of signals) {
      const paint = ink === 'white' ? WHITE : BLACK;
      expect(contrast(hex(ground), paint), ground).toBeGreaterThanOrEqual(4.5);
      // What a printer without colour makes of it (Rec. 601 weights).
      const [red, green, blue] = hex(ground);
      expect(contrast(grey(0.299 * red + 0.587 * green + 0.114 * blue), paint), ground).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('no two panels are framed alike, so that they differ without colour', () => {
    expect(new Set(signals.map(([, , , frame]) => frame)).size).toBe(4);
  });

  test('faint words read on the page and on its grey bands, and lines are seen', () => {
    for (const ground of [WHITE, luma('wash')]) {
      expect(contrast(luma('faint'), ground)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(BLACK, ground)).toBeGreaterThanOrEqual(4.5);
    }
    expect(contrast(luma('hair'), WHITE)).toBeGreaterThanOrEqual(3);
  });
});

describe('on a screen', () => {
  const light = sheetStyles.slice(sheetStyles.indexOf(':root'), sheetStyles.indexOf('@media'));
  const dark = sheetStyles.slice(
    sheetStyles.indexOf('(prefers-color-scheme: dark)'),
    sheetStyles.indexOf('(prefers-contrast'),
  );
  const print = sheetStyles.slice(sheetStyles.indexOf('@media print { :root'));

  /** The last hexadecimal colour of a variable: the fallback where the editor has a colour of its own. */
  const named = (name: string, ...themes: readonly string[]): Colour => {
    for (const theme of themes) {
      const found = new RegExp(`--${name}:[^;]*?(#[0-9a-f]{6}|#[0-9a-f]{3})\\)?;`, 'u').exec(theme)?.[1];
      if (found !== undefined) return hex(found.length === 4 ? found.replace(/[0-9a-f]/gu, '$&$&') : found);
    }
    throw new Error(`no colour ${name}`);
  };
  const share = (name: string): number => Number(new RegExp(`--${name}:[^;]*?(\\d+)%`, 'u').exec(light)?.[1]) / 100;

  test.each([
    ['light', [light]],
    ['dark', [dark, light]],
  ] as const)('every pair of the %s theme reads', (_name, themes) => {
    const [ink, paper] = [named('ink', ...themes), named('paper', ...themes)];
    const wash = mixed(share('wash'), ink, paper);
    const faint = mixed(share('faint'), ink, paper);
    for (const ground of [paper, wash]) {
      for (const words of [ink, faint, named('link', ...themes)]) {
        expect(contrast(words, ground)).toBeGreaterThanOrEqual(4.5);
      }
    }
    expect(contrast(mixed(share('strong-line'), ink, paper), paper)).toBeGreaterThanOrEqual(3);
    for (const word of ['danger', 'warning', 'caution', 'notice']) {
      expect(contrast(named(word, ...themes), named(`on-${word}`, ...themes)), word).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('every pair reads where the page is printed from the screen', () => {
    const paper = named('paper', print);
    for (const name of ['ink', 'faint', 'link'])
      expect(contrast(named(name, print), paper), name).toBeGreaterThanOrEqual(4.5);
    expect(contrast(named('line', print), paper)).toBeGreaterThanOrEqual(3);
  });
});
