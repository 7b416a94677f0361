import { Names } from '../../analysis/names';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { BuildSet } from '../../builds';
import type { Mention } from '../../model/values';
import { fittedOn, unionOf } from './fittings';
import { sentencesOf } from './sentences';

/** The builds in which each part is put to use: fitted, chosen by size, or named as `<id>` in a sentence that may fit it. */
export function partsUsed(procedure: ProcedureView): ReadonlyMap<string, BuildSet> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const others = usesByRun(procedure).map(({ chosen, mentioned }) => {
    const parts = mentioned.filter(({ mention }) => isPart(procedure, mention));
    return unionOf([chosen, ...parts.map(({ mention, where }) => new Map([[mention.id, where]]))]);
  });
  const used = unionOf([fittedOn(procedure), ...others]);
  remembered.set(procedure, used);
  return used;
}

/** What is put to use beside what is fitted. What a mention names depends on all ids of the procedure, and is asked later. */
interface OtherUses {
  readonly chosen: ReadonlyMap<string, BuildSet>;
  readonly mentioned: readonly { readonly mention: Mention; readonly where: BuildSet }[];
}

const usesByRun = gatherer((steps): OtherUses => {
  const views = steps.flatMap((step) => step.instructions);
  return { chosen: unionOf(views.map(chosenBy)), mentioned: views.flatMap(mentionedBy) };
});

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, BuildSet>>();

function chosenBy({ instruction, where }: InstructionView): Map<string, BuildSet> {
  const id = instruction.verb === 'choose' ? instruction.choose?.id : undefined;
  return new Map(id === undefined ? [] : [[id, where]]);
}

/** A sentence beside a verb tells how the verb is done; only one that stands alone can fit what no verb fits. */
function mentionedBy({ instruction, where }: InstructionView): OtherUses['mentioned'] {
  if (instruction.verb !== 'say') return [];
  return sentencesOf(instruction).flatMap(({ prose, warns }) =>
    warns ? [] : prose.mentions.map((mention) => ({ mention, where })),
  );
}

function isPart(procedure: ProcedureView, mention: Mention): boolean {
  const lookup = Names.of(procedure.snapshot, procedure.document).lookUpMention(mention);
  return lookup.is === 'found' && lookup.thing.kind === 'part';
}
