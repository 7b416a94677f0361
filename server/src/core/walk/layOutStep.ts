import { nestedInstructions, objectIds } from '../analysis/instructions';
import type { InstructionView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import { unitsIn } from '../model/facts';
import type { InspectInstruction, Instruction } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { Beginnings } from './beginnings';
import { type Asked, askedBy } from './decisions';
import { isResolved, isStepResolved } from './resolved';
import type { Fork, ForkOrigin } from './trace';
import type { UnitModel } from './unitModel';
import type { BeforeStep, LaidStep, Loop, PlanAct, PlanEntry, Span } from './walkPlan';

/** Lays out one step behind those that are laid out already. */
export function layOutStep(
  unit: UnitModel,
  view: StepView,
  before: BeforeStep,
  steps: readonly LaidStep[],
  begins: Beginnings,
): LaidStep {
  return new StepLayout(unit, view, before, steps, begins).lay();
}

type IfNot = NonNullable<InspectInstruction['ifNot']>;

class StepLayout {
  readonly #entries: PlanEntry[] = [];
  readonly #forks: Fork[] = [];
  readonly #spans: Span[] = [];
  #isLost = false;
  /** The ways on which the work has been broken off. */
  #dead: BuildSet;

  constructor(
    readonly unit: UnitModel,
    readonly view: StepView,
    readonly before: BeforeStep,
    readonly steps: readonly LaidStep[],
    readonly begins: Beginnings,
  ) {
    this.#dead = before.dead;
  }

  lay(): LaidStep {
    const { view, before, unit } = this;
    if (before.isTorn || !isStepResolved(view, unit)) this.#entries.push({ is: 'gap' });
    this.#step();
    const read = unitOf(view.step.node);
    // Written out, for every step after each key is asked for these: an object that begins as a copy is slow to read.
    const { names, dead, forksBefore, isTorn } = before;
    return {
      names,
      dead,
      forksBefore,
      isTorn,
      view,
      entries: this.#entries,
      forks: this.#forks,
      deadAfter: this.#dead,
      isSound: read !== undefined && unitsIn(read).every((one) => one.problems.length === 0),
      spans: this.#spans,
      isLost: this.#isLost,
    };
  }

  #step(): void {
    const { view } = this;
    let within = view.where.minus(this.#dead);
    if (view.step.optional?.value === true && !within.isEmpty) {
      const title = view.step.title?.text ?? view.id;
      const of = { is: 'optional', step: view.step } as const;
      within = within.minus(this.#fork(`step "${title}" is left out`, `step "${title}" is done`, of));
    }
    const asked = askedBy(view.phase, view.step);
    for (const one of view.instructions) if (!one.nested) this.#act(one, within, asked);
  }

  #act({ instruction, where }: InstructionView, within: BuildSet, asked: readonly Asked[]): void {
    const here = where.and(within).minus(this.#dead);
    const resolved = isResolved(instruction, this.unit);
    const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
    const fails =
      ifNot === undefined || here.isEmpty ? this.unit.space.nothing : this.#failing(instruction, ifNot, here);
    const at = instruction.verbKey ?? instruction.node;
    const all =
      instruction.when === undefined && instruction.unless === undefined ? asked : [...asked, ...askedBy(instruction)];
    const act: PlanAct = {
      is: 'act',
      step: this.view,
      instruction,
      where: here,
      fails,
      asked: all,
      resolved,
      at,
      loop: undefined,
    };
    this.#entries.push(act);
    if (ifNot === undefined || fails.isEmpty) return;
    this.#otherWay(instruction, fails);
    if (ifNot.goTo !== undefined) this.#goBack(act, ifNot.goTo.id, fails);
    else if (ifNot.reject?.value === true) this.#dead = this.#dead.or(fails);
  }

  /** Where the work goes another way because a result is not right. Without further instructions there is one way only. */
  #failing(instruction: Instruction, ifNot: IfNot, where: BuildSet): BuildSet {
    if ((ifNot.do ?? []).length === 0 && ifNot.goTo === undefined) return this.unit.space.nothing;
    const said = sentenceOf(instruction, this.unit);
    const what = nameOf(instruction, this.unit);
    const [taken, notTaken] =
      said === undefined
        ? [`${what} is not right`, `${what} is right`]
        : [`"${said}" does not hold`, `"${said}" holds`];
    return where.and(this.#fork(taken, notTaken, { is: 'result', instruction }));
  }

  #otherWay(instruction: Instruction, fails: BuildSet): void {
    const nested = new Set(nestedInstructions(instruction));
    for (const one of this.view.instructions) if (nested.has(one.instruction)) this.#act(one, fails, []);
  }

  /** Walks what lies between the target and the instruction once more. What goes back within it does so only once. */
  #goBack(act: PlanAct, target: string, fails: BuildSet): void {
    const from = this.begins.of(target) ?? (this.view.id === target ? this.steps.length : undefined);
    if (from === undefined) {
      this.#isLost = true;
      // A step that is nowhere is told as an unknown id.
      if (this.unit.procedure.step(target) === undefined) return;
      this.#entries.push({ is: 'lost-loop', target, where: fails, at: act.at });
      return;
    }
    const loop = { target, at: act.at };
    const steps = this.steps.slice(from);
    this.#spans.push({ target, steps });
    const own = this.#entries.slice(0, this.#entries.indexOf(act) + 1);
    for (const step of steps) for (const entry of step.entries) this.#again(entry, act, fails, loop);
    for (const entry of own) this.#again(entry, act, fails, loop);
  }

  #again(entry: PlanEntry, back: PlanAct, fails: BuildSet, loop: Loop): void {
    if (entry.is !== 'act' || entry.loop !== undefined) return;
    const again = { ...entry, where: entry.where.and(fails), loop };
    if (entry === back) this.#entries.push({ ...again, where: fails, fails: this.unit.space.nothing });
    else if (!again.where.isEmpty) this.#entries.push({ ...again, fails: again.fails.and(fails) });
  }

  #fork(taken: string, notTaken: string, of: ForkOrigin): BuildSet {
    const index = this.before.forksBefore + this.#forks.length;
    this.#forks.push({ index, taken, notTaken, of });
    return this.unit.space.fork(index);
  }
}

/** What a result is called where the ways are told apart by it. */
function nameOf(instruction: Instruction, { family, procedure }: UnitModel): string {
  const [id] = objectIds(instruction);
  const { limits = [], readings = [], balanceGroups = [] } = family.value;
  const own = procedure.value.readings ?? [];
  const named = [...limits, ...readings, ...own, ...balanceGroups].find((one) => one.id.id === id)?.value.name?.text;
  if (named !== undefined) return `the ${named}`;
  return id !== undefined && family.part(id) !== undefined ? `the ${family.nameOf(id)}` : 'the check';
}

/** What a check wants to be true, without its full stop. */
function sentenceOf(instruction: Instruction, { family }: UnitModel): string | undefined {
  if (instruction.verb !== 'check' || instruction.check === undefined) return undefined;
  const { check } = instruction;
  const id = check.is === 'ref' ? check.ref.id : undefined;
  const said = check.is === 'ref' ? family.value.checks?.find((one) => one.id.id === id)?.value.say : check.prose;
  return said?.text.trim().replace(/\.$/, '');
}
