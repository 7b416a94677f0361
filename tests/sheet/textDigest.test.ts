import { expect, test } from 'vitest';
import { TextDigest } from '../../server/src/core/sheet/build/textDigest';
import { sha256Hex } from '../../server/src/core/text/sha256';
import { seededRandom } from '../support/seededRandom';
import { randomEdit } from '../support/typing';

test('the digest of a text that is being written is that of the whole text', () => {
  const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
  console.log(`seed ${seed}`);
  const random = seededRandom(seed);
  const digest = new TextDigest();
  // Characters of two units fall on the places where the text is cut.
  let text = Array.from({ length: 9000 }, (_, line) => `${line} 🔧🔩 ± 5 N·m\n`).join('');
  for (let i = 0; i < 60; i++) {
    text = random() < 0.1 ? text.slice(0, Math.floor(random() * text.length)) : randomEdit(text, random);
    if (random() < 0.2) text = `${'🔧'.repeat(20_000)}${text}`;
    expect(digest.of(text), `edit ${i} of seed ${seed}`).toBe(sha256Hex(text));
  }
});
