import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import { conditionAtoms } from '../../builds';
import type { Facts } from '../../model/facts';
import type { Instruction } from '../../model/generated/types';
import { unitOf } from '../../model/readUnit';
import type { RefKind } from '../../model/shape';
import { kindsWithin } from '../idUses';

/** That a step names a thing, and how. */
export interface StepUse {
  readonly step: StepView;
  /** Undefined where the head of the step names it. */
  readonly instruction: InstructionView | undefined;
  /** The key under which it stands: the verb for an object; `mention` where a text names it. */
  readonly key: string;
}

/** What the steps of a procedure name, by kind and id. */
export class StepUses {
  private constructor(readonly procedure: ProcedureView | undefined) {}

  static of(procedure: ProcedureView | undefined): StepUses {
    return new StepUses(procedure);
  }

  /** The uses of a thing, in the order of the text. */
  of(kind: RefKind, id: string): readonly StepUse[] {
    if (this.procedure === undefined) return [];
    const named = usesById(this.procedure).flatMap((uses) => uses.get(id) ?? []);
    return named.filter((one) => one.kind === kind || one.kind === 'mention').map(({ use }) => use);
  }
}

/** The verb under which a use stands; undefined for what is used beside, or named in a text or a condition. */
export function verbOf({ instruction, key }: StepUse): Instruction['verb'] | undefined {
  return instruction !== undefined && instruction.instruction.verb === key ? instruction.instruction.verb : undefined;
}

interface NamedThere {
  readonly kind: RefKind | 'mention';
  readonly use: StepUse;
}

/** Gathered by runs of steps, so that a key pressed in one step has few of them looked at again. */
const usesById = gatherer((steps): ReadonlyMap<string, readonly NamedThere[]> => {
  const uses = new Map<string, NamedThere[]>();
  const add = (id: string, named: NamedThere) => {
    const before = uses.get(id);
    if (before === undefined) uses.set(id, [named]);
    else before.push(named);
  };
  for (const step of steps) {
    addNames({ step, instruction: undefined }, unitOf(step.step.node)?.facts, add);
    for (const instruction of step.instructions) {
      addNames({ step, instruction }, unitOf(instruction.instruction.node)?.facts, add);
    }
  }
  return uses;
});

function addNames(
  there: Pick<StepUse, 'step' | 'instruction'>,
  facts: Facts | undefined,
  add: (id: string, named: NamedThere) => void,
): void {
  if (facts === undefined) return;
  const named = (kind: NamedThere['kind'], id: string, key: string) => add(id, { kind, use: { ...there, key } });
  for (const { key, ref } of facts.refs) for (const kind of kindsWithin(ref.kind)) named(kind, ref.id, key);
  for (const { prose } of facts.prose) for (const { id } of prose.mentions) named('mention', id, 'mention');
  const cases = facts.byBuilds.flatMap(({ byBuild }) => (byBuild.is === 'one' ? [] : byBuild.cases));
  const exprs = [...facts.conditions.map((one) => one.condition.expr), ...cases.flatMap(({ expr }) => expr ?? [])];
  for (const atom of exprs.flatMap((expr) => [...conditionAtoms(expr)])) {
    if (atom.kind === 'outcome') named('outcome', atom.name, 'when');
    else for (const kind of ['variant', 'option'] as const) named(kind, atom.id, 'when');
  }
}
