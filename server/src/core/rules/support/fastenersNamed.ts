import type { FamilyView } from '../../analysis/familyView';
import type { Part } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type { Span } from '../../text/span';
import { WordTrie, wordsOf } from './wordTrie';

const THREADED: ReadonlySet<string | undefined> = new Set(['nut', 'bolt', 'screw', 'stud']);
const MAY_BE_THREADED: ReadonlySet<string | undefined> = new Set(['plug', 'fitting', 'sensor', 'clamp']);

/** Whether turning it moves it along a thread: nuts and screws as such, plugs and the like where the family says so. */
export function isThreadedFastener(part: Part): boolean {
  const kind = part.kind?.value;
  if (THREADED.has(kind)) return true;
  return MAY_BE_THREADED.has(kind) && (part.thread !== undefined || part.torque !== undefined);
}

/** A fastener that a text names, by its name, one of its other names, or as `<id>`. */
export interface FastenerNamed extends Span {
  readonly id: string;
}

/** The fasteners that a text for people names, in the order of the text. A longer name hides a shorter one within it. */
export function fastenersNamed(family: FamilyView, prose: Prose): FastenerNamed[] {
  const { text, mentions } = prose;
  const mentioned = mentions.flatMap(({ id, from, to }) =>
    isFastener(family, id) ? [{ id, start: from, end: to }] : [],
  );
  const words = wordsOf(text);
  const trie = trieOf(family);
  const named: FastenerNamed[] = [];
  for (let at = 0; at < words.length; ) {
    const { length, values } = trie.longestAt(words, at, text);
    const start = words[at]?.from ?? 0;
    const end = words[at + length - 1]?.to ?? 0;
    const inMention = mentions.some((one) => start < one.to && one.from < end);
    if (length > 0 && !inMention)
      named.push(...values.flatMap((id) => (isFastener(family, id) ? [{ id, start, end }] : [])));
    at += Math.max(1, length);
  }
  return [...mentioned, ...named].sort((a, b) => a.start - b.start);
}

function isFastener(family: FamilyView, id: string): boolean {
  const part = family.part(id);
  return part !== undefined && (isThreadedFastener(part) || part.torque !== undefined);
}

const tries = new WeakMap<FamilyView, WordTrie<string>>();

/** The names of all parts, so that the name of another part hides that of a fastener within it. */
function trieOf(family: FamilyView): WordTrie<string> {
  const known = tries.get(family);
  if (known !== undefined) return known;
  const trie = new WordTrie<string>();
  for (const [id, { value }] of family.parts) {
    for (const name of [value.name?.text ?? '', ...(value.also ?? []).map((one) => one.text)]) trie.add(name, id);
  }
  tries.set(family, trie);
  return trie;
}
