import { createHash } from 'node:crypto';
import { pathOfUri, readBytes } from '../../node/nodeFiles';

export const MISSING = 'missing';

/**
 * What files hold, each as a digest that is worked out once in a run. A file that is not there has one too. A file that is
 * no text has another one than the text that was read from it, and so is checked anew each time.
 */
export class FileDigests {
  readonly #known = new Map<string, string>();

  of(uri: string): string {
    const known = this.#known.get(uri);
    if (known !== undefined) return known;
    const source = readBytes(pathOfUri(uri));
    const digest = source.is === 'bytes' ? digestOf(source.bytes) : source.is === 'missing' ? MISSING : source.reason;
    this.#known.set(uri, digest);
    return digest;
  }
}

/** The digest of a text is that of its bytes in UTF-8. */
export function digestOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('base64');
}
