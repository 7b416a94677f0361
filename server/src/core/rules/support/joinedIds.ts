import type { Ref } from '../../model/values';
import type { FixDraft } from '../ruleContext';
import { listed } from './phrases';

/** The ids that stand in one where each is known: `cover, cover-seal`, `socket-8 and ratchet`, or a forgotten comma. */
export function joinedIds(text: string, isKnown: (id: string) => boolean): string[] | undefined {
  const ids = text.split(/\s*[,;&+/]\s*|\s+and\s+|\s+/).filter((id) => id !== '');
  return ids.length > 1 && ids.every(isKnown) ? ids : undefined;
}

export function joinedText(ids: readonly string[]): string {
  return `${listed(ids)} stand in one; write them as a list, with a comma between them`;
}

/** Within brackets the commas are enough. */
export function splitFix({ range }: Ref, ids: readonly string[]): FixDraft {
  const { text } = range.item;
  const before = text.slice(text.lastIndexOf('\n', range.from - 1) + 1, range.from);
  const inList = before.lastIndexOf('[') > before.lastIndexOf(']');
  const list = ids.join(', ');
  return { title: `Write ${list}`, edits: [{ range, text: inList ? list : `[${list}]` }] };
}
