import { nestedInstructions, objectIds } from '../analysis/instructions';
import type { InstructionView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { InspectInstruction, Instruction, Step } from '../model/generated/types';
import { type Asked, askedBy } from './decisions';
import { areSameNames, type NamesKnown } from './namesKnown';
import { neverRenewed } from './neverRenewed';
import { isResolved, isStepResolved, isWhole } from './resolved';
import type { Fork, ForkOrigin } from './trace';
import type { UnitModel } from './unitModel';
import type { Loop, PlanAct, PlanEntry, WalkPlan } from './walkPlan';

/** Lays out the walk of a procedure: its instructions in the order in which they come, on every way. */
export function planOf(unit: UnitModel): WalkPlan {
  return new Layout(unit).plan();
}

/** What a step was laid out as, and all that this depended on besides its text. */
interface LaidOut {
  readonly names: NamesKnown;
  readonly where: BuildSet;
  readonly dead: BuildSet;
  readonly fork: number;
  readonly entries: readonly PlanEntry[];
  readonly forks: readonly Fork[];
  readonly deadAfter: BuildSet;
}

const laidOut = new WeakMap<Step, LaidOut>();

type IfNot = NonNullable<InspectInstruction['ifNot']>;

class Layout {
  readonly #entries: PlanEntry[] = [];
  readonly #forks: Fork[] = [];
  readonly #loops: Loop[] = [];
  /** What the last step was laid out as depends on more than its own text. */
  #reachesOut = false;
  /** Where each step begins among the entries. */
  readonly #begins = new Map<string, number>();
  /** The ways on which the work has been broken off. */
  #dead: BuildSet;

  constructor(readonly unit: UnitModel) {
    this.#dead = neverRenewed(unit);
  }

  plan(): WalkPlan {
    const { unit } = this;
    const { procedure, space } = unit;
    const torn = new Set(procedure.document.problems.map((problem) => problem.range.item));
    for (const view of procedure.steps) {
      if (torn.has(view.step.node.item) || !isStepResolved(view, unit)) this.#entries.push({ is: 'gap' });
      if (!this.#begins.has(view.id)) this.#begins.set(view.id, this.#entries.length);
      this.#stepOrRemembered(view);
    }
    const { starts, ends } = procedure.value;
    return {
      unit,
      entries: this.#entries,
      forks: this.#forks,
      loops: this.#loops,
      alive: space.everything.minus(this.#dead),
      whole: isWhole(unit),
      startsAndEnds: `${starts?.id} ${ends?.id}`,
      stores: [...new Set([...procedure.consumables.values()].map((item) => item.document))],
    };
  }

  /** A step whose text, builds and forks are as they were is laid out as it was. Loops reach beyond their step. */
  #stepOrRemembered(view: StepView): void {
    const { step, where } = view;
    const known = laidOut.get(step);
    const before = { names: this.unit.names, where, dead: this.#dead, fork: this.#forks.length };
    const isSame = known?.where === where && known.dead === before.dead && known.fork === before.fork;
    if (isSame && areSameNames(known.names, before.names)) {
      this.#entries.push(...known.entries);
      this.#forks.push(...known.forks);
      this.#dead = known.deadAfter;
      return;
    }
    const entry = this.#entries.length;
    this.#reachesOut = askedBy(view.phase).length > 0;
    this.#step(view);
    if (this.#reachesOut) return;
    const [entries, forks] = [this.#entries.slice(entry), this.#forks.slice(before.fork)];
    laidOut.set(step, { ...before, entries, forks, deadAfter: this.#dead });
  }

  #step(view: StepView): void {
    let within = view.where.minus(this.#dead);
    if (view.step.optional?.value === true && !within.isEmpty) {
      const title = view.step.title?.text ?? view.id;
      const of = { is: 'optional', step: view.step } as const;
      within = within.minus(this.#fork(`step "${title}" is left out`, `step "${title}" is done`, of));
    }
    const asked = askedBy(view.phase, view.step);
    for (const one of view.instructions) if (!one.nested) this.#act(view, one, within, asked);
  }

  #act(step: StepView, { instruction, where }: InstructionView, within: BuildSet, asked: readonly Asked[]): void {
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
      step,
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
    this.#otherWay(step, instruction, fails);
    if (ifNot.goTo !== undefined) this.#goBack(act, ifNot.goTo.id, fails);
    else if (ifNot.reject?.value === true) this.#dead = this.#dead.or(fails);
  }

  /** Where the work goes another way because a result is not right. Without further instructions there is one way only. */
  #failing(instruction: Instruction, ifNot: IfNot, where: BuildSet): BuildSet {
    if ((ifNot.do ?? []).length === 0 && ifNot.goTo === undefined) return this.unit.space.nothing;
    const said = sentenceOf(instruction, this.unit);
    const what = this.#nameOf(instruction);
    const [taken, notTaken] =
      said === undefined
        ? [`${what} is not right`, `${what} is right`]
        : [`"${said}" does not hold`, `"${said}" holds`];
    return where.and(this.#fork(taken, notTaken, { is: 'result', instruction }));
  }

  #otherWay(step: StepView, instruction: Instruction, fails: BuildSet): void {
    const nested = new Set(nestedInstructions(instruction));
    for (const one of step.instructions) if (nested.has(one.instruction)) this.#act(step, one, fails, []);
  }

  /** Walks what lies between the target and the instruction once more. What goes back within it does so only once. */
  #goBack(act: PlanAct, target: string, fails: BuildSet): void {
    this.#reachesOut = true;
    const from = this.#begins.get(target);
    if (from === undefined) {
      // A step that is nowhere is told as an unknown id.
      if (this.unit.procedure.step(target) === undefined) return;
      this.#entries.push({ is: 'lost-loop', target, where: fails, at: act.at });
      return;
    }
    const loop = this.#loops.push({ target, at: act.at }) - 1;
    const until = this.#entries.indexOf(act);
    const { nothing } = this.unit.space;
    for (const entry of this.#entries.slice(from, until + 1)) {
      if (entry.is !== 'act' || entry.loop !== undefined) continue;
      const again = { ...entry, where: entry.where.and(fails), loop };
      if (entry === act) this.#entries.push({ ...again, where: fails, fails: nothing });
      else if (!again.where.isEmpty) this.#entries.push({ ...again, fails: again.fails.and(fails) });
    }
  }

  #fork(taken: string, notTaken: string, of: ForkOrigin): BuildSet {
    const index = this.#forks.length;
    this.#forks.push({ index, taken, notTaken, of });
    return this.unit.space.fork(index);
  }

  #nameOf(instruction: Instruction): string {
    const [id] = objectIds(instruction);
    const { family } = this.unit;
    const { limits = [], readings = [], balanceGroups = [] } = family.value;
    const own = this.unit.procedure.value.readings ?? [];
    const named = [...limits, ...readings, ...own, ...balanceGroups].find((one) => one.id.id === id)?.value.name?.text;
    if (named !== undefined) return `the ${named}`;
    return id !== undefined && family.part(id) !== undefined ? `the ${family.nameOf(id)}` : 'the check';
  }
}

/** What a check wants to be true, without its full stop. */
function sentenceOf(instruction: Instruction, { family }: UnitModel): string | undefined {
  if (instruction.verb !== 'check' || instruction.check === undefined) return undefined;
  const { check } = instruction;
  const id = check.is === 'ref' ? check.ref.id : undefined;
  const said = check.is === 'ref' ? family.value.checks?.find((one) => one.id.id === id)?.value.say : check.prose;
  return said?.text.trim().replace(/\.$/, '');
}
