import { conditionOf } from '../../../server/src/core/analysis/familyView';
import type { PhaseHead } from '../../../server/src/core/analysis/phaseHead';
import type { ProcedureView, StepView } from '../../../server/src/core/analysis/procedureView';
import type { Instruction } from '../../../server/src/core/model/generated/types';
import type { Condition } from '../../../server/src/core/model/values';
import { carryOut } from './carryOut';
import { atTheEnd } from './ending';
import { forksOf } from './forks';
import { decide } from './preparing';
import { isKnown } from './touching';
import { type Failed, Unit } from './unit';
import { UnitFacts } from './unitFacts';
import type { World } from './world';

/** What fails first in one world: an instruction, or the end of the work; nothing where `failures` is empty. */
export interface FirstFailure {
  readonly instruction: Instruction | 'end';
  readonly failures: readonly Failed[];
}

type Stop = { readonly is: 'failed'; readonly instruction: Instruction } | { readonly is: 'rejected' };

/**
 * Carries out a procedure in one world, one instruction after the other, and stops at the first that fails. It is slow
 * and plain on purpose: the fast walk is held against it.
 */
export function walkWorld(procedure: ProcedureView, world: World): FirstFailure {
  return new ReferenceWalker(procedure, world).walk();
}

class ReferenceWalker {
  readonly #unit: Unit;
  readonly #forks: ReadonlyMap<Instruction | StepView, number>;

  constructor(
    readonly procedure: ProcedureView,
    readonly world: World,
  ) {
    this.#unit = new Unit(new UnitFacts(procedure, world));
    this.#forks = forksOf(procedure);
  }

  walk(): FirstFailure {
    const stop = this.#steps(this.procedure.steps, undefined);
    const { failures } = this.#unit;
    if (stop?.is === 'failed') return { instruction: stop.instruction, failures };
    if (stop === undefined) atTheEnd(this.#unit);
    return { instruction: 'end', failures: this.#unit.failures };
  }

  /** Walks steps; up to and including `last` where it is given, whose result counts as good. */
  #steps(steps: readonly StepView[], last: Instruction | undefined): Stop | undefined {
    let phase: PhaseHead | undefined;
    let inPhase = true;
    for (const view of steps) {
      const first = view.step.do?.[0];
      if (view.phase !== phase) {
        const asked = this.#asks(view.phase, first);
        if (asked !== undefined) return asked;
        phase = view.phase;
        inPhase = this.#unit.facts.holds(phase);
      }
      if (!inPhase) continue;
      const asked = this.#asks(view.step, first);
      if (asked !== undefined) return asked;
      const fork = this.#forks.get(view);
      if (!this.#unit.facts.holds(view.step) || (fork !== undefined && this.world.forks[fork])) continue;
      const stop = this.#instructions(view.step.do ?? [], last);
      if (stop !== undefined) return stop;
    }
    return undefined;
  }

  #instructions(instructions: readonly Instruction[], last: Instruction | undefined): Stop | undefined {
    for (const instruction of instructions) {
      const stop = this.#instruction(instruction, last);
      if (stop !== undefined) return stop;
      if (instruction === last) return undefined;
    }
    return undefined;
  }

  #instruction(instruction: Instruction, last: Instruction | undefined): Stop | undefined {
    const asked = this.#asks(instruction, instruction);
    if (asked !== undefined) return asked;
    if (!this.#unit.facts.holds(instruction)) return undefined;
    carryOut(this.#unit, instruction);
    if (this.#unit.failures.length > 0) return { is: 'failed', instruction };
    const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
    for (const { id } of ifNot?.replace ?? []) if (this.#unit.facts.isMet(id)) decide(this.#unit, id);
    const fork = this.#forks.get(instruction);
    if (ifNot === undefined || fork === undefined || !this.world.forks[fork] || instruction === last) return undefined;
    this.#resultIsBad(instruction);
    const stop = this.#instructions(ifNot.do ?? [], last);
    if (stop !== undefined) return stop;
    if (ifNot.goTo !== undefined) return this.#again(instruction, ifNot.goTo.id);
    return ifNot.reject?.value === true ? { is: 'rejected' } : undefined;
  }

  #resultIsBad(instruction: Instruction): void {
    const id = resultOf(instruction);
    if (id !== undefined) this.#unit.result(id).valid = false;
  }

  #again(instruction: Instruction, target: string): Stop | undefined {
    const { steps } = this.procedure;
    const from = steps.findIndex(({ id }) => id === target);
    const here = steps.findIndex((view) => view.instructions.some((one) => one.instruction === instruction));
    if (from >= 0 && from <= here) {
      const stop = this.#steps(steps.slice(from, here + 1), instruction);
      if (stop?.is !== 'failed') return stop;
    }
    this.#unit.failures = [{ cause: 'loop-broken', about: target, other: undefined }];
    return { is: 'failed', instruction };
  }

  /** A condition cannot be followed before the bench knows what it looks at. */
  #asks(owner: { when?: Condition; unless?: Condition }, at: Instruction | undefined): Stop | undefined {
    const { space } = this.procedure;
    const looked = outcomesIn(conditionOf(owner));
    for (const outcome of looked) {
      const existsHere = this.world.outcomes.has(outcome) && this.world.point.isWithin(space.outcomeExists(outcome));
      if (existsHere && !isKnown(this.#unit, outcome)) this.#unit.fail('undecided-yet', outcome);
    }
    if (this.#unit.failures.length === 0 || at === undefined) return undefined;
    return { is: 'failed', instruction: at };
  }
}

function outcomesIn(expr: ReturnType<typeof conditionOf>): Set<string> {
  if (expr.kind === 'outcome') return new Set([expr.name]);
  return 'of' in expr ? new Set(expr.of.flatMap((part) => [...outcomesIn(part)])) : new Set();
}

function resultOf(instruction: Instruction): string | undefined {
  if (instruction.verb === 'measure') return instruction.measure?.id;
  if (instruction.verb === 'calculate') return instruction.calculate?.id;
  return instruction.verb === 'check' && instruction.check?.is === 'ref' ? instruction.check.ref.id : undefined;
}
