const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Text as UTF-8 bytes; a lone surrogate becomes U+FFFD, as the Encoding Standard has it. */
export function utf8Bytes(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    const point = character.codePointAt(0) ?? 0xfffd;
    pushUtf8(bytes, point >= 0xd800 && point <= 0xdfff ? 0xfffd : point);
  }
  return bytes;
}

function pushUtf8(bytes: number[], point: number): void {
  if (point < 0x80) bytes.push(point);
  else if (point < 0x800) bytes.push(0xc0 | (point >> 6), tail(point));
  else if (point < 0x10000) bytes.push(0xe0 | (point >> 12), tail(point >> 6), tail(point));
  else bytes.push(0xf0 | (point >> 18), tail(point >> 12), tail(point >> 6), tail(point));
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
