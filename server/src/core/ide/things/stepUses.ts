import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import { conditionAtoms } from '../../builds';
import type { Facts } from '../../model/facts';
import type { Instruction, Step } from '../../model/generated/types';
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

/** What the steps of a procedure name, by kind and id. What one step names is gathered once, as long as it stays the same. */
export class StepUses {
  private constructor(readonly procedure: ProcedureView | undefined) {}

  static of(procedure: ProcedureView | undefined): StepUses {
    return new StepUses(procedure);
  }

  /** The uses of a thing, in the order of the text. */
  of(kind: RefKind, id: string): readonly StepUse[] {
    const names = [nameKey(kind, id), nameKey('mention', id)];
    return (this.procedure?.steps ?? []).flatMap((step) => {
      const named = namedIn(step);
      return names
        .flatMap((name) => named.get(name) ?? [])
        .map(({ key, place }) => {
          const instruction = place === undefined ? undefined : step.instructions[place];
          return { step, instruction, key };
        });
    });
  }
}

/** A use without the objects of one reading: `place` is that of the instruction in its step. */
interface NamedThere {
  readonly key: string;
  readonly place: number | undefined;
}

/** The verb under which a use stands; undefined for what is used beside, or named in a text or a condition. */
export function verbOf({ instruction, key }: StepUse): Instruction['verb'] | undefined {
  return instruction !== undefined && instruction.instruction.verb === key ? instruction.instruction.verb : undefined;
}

function nameKey(kind: string, id: string): string {
  return `${kind}:${id}`;
}

const remembered = new WeakMap<Step, ReadonlyMap<string, readonly NamedThere[]>>();

function namedIn({ step, instructions }: StepView): ReadonlyMap<string, readonly NamedThere[]> {
  const known = remembered.get(step);
  if (known !== undefined) return known;
  const named = new Map<string, NamedThere[]>();
  const add = (name: string, there: NamedThere) => {
    const before = named.get(name);
    if (before === undefined) named.set(name, [there]);
    else before.push(there);
  };
  addNames(unitOf(step.node)?.facts, undefined, add);
  for (const [place, { instruction }] of instructions.entries()) addNames(unitOf(instruction.node)?.facts, place, add);
  remembered.set(step, named);
  return named;
}

function addNames(facts: Facts | undefined, place: number | undefined, add: (name: string, there: NamedThere) => void) {
  if (facts === undefined) return;
  const named = (kind: string, id: string, key: string) => add(nameKey(kind, id), { key, place });
  for (const { key, ref } of facts.refs) {
    const kinds = ref.kind === 'limit-or-reading' ? ['limit', 'reading'] : [ref.kind];
    for (const kind of kinds) named(kind, ref.id, key);
  }
  for (const { prose } of facts.prose) for (const { id } of prose.mentions) named('mention', id, 'mention');
  const cases = facts.byBuilds.flatMap(({ byBuild }) => (byBuild.is === 'one' ? [] : byBuild.cases));
  const exprs = [...facts.conditions.map((one) => one.condition.expr), ...cases.flatMap(({ expr }) => expr ?? [])];
  for (const atom of exprs.flatMap((expr) => [...conditionAtoms(expr)])) {
    if (atom.kind === 'outcome') named('outcome', atom.name, 'when');
    else for (const kind of ['variant', 'option']) named(kind, atom.id, 'when');
  }
}
