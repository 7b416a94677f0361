import { mentionsIn } from '../../model/readValues';
import type { Mention, Prose } from '../../model/values';
import type { ScalarNode } from '../../syntax/node';

/** A mention with the text that it stands in. */
export interface PlacedMention {
  readonly mention: Mention;
  readonly scalar: ScalarNode;
}

const NONE: readonly PlacedMention[] = [];

/** What a text and its translations mention. Most texts are one scalar that mentions nothing. */
export function mentionsOf({ node, scalar, mentions, translations }: Prose): readonly PlacedMention[] {
  if (mentions.length === 0 && node === scalar) return NONE;
  const all = mentions.map((mention): PlacedMention => ({ mention, scalar }));
  for (const other of Object.values(translations)) {
    for (const mention of mentionsIn(other.text)) all.push({ mention, scalar: other });
  }
  return all;
}
