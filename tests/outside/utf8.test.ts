import { Buffer } from 'node:buffer';
import { expect, test } from 'vitest';
import { base64, utf8Bytes } from '../../server/src/core/text/base64';
import { seededRandom } from '../support/seededRandom';

const SEED = 20261125;

/** Texts with code points of one to four bytes and lone surrogates among them. */
function randomText(random: () => number): string {
  const ranges = [0x7f, 0x7ff, 0xffff, 0x10ffff];
  const point = () => Math.floor(random() * (ranges[Math.floor(random() * 4)] ?? 1));
  return Array.from({ length: Math.floor(random() * 40) }, () => String.fromCodePoint(point())).join('');
}

// Peer: the encoder of the platform (WHATWG Encoding Standard), and base 64 of Node's Buffer (RFC 4648).
test(`bytes and base 64 are those of the platform (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  for (const text of [
    '',
    'N·m',
    '5.1 ± 0.3',
    '🌀',
    '\ud800',
    'a\udc00b',
    ...Array.from({ length: 2000 }, () => randomText(random)),
  ]) {
    expect([...utf8Bytes(text)], JSON.stringify(text)).toEqual([...new TextEncoder().encode(text)]);
    expect(base64(utf8Bytes(text))).toBe(Buffer.from(new TextEncoder().encode(text)).toString('base64'));
  }
});
