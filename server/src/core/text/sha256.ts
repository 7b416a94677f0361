import { sha256 } from '@noble/hashes/sha2.js';
import { utf8Bytes } from './base64';

/** SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits; a text counts as its bytes in UTF-8. */
export function sha256Hex(content: string | Uint8Array): string {
  const bytes = typeof content === 'string' ? utf8Bytes(content) : content;
  return [...sha256(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
