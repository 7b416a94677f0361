import { nearest } from '../text/near';
import { type BuildFacts, type BuildFactsProblem, type OutcomeFact, type SoundFacts, soundFacts } from './buildFacts';
import { BuildSet, type BuildSetOwner } from './buildSet';
import { type Aspect, BuildVariables } from './buildVariables';
import { type ConditionAtom, type ConditionExpr, conditionAtoms, conditionAtomText } from './condition';
import { ALWAYS, DecisionDiagram, type DiagramNode, NEVER } from './decisionDiagram';
import { existingBuilds } from './existence';
import { nearValues } from './nearValues';

/** The unit that an option id in a condition speaks of. */
export type UnitState = 'finished' | 'received';

/** A name in a condition that nothing has. It counts as never true. */
export interface UnknownName {
  readonly atom: ConditionAtom;
  /** As written: `wheel-45`, `arrives=wheel-45`, `nut-hand=lefft`. */
  readonly text: string;
  /** What may have been meant, as it would be written; nearest first, at most three. */
  readonly near: readonly string[];
}

/**
 * All builds and outcomes that a family, within what a procedure covers and adds, allows. Conditions become sets of
 * them, decided symbolically: what no condition looks at costs nothing, however many options and outcomes there are.
 */
export class BuildSpace implements BuildSetOwner {
  readonly diagram = new DecisionDiagram();
  readonly facts: SoundFacts;
  readonly variables: BuildVariables;
  readonly existing: DiagramNode;
  /** All that exists; never empty, for a unit without any option always exists. */
  readonly everything: BuildSet;
  readonly nothing: BuildSet;
  private readonly sets = new Map<DiagramNode, BuildSet>();
  private readonly outcomeNodes = new Map<string, ReadonlyMap<string, DiagramNode>>();
  private knownProblems: readonly BuildFactsProblem[] | undefined;

  constructor(facts: BuildFacts) {
    this.facts = soundFacts(facts);
    this.variables = new BuildVariables(this.diagram, this.facts);
    this.existing = existingBuilds(this.diagram, this.facts, this.variables);
    this.everything = this.setWithin(this.existing);
    this.nothing = this.setWithin(NEVER);
  }

  /** The one object for the part of `node` that exists. */
  setOf(node: DiagramNode): BuildSet {
    return this.setWithin(this.diagram.and(node, this.existing));
  }

  setWithin(key: DiagramNode): BuildSet {
    let set = this.sets.get(key);
    if (set === undefined) {
      set = new BuildSet(this, key);
      this.sets.set(key, set);
    }
    return set;
  }

  /** Where a condition holds. `as: 'received'` reads an option id as "the unit arrives with it". */
  set(expr: ConditionExpr, as: UnitState = 'finished'): BuildSet {
    return this.setOf(this.nodeOf(expr, as));
  }

  union(sets: Iterable<BuildSet>): BuildSet {
    let result = this.nothing;
    for (const set of sets) result = result.or(set);
    return result;
  }

  /** Where the work takes the side way at a fork; forks are numbered by who walks the work. */
  fork(index: number): BuildSet {
    return this.setOf(this.variables.fork(index));
  }

  /** Where the bench can find something out at all: the `when` of an outcome; empty where there is no such outcome. */
  outcomeExists(name: string): BuildSet {
    return this.union([...this.valuesOf(name).values()].map((node) => this.setOf(node)));
  }

  /** The names in a condition that nothing has, in the order written. An id that is known but not covered is known. */
  unknownNames(expr: ConditionExpr): UnknownName[] {
    return [...conditionAtoms(expr)].filter((atom) => !this.knows(atom)).map((atom) => this.unknownName(atom));
  }

  /** What is wrong with the facts themselves. */
  get problems(): readonly BuildFactsProblem[] {
    this.knownProblems ??= [...this.facts.problems, ...this.unknownWhens(), ...this.impossibleOptions()];
    return this.knownProblems;
  }

  /** What a set looks at beyond existing at all: variants, options and outcomes, in the diagram's order. */
  aspectsOf(set: BuildSet): Aspect[] {
    return [...new Set(this.diagram.support(set.distinction).map((level) => this.variables.aspectOf(level)))];
  }

  /** The outcomes that decide whether a build is in the set: what the bench must have found before it can be known. */
  outcomesOf(set: BuildSet): string[] {
    return this.aspectsOf(set).flatMap((aspect) => (aspect.kind === 'outcome' ? [aspect.id] : []));
  }

