const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Text as UTF-8 bytes; a lone surrogate becomes U+FFFD, as the Encoding Standard has it. */
export function utf8Bytes(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length * 3);
  let length = 0;
  for (let at = 0; at < text.length; at += 1) {
    const unit = text.charCodeAt(at);
    // Nearly all of a document is plain, and a document is written anew at every key.
    if (unit < 0x80) bytes[length++] = unit;
    else {
      const point = text.codePointAt(at) ?? 0xfffd;
      if (point > 0xffff) at += 1;
      length = putUtf8(bytes, length, point >= 0xd800 && point <= 0xdfff ? 0xfffd : point);
    }
  }
  return bytes.subarray(0, length);
}

/** Writes a code point above U+007F and gives where the next one goes. */
function putUtf8(bytes: Uint8Array, at: number, point: number): number {
  if (point < 0x800) bytes.set([0xc0 | (point >> 6), tail(point)], at);
  else if (point < 0x10000) bytes.set([0xe0 | (point >> 12), tail(point >> 6), tail(point)], at);
  else bytes.set([0xf0 | (point >> 18), tail(point >> 12), tail(point >> 6), tail(point)], at);
  return at + (point < 0x800 ? 2 : point < 0x10000 ? 3 : 4);
}

function tail(bits: number): number {
  return 0x80 | (bits & 0x3f);
}

/** Base 64 as in RFC 4648, section 4. Written here because the core knows neither Node nor a browser. */
export function base64(bytes: ArrayLike<number>): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const bits = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    const given = Math.min(3, bytes.length - at);
    for (let digit = 0; digit < 4; digit += 1) {
      text += digit <= given ? digits.charAt((bits >> (18 - 6 * digit)) & 0x3f) : '=';
    }
  }
  return text;
}
