import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Unit } from '../model/facts';
import { VERBS } from '../model/generated/shapes';
import type { Instruction } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { UnitModel } from './unitModel';

/** One thing of the walk in its turn: an instruction to carry out, or a place where nobody knows what is meant. */
export type PlanEntry =
  | { readonly is: 'gap' }
  | {
      readonly is: 'act';
      readonly instruction: Instruction;
      readonly where: BuildSet;
      readonly resolved: boolean;
      readonly at: ItemRange;
    };

/** Everything that a walk depends on. Two walks of equal plans give the same failures, wherever the text stands. */
export interface WalkPlan {
  readonly unit: UnitModel;
  readonly entries: readonly PlanEntry[];
  /** The whole document resolves, so that what must be true at the end can be looked at. */
  readonly whole: boolean;
  readonly startsAndEnds: string;
  readonly stores: readonly SyntaxDocument[];
}

/** Lays out the walk of a procedure. What is done only when something is not as it should be is another way, not this one. */
export function planOf(unit: UnitModel): WalkPlan {
  const { procedure } = unit;
  const torn = new Set(procedure.document.problems.map((problem) => problem.range.item));
  const entries: PlanEntry[] = [];
  for (const view of procedure.steps) {
    if (torn.has(view.step.node.item) || !isStepResolved(view, unit)) entries.push({ is: 'gap' });
    for (const { instruction, where, nested } of view.instructions) {
      if (nested) continue;
      const resolved = !where.isEmpty && isResolved(instruction, unit);
      entries.push({ is: 'act', instruction, where, resolved, at: placeOf(instruction) });
    }
  }
  const { starts, ends } = procedure.value;
  const stores = [...new Set([...procedure.consumables.values()].map((item) => item.document))];
  return { unit, entries, whole: isWhole(unit), startsAndEnds: `${starts?.id} ${ends?.id}`, stores };
}

export function isSamePlan(one: WalkPlan, other: WalkPlan): boolean {
  return (
    one.unit.family === other.unit.family &&
    one.unit.space === other.unit.space &&
    one.whole === other.whole &&
    one.startsAndEnds === other.startsAndEnds &&
    one.stores.length === other.stores.length &&
    one.stores.every((document, i) => document === other.stores[i]) &&
    one.entries.length === other.entries.length &&
    one.entries.every((entry, i) => isSameEntry(entry, other.entries[i]))
  );
}

function isSameEntry(one: PlanEntry, other: PlanEntry | undefined): boolean {
  if (one.is === 'gap' || other === undefined || other.is === 'gap') return one.is === other?.is;
  if (one.where !== other.where || one.resolved !== other.resolved) return false;
  return one.instruction === other.instruction || sourceOf(one.instruction) === sourceOf(other.instruction);
}

function sourceOf({ node }: Instruction): string {
  return node.item.text.slice(node.from, node.to);
}

/** Whether everything about an instruction is typed and everything that it names exists. */
function isResolved(instruction: Instruction, unit: UnitModel): boolean {
  const read = unitOf(instruction.node);
  if (read === undefined || read.problems.length > 0 || isGluedVerb(instruction)) return false;
  return (
    areConditionsKnown(read, unit) &&
    read.facts.refs.every(({ ref }) => ref.kind !== 'part' || unit.part(ref.id) !== undefined)
  );
}

function isStepResolved({ step, phase }: StepView, unit: UnitModel): boolean {
  return [step, phase].every((one) => {
    const read = unitOf(one.node);
    return read !== undefined && read.problems.length === 0 && areConditionsKnown(read, unit);
  });
}

/** A condition that names what does not exist is met nowhere, and says nothing about where it was meant to be met. */
function areConditionsKnown(read: Unit, { space }: UnitModel): boolean {
  return read.facts.conditions.every(({ condition }) =>
    condition.names.every(({ expr }) => expr !== undefined && space.unknownNames(expr).length === 0),
  );
}

const GLUED = new RegExp(`^\\s*(?:${VERBS.join('|')})(?::|\\s*$)`);

/** `remove:cover` and a verb without anything behind it read as a sentence, and were meant as an instruction. */
function isGluedVerb(instruction: Instruction): boolean {
  return instruction.verb === 'say' && instruction.node.kind === 'scalar' && GLUED.test(instruction.node.text);
}

function placeOf(instruction: Instruction): ItemRange {
  return instruction.verbKey ?? instruction.node;
}

/** While an instruction is half typed, nobody can say what is missing at the end. */
function isWhole({ procedure }: UnitModel): boolean {
  if (procedure.document.problems.length > 0) return false;
  for (const unit of procedure.units()) if (unit.problems.length > 0) return false;
  return procedure.steps.length > 0;
}
