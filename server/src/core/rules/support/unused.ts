import type { ProcedureView } from '../../analysis/procedureView';
import type { Ref } from '../../model/values';
import type { FixDraft } from '../ruleContext';
import { removeFromKey } from './removeEdit';
import { listOf, namedAnywhere, STORES_KEYS, type StoresKind, storesName, storesUses } from './storesUses';
import { mayUseMore } from './unsettled';

/** Entries of a list that nothing in the procedure uses, mentions or names. What no stores have is another matter. */
export function unusedInList(procedure: ProcedureView, kind: StoresKind): { ref: Ref; name: string }[] {
  const { referred, mentioned } = storesUses(procedure, kind);
  const items = kind === 'tool' ? procedure.tools : procedure.consumables;
  const idle = listOf(procedure, kind).filter(({ id }) => items.has(id) && !referred.has(id) && !mentioned.has(id));
  if (idle.length === 0 || mayUseMore(procedure, ['tool', 'consumable'])) return [];
  const named = namedAnywhere(procedure, kind);
  return idle.filter(({ id }) => !named.has(id)).map((ref) => ({ ref, name: storesName(procedure, kind, ref.id) }));
}

export function removeUnused(procedure: ProcedureView, kind: StoresKind, ref: Ref): FixDraft[] {
  const { document } = procedure;
  const key = STORES_KEYS[kind].list;
  const edit = document.root === undefined ? undefined : removeFromKey(document, document.root, key, ref.node);
  return edit === undefined ? [] : [{ title: `Take ${ref.id} off the list of ${key}`, edits: [edit] }];
}
