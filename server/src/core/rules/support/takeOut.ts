import type { Ref } from '../../model/values';
import type { MapNode } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { FixDraft } from '../ruleContext';
import { removeFromKey } from './removeEdit';

/** The fix that takes an id out of a key; none where nothing else would be left of the line that it stands in. */
export function takeOut(document: SyntaxDocument, map: MapNode, key: string, ref: Ref): FixDraft[] {
  const edit = removeFromKey(document, map, key, ref.node);
  return edit === undefined ? [] : [{ title: `Take ${ref.id} out of ${key}`, edits: [edit] }];
}
