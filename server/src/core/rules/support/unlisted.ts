import type { ProcedureView } from '../../analysis/procedureView';
import type { ProseFact } from '../../model/facts';
import type { Ref } from '../../model/values';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { mentions, type StoresKind, storesName, storesUses } from './storesUses';

/** The name of a tool or consumable that is used by this id but stands in no list; undefined where all is well. */
export function unlistedUse(procedure: ProcedureView, ref: Ref, kind: StoresKind): string | undefined {
  if (ref.kind !== kind || ref.listing) return undefined;
  const items = kind === 'tool' ? procedure.tools : procedure.consumables;
  if (!items.has(ref.id) || storesUses(procedure, kind).listed.has(ref.id)) return undefined;
  return storesName(procedure, kind, ref.id);
}

export interface UnlistedMention {
  readonly id: string;
  readonly name: string;
  readonly range: ItemRange;
}

/** Mentions of what stands in no list; where an instruction uses it as well, the finding stands there alone. */
export function unlistedMentions(procedure: ProcedureView, fact: ProseFact, kind: StoresKind): UnlistedMention[] {
  const { key, prose } = fact;
  if (key === 'note' || prose.mentions.length === 0) return [];
  const { listed, referred } = storesUses(procedure, kind);
  return prose.mentions.flatMap((mention) => {
    const { id } = mention;
    if (listed.has(id) || referred.has(id) || !mentions(procedure, mention, kind)) return [];
    const range = sourceRange(prose.scalar, mention.from, mention.to);
    return [{ id, name: storesName(procedure, kind, id), range }];
  });
}
