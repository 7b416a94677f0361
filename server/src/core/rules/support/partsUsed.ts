import { Names } from '../../analysis/names';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { BuildSet } from '../../builds';
import { fittedParts, unionOf } from './fittings';
import { sentencesOf } from './sentences';

/** The builds in which each part is put to use: fitted, chosen by size, or named as `<id>` in a sentence that may fit it. */
export function partsUsed(procedure: ProcedureView): ReadonlyMap<string, BuildSet> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const others = usesByRun(procedure);
  const mentioned = unionOf(others.map((one) => one.mentioned));
  const parts = [...mentioned].filter(([mention]) => isPart(procedure, mention));
  const named = parts.map(([mention, where]) => new Map([[mention.slice(mention.indexOf('/') + 1), where]]));
  const fitted = new Map(Array.from(fittedParts(procedure), ([id, { where }]) => [id, where]));
  const used = unionOf([fitted, ...others.map((one) => one.chosen), ...named]);
  remembered.set(procedure, used);
  return used;
}

/** What is put to use beside what is fitted. What a mention, `cover` or `part/cover`, names is asked later: it depends on all ids. */
interface OtherUses {
  readonly chosen: ReadonlyMap<string, BuildSet>;
  readonly mentioned: ReadonlyMap<string, BuildSet>;
}

const usesByRun = gatherer((steps): OtherUses => {
  const views = steps.flatMap((step) => step.instructions);
  return { chosen: unionOf(views.flatMap(chosenBy)), mentioned: unionOf(views.flatMap(mentionedBy)) };
});

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, BuildSet>>();

function chosenBy({ instruction, where }: InstructionView): readonly OtherUses['mentioned'][] {
  const id = instruction.verb === 'choose' ? instruction.choose?.id : undefined;
  return id === undefined ? NOTHING : [new Map([[id, where]])];
}

const NOTHING: readonly OtherUses['mentioned'][] = [];

/** A sentence beside a verb tells how the verb is done; only one that stands alone can fit what no verb fits. */
function mentionedBy({ instruction, where }: InstructionView): readonly OtherUses['mentioned'][] {
  if (instruction.verb !== 'say') return NOTHING;
  return sentencesOf(instruction).flatMap(({ prose, warns }) =>
    warns ? [] : prose.mentions.map(({ kind, id }) => new Map([[kind === undefined ? id : `${kind}/${id}`, where]])),
  );
}

function isPart(procedure: ProcedureView, mention: string): boolean {
  const [id = '', kind] = mention.split('/').reverse();
  const lookup = Names.of(procedure.snapshot, procedure.document).lookUpMention({ id, kind, from: 0, to: 0 });
  return lookup.is === 'found' && lookup.thing.kind === 'part';
}
