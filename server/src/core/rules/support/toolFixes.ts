import type { ProcedureView } from '../../analysis/procedureView';
import type { Ref } from '../../model/values';
import type { FixDraft } from '../ruleContext';
import { addToList } from './listEdit';
import { listed as listOf } from './phrases';
import { storesUses } from './storesUses';

/** More fixes than this are no help to choose from. */
const MOST = 3;

/** The fixes that name another tool in place of one, and list it where it is not listed; one for each candidate. */
export function takeInstead(procedure: ProcedureView, ref: Ref, ids: readonly string[]): FixDraft[] {
  const { listed } = storesUses(procedure, 'tool');
  return ids.slice(0, MOST).map((id) => {
    const toList = listed.has(id) ? [] : addToList(procedure, 'tools', id).flatMap((draft) => draft.edits);
    return { title: `Take ${id} instead of ${ref.id}`, edits: [{ range: ref.range, text: id }, ...toList] };
  });
}

/** What to do: the tools to choose from, by id, or that the stores have none. */
export function advice(verb: 'take' | 'add', ids: readonly string[], none: string): string {
  return ids.length === 0 ? none : `${verb} ${listOf(ids.slice(0, MOST), 'or')}`;
}
