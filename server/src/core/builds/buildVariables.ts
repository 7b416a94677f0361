import type { OptionFact, OutcomeFact, SoundFacts } from './buildFacts';
import { ALWAYS, type DecisionDiagram, type DiagramNode, NEVER } from './decisionDiagram';
import { optionOrder } from './optionOrder';

/** One thing that builds and outcomes can differ in, as the levels of the diagram that decide it. */
export type Aspect =
  | { readonly kind: 'variant' }
  | { readonly kind: 'finished' | 'arrival' | 'outcome'; readonly id: string }
  /** Which way the work goes at the fork of this number: the side way or the plain one. */
  | { readonly kind: 'fork'; readonly id: string };

/** An option in the finished unit and in the unit as received. */
export interface OptionNodes {
  readonly finished: DiagramNode;
  readonly arrives: DiagramNode;
}

/**
 * Which level stands for what. Variants come first, since most options ask for one; then the options, the arrival of
 * each right above its presence in the finished unit; last the outcomes, whose levels cost nothing until one is used.
 *
 * A choice among k values takes k-1 levels: the first that is true decides, and none true means the last value. So every
 * setting of the levels is exactly one choice, no rule has to say "exactly one", and a choice nobody looks at leaves no
 * trace in the diagram.
 */
export class BuildVariables {
  readonly variants: ReadonlyMap<string, DiagramNode>;
  readonly options: ReadonlyMap<string, OptionNodes>;
  /** The options in the order of their levels. */
  readonly optionOrder: readonly string[];
  readonly variantLevels: readonly number[];
  private readonly outcomeStart: ReadonlyMap<string, number>;
  private readonly aspects: Aspect[] = [];
  private readonly forkLevels: number[] = [];

  constructor(
    private readonly diagram: DecisionDiagram,
    facts: SoundFacts,
  ) {
    this.variantLevels = this.takeLevels(facts.variants.length - 1, { kind: 'variant' });
    const choices = chooseOne(diagram, this.variantLevels, facts.variants.length);
    this.variants = new Map(facts.variants.map(({ id }, index) => [id, choices[index] ?? NEVER]));
    this.optionOrder = optionOrder(facts.options);
    this.options = this.takeOptions(facts.options);
    this.outcomeStart = this.takeOutcomes(facts.outcomes);
  }

  /** What a level of the diagram belongs to. */
  aspectOf(level: number): Aspect {
    return this.aspects[level] ?? { kind: 'variant' };
  }

  /** The levels of the options in the finished unit. */
  get finishedLevels(): number[] {
    return this.aspects.flatMap(({ kind }, level) => (kind === 'finished' ? [level] : []));
  }

  /** The free choice among the values of an outcome, in their order; its own condition is not in it. */
  outcomeChoices(outcome: OutcomeFact): DiagramNode[] {
    const start = this.outcomeStart.get(outcome.id) ?? 0;
    const levels = Array.from({ length: outcome.values.length - 1 }, (_, index) => start + index);
    return chooseOne(this.diagram, levels, outcome.values.length);
  }

  /** The side way at a fork of the work. Forks come below everything else, and are made as they are asked for. */
  fork(index: number): DiagramNode {
    while (this.forkLevels.length <= index) {
      this.forkLevels.push(this.aspects.push({ kind: 'fork', id: String(this.forkLevels.length) }) - 1);
    }
    return this.diagram.variable(this.forkLevels[index] ?? 0);
  }

  private takeLevels(count: number, aspect: Aspect): number[] {
    return Array.from({ length: Math.max(0, count) }, () => this.aspects.push(aspect) - 1);
  }

  private takeOptions(options: ReadonlyMap<string, OptionFact>): Map<string, OptionNodes> {
    const nodes = new Map<string, OptionNodes>();
    for (const id of this.optionOrder) {
      const option = options.get(id);
      if (option !== undefined) nodes.set(id, this.takeOption(option, mayChange(option, options)));
    }
    return nodes;
  }

  /** An option that is neither fitted nor taken off by the work is in the finished unit when it arrived: one level. */
  private takeOption(option: OptionFact, changes: boolean): OptionNodes {
    const { id, mayArrive } = option;
    const arrives = mayArrive && changes ? this.takeVariable({ kind: 'arrival', id }) : NEVER;
    const finished = mayArrive || changes ? this.takeVariable({ kind: 'finished', id }) : NEVER;
    return { finished, arrives: mayArrive && !changes ? finished : arrives };
  }

  private takeVariable(aspect: Aspect): DiagramNode {
    return this.diagram.variable(this.aspects.push(aspect) - 1);
  }

  private takeOutcomes(outcomes: ReadonlyMap<string, OutcomeFact>): Map<string, number> {
    const starts = new Map<string, number>();
    for (const { id, values } of outcomes.values()) {
      starts.set(id, this.aspects.length);
      this.takeLevels(values.length - 1, { kind: 'outcome', id });
    }
    return starts;
  }
}

/** Whether the work may add the option, or may replace it where it arrived. */
function mayChange(option: OptionFact, options: ReadonlyMap<string, OptionFact>): boolean {
  if (option.mayBeAdded) return true;
  return option.mayArrive && [...option.excludes].some((other) => options.get(other)?.mayBeAdded === true);
}

function chooseOne(diagram: DecisionDiagram, levels: readonly number[], count: number): DiagramNode[] {
  let undecided = ALWAYS;
  const choices: DiagramNode[] = [];
  for (const level of levels) {
    const variable = diagram.variable(level);
    choices.push(diagram.and(undecided, variable));
    undecided = diagram.minus(undecided, variable);
  }
  if (count > 0) choices.push(undecided);
  return choices;
}
