import { version as packageVersion } from '../../../package.json';

/** The version of the product. */
export function version(): string {
  return packageVersion;
}
