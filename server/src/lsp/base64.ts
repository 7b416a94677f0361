const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes as base64 (RFC 4648, section 4), for a message in JSON. Node and browsers each have their own way, and both have this. */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [first = 0, second, third] = bytes.subarray(at, at + 3);
    const group = (first << 16) | ((second ?? 0) << 8) | (third ?? 0);
    const digit = (shift: number) => digits.charAt((group >> shift) & 63);
    const end = second === undefined ? '==' : third === undefined ? `${digit(6)}=` : digit(6) + digit(0);
    parts.push(digit(18) + digit(12) + end);
  }
  return parts.join('');
}
