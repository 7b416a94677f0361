import type { Snapshot } from '../../analysis/snapshot';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Refactor } from './refactor';
import { reverseStep } from './reverseStep';
import { shareNotice } from './shareNotice';
import { sortTools } from './sortTools';

/** What a writer can have changed where the caret is, with nothing being wrong. `today` is for what is judged by date. */
export function refactorsAt(snapshot: Snapshot, document: SyntaxDocument, offset: number, today: string): Refactor[] {
  if (document.kind !== 'procedure') return [];
  const sorted = sortTools(document);
  return [
    ...(sorted === undefined ? [] : [sorted]),
    ...shareNotice(snapshot, document, offset),
    ...reverseStep(snapshot, document, offset, today),
  ];
}
