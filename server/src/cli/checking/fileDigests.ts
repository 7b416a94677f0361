import { createHash } from 'node:crypto';
import { pathOfUri, readText } from '../../node/nodeFiles';

export const MISSING = 'missing';

/** What files hold, each as a digest that is worked out once in a run. A file that is not there has one too. */
export class FileDigests {
  readonly #known = new Map<string, string>();

  of(uri: string): string {
    const known = this.#known.get(uri);
    if (known !== undefined) return known;
    const source = readText(pathOfUri(uri));
    const digest = source.is === 'text' ? digestOf(source.text) : source.is === 'missing' ? MISSING : source.reason;
    this.#known.set(uri, digest);
    return digest;
  }
}

export function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('base64');
}
