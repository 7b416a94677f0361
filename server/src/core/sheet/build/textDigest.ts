import { sha256 } from '@noble/hashes/sha2.js';
import { utf8Bytes } from '../../text/base64';

/** How far checkpoints are apart, in UTF-16 code units. */
const APART = 1 << 14;

type Hash = ReturnType<typeof sha256.create>;

/**
 * The SHA-256 of a text that is being written. A digest is made from front to back, so what was worked out before the
 * first change is taken over from the last text; it is kept at checkpoints.
 */
export class TextDigest {
  #last = '';
  #checkpoints: { readonly end: number; readonly hash: Hash }[] = [];

  /** As 64 lower-case hexadecimal digits. */
  of(text: string): string {
    this.#checkpoints.length = this.#unchanged(text);
    const last = this.#checkpoints.at(-1);
    const hash = last === undefined ? sha256.create() : last.hash.clone();
    let from = last?.end ?? 0;
    for (let end = nextEnd(text, from); end < text.length; end = nextEnd(text, from)) {
      hash.update(utf8Bytes(text.slice(from, end)));
      this.#checkpoints.push({ end, hash: hash.clone() });
      from = end;
    }
    this.#last = text;
    return hexOf(hash.update(utf8Bytes(text.slice(from))).digest());
  }

  /** How many checkpoints stand before the first change. */
  #unchanged(text: string): number {
    let from = 0;
    const changed = this.#checkpoints.findIndex(({ end }) => {
      const isSame = text.slice(from, end) === this.#last.slice(from, end);
      from = end;
      return !isSame;
    });
    return changed < 0 ? this.#checkpoints.length : changed;
  }
}

/** The two halves of a character stay together. */
function nextEnd(text: string, from: number): number {
  const end = from + APART;
  const unit = text.charCodeAt(end - 1);
  return unit >= 0xd800 && unit < 0xdc00 ? end + 1 : end;
}

function hexOf(bytes: Uint8Array): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