  /** The set with its outcomes open, or some of them: every build for which it may come true. */
  withOutcomesOpen(set: BuildSet, which: (outcome: string) => boolean = () => true): BuildSet {
    const isOpen = (level: number): boolean => {
      const aspect = this.variables.aspectOf(level);
      return aspect.kind === 'outcome' && which(aspect.id);
    };
    return this.setOf(this.diagram.exists(set.key, isOpen));
  }

  /** Where an outcome decides whether a build is in the set, so that it must be known before anybody can tell. */
  dependsOn(set: BuildSet, outcome: string): BuildSet {
    const opened = (one: BuildSet): BuildSet => this.withOutcomesOpen(one, (id) => id === outcome);
    return opened(set).and(opened(set.complement())).and(this.outcomeExists(outcome));
  }

  private nodeOf(expr: ConditionExpr, as: UnitState): DiagramNode {
    switch (expr.kind) {
      case 'always':
        return ALWAYS;
      case 'is':
        return this.variables.variants.get(expr.id) ?? this.optionNode(expr.id, as);
      case 'arrives':
        return this.optionNode(expr.id, 'received');
      case 'outcome':
        return this.valuesOf(expr.name).get(expr.value) ?? NEVER;
      case 'all':
        return this.diagram.all(expr.of.map((part) => this.nodeOf(part, as)));
      case 'any':
        return this.diagram.any(expr.of.map((part) => this.nodeOf(part, as)));
      case 'none':
        return this.diagram.not(this.diagram.any(expr.of.map((part) => this.nodeOf(part, as))));
    }
  }

  private optionNode(id: string, as: UnitState): DiagramNode {
    const nodes = this.variables.options.get(id);
    return (as === 'finished' ? nodes?.finished : nodes?.arrives) ?? NEVER;
  }

  /**
   * The values of an outcome, each within the outcome's own condition, which is always read for the finished unit: what
   * the bench can find does not depend on who asks. Made on first use.
   */
  private valuesOf(name: string): ReadonlyMap<string, DiagramNode> {
    let values = this.outcomeNodes.get(name);
    if (values === undefined) {
      const outcome = this.facts.outcomes.get(name);
      values = outcome === undefined || outcome.impossible ? new Map() : this.makeValues(outcome);
      this.outcomeNodes.set(name, values);
    }
    return values;
  }

  private makeValues(outcome: OutcomeFact): Map<string, DiagramNode> {
    const when = this.nodeOf(outcome.when, 'finished');
    const choices = this.variables.outcomeChoices(outcome);
    return new Map(outcome.values.map((value, index) => [value, this.diagram.and(when, choices[index] ?? NEVER)]));
  }

  private knows(atom: ConditionAtom): boolean {
    const { knownVariants, options, outcomes } = this.facts;
    if (atom.kind === 'is') return knownVariants.has(atom.id) || options.has(atom.id);
    if (atom.kind === 'arrives') return options.has(atom.id);
    return outcomes.get(atom.name)?.values.includes(atom.value) === true;
  }

  private unknownName(atom: ConditionAtom): UnknownName {
    const { knownVariants, options, outcomes } = this.facts;
    const text = conditionAtomText(atom);
    if (atom.kind === 'is') return { atom, text, near: nearest(atom.id, [...knownVariants.keys(), ...options.keys()]) };
    if (atom.kind === 'arrives') {
      return { atom, text, near: nearest(atom.id, options.keys()).map((id) => `arrives=${id}`) };
    }
    const values = new Map([...outcomes.values()].map((known) => [known.id, known.values]));
    return { atom, text, near: nearValues(atom.name, atom.value, values) };
  }

  private unknownWhens(): BuildFactsProblem[] {
    return [...this.facts.outcomes.values()].flatMap(({ id, when }) =>
      this.unknownNames(when).map(
        ({ text }) => ({ kind: 'unknown-name', name: text, owner: id, key: 'when' }) as const,
      ),
    );
  }

  /** Options ruled out by a name already reported are left out, since one cause gives one problem. */
  private impossibleOptions(): BuildFactsProblem[] {
    const named = new Set(this.facts.problems.map((problem) => (problem.kind === 'unknown-name' ? problem.owner : '')));
    return [...this.variables.options].flatMap(([id, { finished, arrives }]) => {
      const possible = this.diagram.and(this.diagram.or(finished, arrives), this.existing) !== NEVER;
      if (possible || (finished === NEVER && arrives === NEVER) || named.has(id)) return [];
      return [{ kind: 'option-never-exists', id } as const];
    });
  }
}
