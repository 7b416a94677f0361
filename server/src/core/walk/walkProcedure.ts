import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { Unit } from '../model/facts';
import { VERBS } from '../model/generated/shapes';
import type { Instruction } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import { atTheEnd } from './atTheEnd';
import { carryOut } from './carryOut';
import type { Failure } from './failure';
import { startOf } from './start';
import { UnitModel } from './unitModel';
import { type Act, Walker } from './walker';
import type { WalkState } from './walkState';

/** What the walk of a procedure gives: everything that fails, in the order in which it shows, and the unit at the end. */
export interface Trace {
  readonly failures: readonly Failure[];
  readonly end: WalkState;
}

const remembered = new WeakMap<ProcedureView, { trace: Trace | undefined }>();

/**
 * Walks a procedure step by step for every build and outcome at once. Undefined where the family cannot be read. It
 * knows no rules: it says what fails and why, and goes on as if it had been right.
 */
export function walkOf(procedure: ProcedureView): Trace | undefined {
  const known = remembered.get(procedure);
  if (known !== undefined) return known.trace;
  const trace = procedure.family === undefined ? undefined : walk(new UnitModel(procedure, procedure.family));
  remembered.set(procedure, { trace });
  return trace;
}

function walk(unit: UnitModel): Trace {
  const walker = new Walker(unit);
  startOf(walker);
  const torn = new Set(unit.procedure.document.problems.map((problem) => problem.range.item));
  let index = 0;
  for (const view of unit.procedure.steps) {
    if (torn.has(view.step.node.item) || !isStepResolved(view, unit)) walker.skipped(++index);
    for (const { instruction, where, nested } of view.instructions) {
      index++;
      // What is done only when something was not as it should be is another way through the work, not this one.
      if (nested) continue;
      carryOut(walker, { instruction, where, at: placeOf(instruction), index });
      if (where.isEmpty || !isResolved(instruction, unit)) walker.skipped(index);
    }
  }
  if (isWhole(unit)) atTheEnd(walker);
  return { failures: walker.failures, end: walker.state };
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

function placeOf(instruction: Instruction): Act['at'] {
  return instruction.verbKey ?? instruction.node;
}

/** While an instruction is half typed, nobody can say what is missing at the end. */
function isWhole({ procedure }: UnitModel): boolean {
  if (procedure.document.problems.length > 0) return false;
  for (const unit of procedure.units()) if (unit.problems.length > 0) return false;
  return procedure.steps.length > 0;
}
