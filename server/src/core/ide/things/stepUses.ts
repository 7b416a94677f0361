import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import { conditionAtoms } from '../../builds';
import type { Facts } from '../../model/facts';
import type { Instruction } from '../../model/generated/types';
import { unitOf } from '../../model/readUnit';
import type { RefKind } from '../../model/shape';

/** That a step names a thing, and how. */
export interface StepUse {
  readonly step: StepView;
  /** Undefined where the head of the step names it. */
  readonly instruction: InstructionView | undefined;
  /** The key under which it stands: the verb for an object; `mention` where a text names it. */
  readonly key: string;
}

/** What the steps of a procedure name, by kind and id. It is gathered when somebody first asks. */
export class StepUses {
  #byName: Map<string, StepUse[]> | undefined;

  private constructor(readonly procedure: ProcedureView | undefined) {}

  static of(procedure: ProcedureView | undefined): StepUses {
    return new StepUses(procedure);
  }

  /** The uses of a thing, in the order of the text. */
  of(kind: RefKind, id: string): readonly StepUse[] {
    this.#byName ??= gather(this.procedure);
    const mentions = this.#byName.get(nameKey('mention', id)) ?? [];
    return [...(this.#byName.get(nameKey(kind, id)) ?? []), ...mentions];
  }
}

/** The verb under which a use stands; undefined for what is used beside, or named in a text or a condition. */
export function verbOf({ instruction, key }: StepUse): Instruction['verb'] | undefined {
  return instruction !== undefined && instruction.instruction.verb === key ? instruction.instruction.verb : undefined;
}

function nameKey(kind: string, id: string): string {
  return `${kind}:${id}`;
}

function gather(procedure: ProcedureView | undefined): Map<string, StepUse[]> {
  const byName = new Map<string, StepUse[]>();
  const add = (name: string, use: StepUse) => {
    const known = byName.get(name);
    if (known === undefined) byName.set(name, [use]);
    else known.push(use);
  };
  for (const step of procedure?.steps ?? []) {
    const inHead = unitOf(step.step.node);
    if (inHead !== undefined) addNames(inHead.facts, step, undefined, add);
    for (const view of step.instructions) {
      const unit = unitOf(view.instruction.node);
      if (unit !== undefined) addNames(unit.facts, step, view, add);
    }
  }
  return byName;
}

function addNames(
  { refs, prose, conditions, byBuilds }: Facts,
  step: StepView,
  instruction: InstructionView | undefined,
  add: (name: string, use: StepUse) => void,
): void {
  const named = (kind: string, id: string, key: string) => add(nameKey(kind, id), { step, instruction, key });
  for (const { key, ref } of refs) {
    const kinds = ref.kind === 'limit-or-reading' ? ['limit', 'reading'] : [ref.kind];
    for (const kind of kinds) named(kind, ref.id, key);
  }
  for (const { prose: text } of prose) for (const { id } of text.mentions) named('mention', id, 'mention');
  const cases = byBuilds.flatMap(({ byBuild }) => (byBuild.is === 'one' ? [] : byBuild.cases));
  const exprs = [...conditions.map(({ condition }) => condition.expr), ...cases.flatMap(({ expr }) => expr ?? [])];
  for (const atom of exprs.flatMap((expr) => [...conditionAtoms(expr)])) {
    if (atom.kind === 'outcome') named('outcome', atom.name, 'when');
    else for (const kind of ['variant', 'option']) named(kind, atom.id, 'when');
  }
}
