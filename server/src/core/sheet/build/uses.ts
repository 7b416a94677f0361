import { consumableIds, toolIds } from '../../analysis/instructions';
import type { StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Instruction } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type { Condition, StepPlace } from '../sheet';
import type { BuildContext } from './buildContext';
import { ifNotValue } from './instructionKeys';
import type { PlannedStep, StepHere, UseHere } from './plannedSteps';

/** An instruction that is on the sheet, with its step. */
export interface InstructionUse extends UseHere {
  readonly step: number;
  readonly stepId: string;
}

/** One use of a consumable; `amount` where the instruction puts it on. */
export interface ConsumableUse {
  readonly place: StepPlace;
  readonly amount: Prose | undefined;
}

type Verb = Instruction['verb'];
/** Verbs that something around the steps asks for. */
type ListedVerb = (typeof LISTED)[number];

/** Every instruction that is on the sheet, found by what is asked for in more than one place of it. */
export class Uses {
  readonly #listed: InstructionUse[] = [];
  /** Where each tool is used, in the order of first use. */
  readonly tools = new Map<string, StepPlace[]>();
  /** How many pieces of each tool one instruction takes at most, where it is more than one. */
  readonly toolCounts = new Map<string, number>();
  readonly consumables = new Map<string, ConsumableUse[]>();
  /** Where it is last decided whether a part is renewed: at what inspects or replaces it. */
  readonly lastRenewal = new Map<string, StepPlace>();
  /** What takes off, fits, turns, exchanges or sends parts, in the order of the work. */
  readonly fitting: UseHere[] = [];
  /** What goes back to another step. */
  readonly goingBack: PlannedStep[] = [];
  /** The parts that get a torque. */
  readonly tightened = new Set<string>();

  constructor(readonly steps: readonly PlannedStep[]) {
    for (const step of steps) this.#add(step);
  }

  /** The instructions of some verbs, in the order of the work. */
  of(...verbs: ListedVerb[]): InstructionUse[] {
    return this.#listed.filter(({ instruction }) => (verbs as Verb[]).includes(instruction.verb));
  }

  *inOrder(): Generator<InstructionUse> {
    for (const { here, number, id } of this.steps) {
      for (const use of here.uses) yield { ...use, step: number, stepId: id };
    }
  }

  #add(step: PlannedStep): void {
    const { here, number, id, place } = step;
    const { tools, toolCounts, consumables, renewed, tightened, listed, fitting, goesBack } = summaryOf(here);
    for (const use of fitting) this.fitting.push(use);
    if (goesBack) this.goingBack.push(step);
    for (const tool of tools) listIn(this.tools, tool).push(place);
    for (const [tool, count] of toolCounts) this.toolCounts.set(tool, Math.max(count, this.toolCounts.get(tool) ?? 1));
    for (const { id: of, amount } of consumables) listIn(this.consumables, of).push({ place, amount });
    for (const part of renewed) this.lastRenewal.set(part, place);
    for (const part of tightened) this.tightened.add(part);
    for (const use of listed) this.#listed.push({ ...use, step: number, stepId: id });
  }
}

function listIn<Key, Value>(map: Map<Key, Value[]>, key: Key): Value[] {
  const known = map.get(key);
  if (known !== undefined) return known;
  const list: Value[] = [];
  map.set(key, list);
  return list;
}

/** What a step adds to the whole sheet, gathered once for a step that stays as it is. */
interface Summary {
  /** Each once. */
  readonly tools: readonly string[];
  readonly toolCounts: readonly (readonly [tool: string, count: number])[];
  readonly consumables: readonly { readonly id: string; readonly amount: Prose | undefined }[];
  readonly renewed: readonly string[];
  readonly tightened: readonly string[];
  readonly listed: readonly UseHere[];
  readonly fitting: readonly UseHere[];
  readonly goesBack: boolean;
}

const LISTED = ['record', 'identify', 'send', 'receive', 'choose'] as const satisfies readonly Verb[];
const FITTING: ReadonlySet<Verb> = new Set<Verb>([
  'remove',
  'install',
  'loosen',
  'tighten',
  'inspect',
  'discard',
  'return',
  'send',
]);
const summaries = new WeakMap<StepHere, Summary>();

function summaryOf(here: StepHere): Summary {
  const known = summaries.get(here) ?? summarised(here);
  summaries.set(here, known);
  return known;
}

function summarised(here: StepHere): Summary {
  const { uses } = here;
  const all = uses.map(({ instruction }) => instruction);
  return {
    tools: [...new Set(all.flatMap(toolIds))],
    toolCounts: all.flatMap(countsOf),
    consumables: all.flatMap((one) =>
      consumableIds(one).map((id) => ({ id, amount: one.verb === 'apply' ? one.amount : undefined })),
    ),
    renewed: all.flatMap(renewedBy),
    tightened: all.flatMap((one) => (one.verb === 'tighten' ? (one.tighten ?? []).map(({ id }) => id) : [])),
    fitting: uses.filter(({ instruction: one }) => FITTING.has(one.verb) || ifNotValue(one)?.replace !== undefined),
    goesBack: (here.view.step.do ?? []).some((one) => ifNotValue(one)?.goTo !== undefined),
    listed: uses.filter(({ instruction }) => (LISTED as readonly Verb[]).includes(instruction.verb)),
  };
}

function countsOf(one: Instruction): [string, number][] {
  const held = 'hold' in one ? (one.hold?.with ?? []) : [];
  return [...(one.with ?? []), ...held].flatMap(({ tool, count }): [string, number][] =>
    tool === undefined || (count?.value ?? 1) <= 1 ? [] : [[tool.id, count?.value ?? 1]],
  );
}

function renewedBy(one: Instruction): string[] {
  const replaced = ifNotValue(one)?.replace ?? [];
  const inspected = one.verb === 'inspect' ? (one.inspect ?? []) : [];
  return [...replaced, ...inspected].map(({ id }) => id);
}

/** What the instructions of a step name, of whatever build. */
interface Named {
  readonly tools: readonly string[];
  readonly consumables: readonly string[];
}

const named = new WeakMap<StepView, Named>();

/** The tools and consumables that some instruction names, of whatever build. */
export function namedAnywhere(steps: readonly StepView[], what: keyof Named): Set<string> {
  const ids = new Set<string>();
  for (const step of steps) for (const id of namedIn(step)[what]) ids.add(id);
  return ids;
}

function namedIn(view: StepView): Named {
  const known = named.get(view);
  if (known !== undefined) return known;
  const all = view.instructions.map(({ instruction }) => instruction);
  const found = { tools: [...new Set(all.flatMap(toolIds))], consumables: [...new Set(all.flatMap(consumableIds))] };
  named.set(view, found);
  return found;
}

/** The steps of some instructions, each once, in order. */
export function stepsOf(uses: readonly InstructionUse[]): StepPlace[] {
  const places = new Map(uses.map(({ step, stepId }) => [step, { step, stepId }]));
  return [...places.values()].sort((a, b) => a.step - b.step);
}

/** When something applies, as the part of an object that says it; nothing where it always does. */
export function conditioned(
  where: BuildSet,
  { conditions, picked }: BuildContext,
  known: BuildSet = picked.set,
): { condition?: Condition } {
  const condition = conditions.condition(where, known);
  return condition === undefined ? {} : { condition };
}
