import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { sha256Hex } from '../../server/src/core/text/sha256';

// FIPS 180-4 example messages, as published by NIST with their digests.
test('the published examples of SHA-256', () => {
  expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256Hex('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  );
});

test('Node gives the same for texts outside ASCII and for bytes', () => {
  for (const text of ['', 'Ø 12 µm – ≤ 5 °C', '🔧'.repeat(99), 'a\0b']) {
    expect(sha256Hex(text)).toBe(createHash('sha256').update(text).digest('hex'));
  }
  const bytes = Uint8Array.from({ length: 1000 }, (_, at) => at % 256);
  expect(sha256Hex(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
});
