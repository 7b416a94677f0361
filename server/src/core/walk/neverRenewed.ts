import { objectIds } from '../analysis/instructions';
import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Step } from '../model/generated/types';
import type { UnitModel } from './unitModel';

/** The parts about which a step decides, and those that it may renew. */
interface Decisions {
  readonly decided: readonly string[];
  readonly renewed: readonly string[];
}

const remembered = new WeakMap<Step, Decisions>();

/**
 * Where a part would be renewed though everything that the procedure decides about it lets it stay or rejects the unit:
 * that way is never taken. Where nothing is decided about it, that is told elsewhere.
 */
export function neverRenewed(unit: UnitModel): BuildSet {
  const decided = new Set<string>();
  const renewed = new Set<string>();
  for (const view of unit.procedure.steps) {
    const decisions = decisionsIn(view);
    for (const id of decisions.decided) decided.add(id);
    for (const id of decisions.renewed) renewed.add(id);
  }
  const never = [...decided].filter((id) => !renewed.has(id) && unit.part(id) !== undefined);
  return unit.space.union(never.map((id) => unit.renewed(id)));
}

/** Whether a step has any say in what is renewed. */
export function decidesAnything(view: StepView): boolean {
  const { decided, renewed } = decisionsIn(view);
  return decided.length + renewed.length > 0;
}

function decisionsIn({ step, instructions }: StepView): Decisions {
  const known = remembered.get(step);
  if (known !== undefined) return known;
  const decided: string[] = [];
  const renewed: string[] = [];
  for (const { instruction } of instructions) {
    const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
    if (instruction.verb === 'inspect' && ifNot !== undefined) decided.push(...objectIds(instruction));
    if (instruction.verb === 'discard') renewed.push(...objectIds(instruction));
    if (ifNot?.replace !== undefined) renewed.push(...ifNot.replace.map((ref) => ref.id));
  }
  const decisions = { decided, renewed };
  remembered.set(step, decisions);
  return decisions;
}
