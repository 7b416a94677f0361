import type { ProcedureView } from '../../analysis/procedureView';
import {
  type BuildCube,
  type BuildSet,
  type BuildTerm,
  type ConditionExpr,
  coverOf,
  type ForkWords,
} from '../../builds';
import type { Alternative, Phrases } from '../sentences/language';
import type { Condition } from '../sheet';

/** Puts into words when something applies, leaving out all that the reader already knows. */
export class ConditionWords {
  /** Options whose presence on arrival was asked for, in the order met. */
  readonly arrivals = new Set<string>();

  constructor(
    private readonly procedure: ProcedureView,
    private readonly phrases: Phrases,
    private readonly forks: ForkWords,
  ) {}

  /** Undefined where it always applies within what is known. Parts with an empty set are for the caller to leave out. */
  condition(where: BuildSet, known: BuildSet): Condition | undefined {
    const clause = this.clause(where, known);
    return clause === undefined ? undefined : { kind: 'outcome', text: this.phrases.onlyWhen(clause) };
  }

  /** The bare clause, such as `the hand of the compressor nut is left`. */
  clause(where: BuildSet, known: BuildSet): string | undefined {
    if (known.isWithin(where)) return undefined;
    const { space } = this.procedure;
    // The condition within what is known, and then without each term that what is known implies: a condition widened
    // over what cannot be here would name variants that the reader does not have.
    const { cubes } = coverOf(where.and(known), space);
    const open = cubes.map((cube) => cube.filter((term) => !known.isWithin(this.#setOf(term))));
    return this.phrases.clause(open.map((cube) => this.#alternative(cube)));
  }

  #setOf(term: BuildTerm): BuildSet {
    const { space } = this.procedure;
    const whole = (exprs: readonly ConditionExpr[]): BuildSet => space.union(exprs.map((expr) => space.set(expr)));
    if (term.kind === 'variants') return whole(term.ids.map((id) => ({ kind: 'is', id })));
    if (term.kind === 'outcome') return whole(term.values.map((value) => ({ kind: 'outcome', name: term.id, value })));
    if (term.kind === 'fork') return wayOf(space.fork(Number(term.id)), term.present);
    const present = space.set({ kind: term.kind === 'finished' ? 'is' : 'arrives', id: term.id });
    return wayOf(present, term.present);
  }

  #alternative(cube: BuildCube): Alternative {
    const { facts } = this.procedure.space;
    const nameOf = (id: string, name: string | undefined) => (name === undefined || name === '' ? id : name);
    const options = (kind: 'finished' | 'arrival') =>
      cube.flatMap((term) =>
        term.kind === kind ? [{ name: nameOf(term.id, facts.options.get(term.id)?.name), present: term.present }] : [],
      );
    for (const term of cube) if (term.kind === 'arrival') this.arrivals.add(term.id);
    return {
      variants: cube.flatMap((term) =>
        term.kind === 'variants' ? term.ids.map((id) => nameOf(id, facts.knownVariants.get(id)?.name)) : [],
      ),
      finished: options('finished'),
      arrived: options('arrival'),
      found: cube.flatMap((term) =>
        term.kind === 'outcome'
          ? [
              {
                name: nameOf(term.id, facts.outcomes.get(term.id)?.name),
                values: term.values,
                kind: this.#isPart(term.id) ? ('renewal' as const) : ('identified' as const),
              },
            ]
          : [],
      ),
      ways: cube.flatMap((term) => (term.kind === 'fork' ? this.#way(Number(term.id), term.present) : [])),
    };
  }

  #way(fork: number, isTaken: boolean): string[] {
    const words = this.forks(fork);
    return words === undefined ? [] : [isTaken ? words.taken : words.notTaken];
  }

  #isPart(id: string): boolean {
    return this.procedure.family?.part(id) !== undefined;
  }
}

function wayOf(set: BuildSet, isTaken: boolean): BuildSet {
  return isTaken ? set : set.complement();
}
