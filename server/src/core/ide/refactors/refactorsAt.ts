import type { Snapshot } from '../../analysis/snapshot';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Refactor } from './refactor';
import { reverseStep } from './reverseStep';
import { shareNotice } from './shareNotice';
import { sortTools } from './sortTools';

/**
 * What a writer can have changed where the caret is, with nothing being wrong, of the kinds that are wanted. `today` is for
 * what is judged by date.
 */
export function refactorsAt(
  snapshot: Snapshot,
  document: SyntaxDocument,
  offset: number,
  today: string,
  isWanted: (kind: Refactor['kind']) => boolean = () => true,
): Refactor[] {
  if (document.kind !== 'procedure') return [];
  const sorted = isWanted('sort-tools') ? sortTools(document) : undefined;
  return [
    ...(sorted === undefined ? [] : [sorted]),
    ...(isWanted('extract') ? shareNotice(snapshot, document, offset) : []),
    ...(isWanted('rewrite') ? reverseStep(snapshot, document, offset, today) : []),
  ];
}
