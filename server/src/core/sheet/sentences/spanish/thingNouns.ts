import type { Thing } from '../grammar';
import { type Noun, nounOf } from './nouns';

/** Sorts of things that a Spanish shop calls by a feminine noun, such as `tuerca`; every other sort is masculine. */
const FEMININE_SORTS: ReadonlySet<string> = new Set([
  'nut',
  'washer',
  'clamp',
  'o-ring',
  'gasket',
  'wheel',
  'housing',
  'plate',
  'plate-label',
  'shield',
  'lever',
  'rod',
  'torque-wrench',
  'spanner',
  'hexagon-key',
  'crow-foot',
  'bit',
  'extension',
  'ratchet',
  'press',
  'feeler',
  'scale',
  'balance-machine',
  'hot-plate',
  'pressure-source',
  'wash-tank',
  'blast-cabinet',
  'scraper',
  'lamp',
  'grease',
  'assembly-paste',
  'paint',
  'wipe',
  'plug-cap',
]);

const known = new Map<string, Noun>();
const MOST_KNOWN = 4096;

/** The noun of a thing. A name in another language stays as it is, and takes the gender of its sort. */
export function nounOfThing({ name, entry = name, sort, language }: Thing): Noun {
  if (language !== undefined && language !== 'es') {
    return { name, gender: FEMININE_SORTS.has(sort ?? '') ? 'f' : 'm', plural: false, foreign: true };
  }
  const found = known.get(entry);
  if (found !== undefined) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  const noun = nounOf(entry);
  known.set(entry, noun);
  return noun;
}
