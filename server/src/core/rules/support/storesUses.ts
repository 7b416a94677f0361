import { consumableIds, toolIds } from '../../analysis/instructions';
import { Names } from '../../analysis/names';
import type { ProcedureView, StepView } from '../../analysis/procedureView';
import { summariesOf, type UnitSummary } from '../../analysis/unitSummary';
import type { Instruction } from '../../model/generated/types';
import type { Mention, Ref } from '../../model/values';
import { type NameInProse, namesInProse } from './namesInProse';
import { type Sentence, sentencesOf } from './sentences';

export type StoresKind = 'tool' | 'consumable';

/** The key of the procedure's list, and the key by which an instruction names what it is done with. */
export const STORES_KEYS = {
  tool: { list: 'tools', use: 'with' },
  consumable: { list: 'consumables', use: 'using' },
} as const;

/** The tools or consumables of a procedure: those that it lists and those that it uses. */
export interface StoresUses {
  readonly listed: ReadonlySet<string>;
  /** Named by an instruction, by id. */
  readonly referred: ReadonlySet<string>;
  /** Named as `<id>` in a text that the fitter reads. */
  readonly mentioned: ReadonlySet<string>;
}

/** Gathered once for a reading of a procedure. */
export function storesUses(procedure: ProcedureView, kind: StoresKind): StoresUses {
  const uses = remembered.get(procedure) ?? gather(procedure);
  remembered.set(procedure, uses);
  return uses[kind];
}

type AllUses = Readonly<Record<StoresKind, StoresUses>>;

const remembered = new WeakMap<ProcedureView, AllUses>();

function gather(procedure: ProcedureView): AllUses {
  const summaries = summariesOf(procedure.unit);
  const mentioned = mentionedIds(procedure, summaries);
  const usesOf = (kind: StoresKind): StoresUses => {
    const referred = new Set<string>();
    for (const { named } of summaries) for (const id of named.get(kind) ?? NO_IDS) referred.add(id);
    return { listed: new Set(listOf(procedure, kind).map((ref) => ref.id)), referred, mentioned: mentioned[kind] };
  };
  return { tool: usesOf('tool'), consumable: usesOf('consumable') };
}

const NO_IDS: readonly string[] = [];

/** Each way of naming something is looked up once, however often it stands in a long procedure. */
function mentionedIds(procedure: ProcedureView, summaries: readonly UnitSummary[]): Record<StoresKind, Set<string>> {
  const names = Names.of(procedure.snapshot, procedure.document);
  const seen = new Set<string>();
  const ids = { tool: new Set<string>(), consumable: new Set<string>() };
  for (const mention of summaries.flatMap((one) => one.mentions)) {
    const key = mention.kind === undefined ? mention.id : `${mention.kind}/${mention.id}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const lookup = names.lookUpMention(mention);
    const kind = lookup.is === 'found' ? lookup.thing.kind : undefined;
    if (kind === 'tool' || kind === 'consumable') ids[kind].add(mention.id);
  }
  return ids;
}

export function listOf(procedure: ProcedureView, kind: StoresKind): readonly Ref[] {
  return procedure.value[STORES_KEYS[kind].list] ?? [];
}

/** Whether `<id>` names a tool, or a consumable, and nothing else. */
export function mentions(procedure: ProcedureView, mention: Mention, kind: StoresKind): boolean {
  const lookup = Names.of(procedure.snapshot, procedure.document).lookUpMention(mention);
  return lookup.is === 'found' && lookup.thing.kind === kind;
}

/** What the fitter is told to reach for: the name of a tool or consumable, or its id where it has none. */
export function storesName(procedure: ProcedureView, kind: StoresKind, id: string): string {
  const items = kind === 'tool' ? procedure.tools : procedure.consumables;
  return items.get(id)?.entry.value.name?.text ?? id;
}

/** What plain words anywhere in the procedure name, so that it is not held to be unused. */
export function namedAnywhere(procedure: ProcedureView, kind: StoresKind): Set<string> {
  const ids = new Set<string>();
  for (const { facts } of procedure.units()) {
    for (const { key, prose } of facts.prose) {
      if (key === 'note') continue;
      for (const name of namesInProse(procedure, prose)) if (name.kind === kind) for (const id of name.ids) ids.add(id);
    }
  }
  return ids;
}

const NONE: readonly OnlyNamed[] = [];

export interface OnlyNamed extends NameInProse {
  readonly sentence: Sentence;
}

/**
 * What the sentences of an instruction name in plain words but the instruction does not name by id. A warning may speak
 * of what another instruction of its step uses. Each thing counts once.
 */
export function onlyNamed(
  procedure: ProcedureView,
  step: StepView | undefined,
  instruction: Instruction,
  kind: StoresKind,
): readonly OnlyNamed[] {
  const sentences = sentencesOf(instruction).filter(({ prose }) =>
    namesInProse(procedure, prose).some((name) => name.kind === kind),
  );
  if (sentences.length === 0) return NONE;
  const seen = new Set<string>();
  return sentences.flatMap((sentence) =>
    namesInProse(procedure, sentence.prose).flatMap((name) => {
      if (name.kind !== kind) return [];
      const key = name.ids.join(' ');
      if (seen.has(key) || isUsed(procedure, step, instruction, kind, name.ids, sentence)) return [];
      seen.add(key);
      return [{ ...name, sentence }];
    }),
  );
}

function isUsed(
  procedure: ProcedureView,
  step: StepView | undefined,
  instruction: Instruction,
  kind: StoresKind,
  ids: readonly string[],
  sentence: Sentence,
): boolean {
  const among = sentence.warns ? (step?.instructions ?? []).map((one) => one.instruction) : [instruction];
  return among.some(
    (one) =>
      usedBy(one, kind).some((id) => ids.includes(id)) ||
      sentencesOf(one).some(({ prose }) =>
        prose.mentions.some((mention) => ids.includes(mention.id) && mentions(procedure, mention, kind)),
      ),
  );
}

function usedBy(instruction: Instruction, kind: StoresKind): string[] {
  return kind === 'tool' ? toolIds(instruction) : consumableIds(instruction);
}
