import type { ProcedureView } from '../../analysis/procedureView';
import type { Instruction } from '../../model/generated/types';
import type { FixDraft } from '../ruleContext';
import { addToInstruction } from './instructionEdit';
import { addToList } from './listEdit';
import { STORES_KEYS, type StoresKind, storesUses } from './storesUses';

/** The fixes that name a thing by id where it is used, and list it where it is not listed; one for each that may be meant. */
export function useFixes(
  procedure: ProcedureView,
  instruction: Instruction,
  kind: StoresKind,
  ids: readonly string[],
): FixDraft[] {
  const { list, use } = STORES_KEYS[kind];
  const { listed } = storesUses(procedure, kind);
  const listedFirst = [...ids].sort((a, b) => Number(listed.has(b)) - Number(listed.has(a)));
  return listedFirst.flatMap((id) => {
    const edit = addToInstruction(instruction, use, id);
    if (edit === undefined) return [];
    if (listed.has(id)) return [{ title: `Add ${id} to "${use}"`, edits: [edit] }];
    const toList = addToList(procedure, list, id).flatMap((draft) => draft.edits);
    return [{ title: `Add ${id} to "${use}" and to the list of ${list}`, edits: [edit, ...toList] }];
  });
}
