import { Names } from '../../analysis/names';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { fittingsOf } from './fittings';
import { sentencesOf } from './sentences';

/** The builds in which each part is put to use: fitted, chosen by size, or named as `<id>` in a sentence that may fit it. */
export function partsUsed(procedure: ProcedureView): ReadonlyMap<string, BuildSet> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const used = new Map<string, BuildSet>();
  const add = (id: string, where: BuildSet): void => void used.set(id, used.get(id)?.or(where) ?? where);
  for (const [id, fittings] of fittingsOf(procedure)) for (const { where } of fittings) add(id, where);
  for (const { instructions } of procedure.steps) {
    for (const view of instructions) for (const id of alsoUsedBy(procedure, view)) add(id, view.where);
  }
  remembered.set(procedure, used);
  return used;
}

const NO_IDS: readonly string[] = [];
const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, BuildSet>>();

/** A sentence beside a verb tells how the verb is done; only one that stands alone can fit what no verb fits. */
function alsoUsedBy(procedure: ProcedureView, view: InstructionView): readonly string[] {
  const { instruction } = view;
  if (instruction.verb === 'choose') return instruction.choose === undefined ? [] : [instruction.choose.id];
  if (instruction.verb !== 'say') return NO_IDS;
  const names = Names.of(procedure.snapshot, procedure.document);
  return sentencesOf(instruction).flatMap(({ prose, warns }) =>
    prose.mentions.flatMap((mention) => {
      const lookup = warns ? undefined : names.lookUpMention(mention);
      return lookup?.is === 'found' && lookup.thing.kind === 'part' ? [mention.id] : [];
    }),
  );
}
