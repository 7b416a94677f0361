import { type DesignationCursor, restSpan, take, takePart } from './designationCursor';
import type { DesignatedHand } from './threadDesignation';

/** What may follow size and pitch in both systems. */
export interface Suffixes {
  readonly toleranceClass: string;
  readonly engagement: 'S' | 'N' | 'L';
  readonly hand: DesignatedHand;
}

interface Draft {
  toleranceClass?: string;
  engagement?: 'S' | 'N' | 'L';
  hand?: DesignatedHand;
}

/** Left and right: `LH` as both standards write it, and in words. */
const handPattern = /(LH|L\.H\.|left(?:[\s-]?hand(?:ed)?)?|RH|R\.H\.|right(?:[\s-]?hand(?:ed)?)?)(?![A-Za-z0-9])/iy;
const engagementPattern = /([SNL])(?![A-Za-z0-9])/y;

/** Reads tolerance class, length of engagement and hand, in any order, each once; whatever else is left is told. */
export function readSuffixes(cursor: DesignationCursor, classPattern: RegExp, allowEngagement: boolean): Suffixes {
  const draft: Draft = {};
  for (;;) {
    const before = cursor.at;
    take(cursor, /[\s-]*/y);
    if (cursor.at >= cursor.text.length) {
      tellDangling(cursor, before);
      break;
    }
    if (!readOne(cursor, draft, classPattern, allowEngagement)) {
      tellRest(cursor);
      break;
    }
  }
  return {
    toleranceClass: draft.toleranceClass ?? '',
    engagement: draft.engagement ?? 'N',
    hand: draft.hand ?? 'right',
  };
}

function readOne(cursor: DesignationCursor, draft: Draft, classPattern: RegExp, allowEngagement: boolean): boolean {
  if (draft.hand === undefined) {
    const hand = takePart(cursor, 'hand', handPattern)?.[1];
    if (hand !== undefined) {
      draft.hand = /^l/i.test(hand) ? 'left' : 'right';
      return true;
    }
  }
  if (draft.toleranceClass === undefined) {
    const written = takePart(cursor, 'class', classPattern)?.[0];
    if (written !== undefined) {
      draft.toleranceClass = written.replaceAll(' ', '');
      return true;
    }
  }
  if (!allowEngagement || draft.engagement !== undefined) return false;
  const engagement = takePart(cursor, 'engagement', engagementPattern)?.[1];
  if (engagement !== 'S' && engagement !== 'N' && engagement !== 'L') return false;
  draft.engagement = engagement;
  return true;
}

/** A hyphen at the end promises more: somebody is still typing, or forgot. */
function tellDangling(cursor: DesignationCursor, from: number): void {
  const hyphen = cursor.text.indexOf('-', from);
  if (hyphen < 0) return;
  cursor.problems.push({ kind: 'trailing-text', written: '-', span: { start: hyphen, end: hyphen + 1 } });
}

function tellRest(cursor: DesignationCursor): void {
  const span = restSpan(cursor);
  const written = cursor.text.slice(span.start, span.end);
  const kind = /^\d/.test(written) ? 'class-unread' : 'trailing-text';
  cursor.problems.push({ kind, written, span });
}
