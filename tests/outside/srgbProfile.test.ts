import { expect, test } from 'vitest';
import { srgbProfile } from '../../server/src/pdf/srgbProfile';

const profile = srgbProfile();
const view = new DataView(profile.buffer);
const fixed = (at: number): number => view.getInt32(at) / 65536;

/** Where the data of a tag begins (ICC.1:2004-10, 7.3). */
function tag(name: string): number {
  const text = Buffer.from(profile).toString('latin1');
  for (let index = 0; index < view.getUint32(128); index += 1) {
    const entry = 132 + 12 * index;
    if (text.slice(entry, entry + 4) === name) return view.getUint32(entry + 4);
  }
  throw new Error(`no tag ${name}`);
}

const xyz = (name: string): number[] => [8, 12, 16].map((step) => fixed(tag(name) + step));

test('its size and signature are those of a profile (ICC.1:2004-10, 7.2)', () => {
  expect(view.getUint32(0)).toBe(profile.length);
  expect(Buffer.from(profile.subarray(36, 40)).toString()).toBe('acsp');
});

// IEC 61966-2-1, annex F, gives luminances of 0.2126, 0.7152 and 0.0722 for D65; adapted to D50 they shift a little.
test('the three primaries make the white of the connection space, D50', () => {
  const sums = [0, 1, 2].map((at) => ['rXYZ', 'gXYZ', 'bXYZ'].reduce((sum, name) => sum + (xyz(name)[at] ?? 0), 0));
  for (const [at, white] of [0.9642, 1, 0.8249].entries()) expect(sums[at]).toBeCloseTo(white, 3);
});

// IEC 61966-2-1, 4.2: the value 0.5 stands for 21.4 % of the light, and the straight piece ends at 0.04045.
test('the curve is that of sRGB', () => {
  const [g = 0, a = 0, b = 0, c = 0, d = 0] = [12, 16, 20, 24, 28].map((step) => fixed(tag('rTRC') + step));
  expect((a * 0.5 + b) ** g).toBeCloseTo(0.21404, 4);
  expect(d).toBeCloseTo(0.04045, 4);
  expect(c * d).toBeCloseTo((a * d + b) ** g, 4);
});
