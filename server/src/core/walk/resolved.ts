import type { StepView } from '../analysis/procedureView';
import type { Unit } from '../model/facts';
import { VERBS } from '../model/generated/shapes';
import type { Instruction } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { Condition, Ref } from '../model/values';
import { areSameNames, type NamesKnown } from './namesKnown';
import type { UnitModel } from './unitModel';
import type { LaidStep } from './walkPlan';

const remembered = new WeakMap<Instruction, { readonly names: NamesKnown; readonly resolved: boolean }>();

/** Whether everything about an instruction is typed and everything that it names exists. */
export function isResolved(instruction: Instruction, unit: UnitModel): boolean {
  const known = remembered.get(instruction);
  const { names } = unit;
  if (known !== undefined && areSameNames(known.names, names)) return known.resolved;
  const resolved = readsWhole(instruction, unit);
  remembered.set(instruction, { names, resolved });
  return resolved;
}

function readsWhole(instruction: Instruction, unit: UnitModel): boolean {
  const read = unitOf(instruction.node);
  if (read === undefined || read.problems.length > 0 || isGluedVerb(instruction)) return false;
  return areFactsKnown(read, unit) && read.facts.refs.every(({ ref }) => isKnown(ref, unit));
}

/** Tools, figures and steps change nothing of the unit, whatever they are called. */
function isKnown({ kind, id }: Ref, { family, procedure }: UnitModel): boolean {
  if (kind === 'part') return family.part(id) !== undefined;
  const own = procedure.value.readings ?? [];
  if (kind === 'consumable') return !procedure.storesComplete || procedure.consumables.has(id);
  if (kind === 'balance-group' || kind === 'check' || kind === 'outcome') return family.declared(kind).has(id);
  if (kind !== 'reading' && kind !== 'limit' && kind !== 'limit-or-reading') return true;
  const isMeasured = own.some((one) => one.id.id === id) || family.declared('reading').has(id);
  return isMeasured || family.declared('limit').has(id) || family.declared('dimension').has(id);
}

/** The same for what is said of a step and of its phase. */
export function isStepResolved({ step, phase }: StepView, unit: UnitModel): boolean {
  const read = unitOf(step.node);
  if (read === undefined || read.problems.length > 0 || phase.problems.length > 0) return false;
  return isKnownCondition(phase.when, unit) && isKnownCondition(phase.unless, unit) && areFactsKnown(read, unit);
}

function areFactsKnown({ facts }: Unit, unit: UnitModel): boolean {
  return facts.conditions.every(({ condition }) => isKnownCondition(condition, unit));
}

/** A condition that names what does not exist is met nowhere, and says nothing about where it was meant to be met. */
function isKnownCondition(condition: Condition | undefined, { space }: UnitModel): boolean {
  return (
    condition === undefined ||
    condition.names.every(({ expr }) => expr !== undefined && space.unknownNames(expr).length === 0)
  );
}

const GLUED = new RegExp(`^\\s*(?:${VERBS.join('|')})(?::|\\s*$)`);

/** `remove:cover` and a verb without anything behind it read as a sentence, and were meant as an instruction. */
function isGluedVerb(instruction: Instruction): boolean {
  return instruction.verb === 'say' && instruction.node.kind === 'scalar' && GLUED.test(instruction.node.text);
}

/** While an instruction is half typed, nobody can say what is missing at the end. */
export function isWhole({ procedure }: UnitModel, steps: readonly LaidStep[]): boolean {
  if (procedure.document.problems.length > 0 || steps.length === 0) return false;
  return isSoundAround(procedure.unit) && steps.every((one) => one.isSound);
}

/** Nothing is of the wrong shape in a unit and what it holds; steps are looked at by themselves. */
function isSoundAround(unit: Unit): boolean {
  if (unit.problems.length > 0) return false;
  return unit.children.every((child) => child.def === 'procedure/step' || isSoundAround(child));
}
