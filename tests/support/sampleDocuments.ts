import { readFileSync } from 'node:fs';
import { loadAll } from './markedText';

/** A sample of each kind of document; together they hold all that they link to. */
export const SAMPLE_PATHS = [
  'procedures/v4-wheel-44.procedure.yaml',
  'families/ostrel-v4.family.yaml',
  'kits/v4-wheel-44.kit.yaml',
  'stores/bay-2.stores.yaml',
];

/** They and nothing else, opened. */
export function openSamples() {
  return loadAll(
    Object.fromEntries(SAMPLE_PATHS.map((path) => [path, readFileSync(`sample-procedures/${path}`, 'utf8')])),
  );
}
