import type { ProcedureView } from '../../analysis/procedureView';
import { type BuildCube, type BuildSet, type BuildTerm, type ConditionExpr, coverOf } from '../../builds';
import type { Alternative, Phrases, Way } from '../sentences/language';
import type { Condition } from '../sheet';
import type { Names } from './names';

/** Puts into words when something applies, leaving out all that the reader already knows. */
export class ConditionWords {
  constructor(
    private readonly procedure: ProcedureView,
    private readonly phrases: Phrases,
    private readonly names: Names,
    private readonly ways: (fork: number, isTaken: boolean) => Way | undefined,
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
    const options = (kind: 'finished' | 'arrival') =>
      cube.flatMap((term) =>
        term.kind === kind ? [{ option: this.names.option(term.id), present: term.present }] : [],
      );
    return {
      variants: cube.flatMap((term) => (term.kind === 'variants' ? term.ids.map((id) => this.names.variant(id)) : [])),
      finished: options('finished'),
      arrived: options('arrival'),
      found: cube.flatMap((term) =>
        term.kind === 'outcome'
          ? [this.#isPart(term.id) ? this.#renewal(term.id, term.values) : this.#identified(term.id, term.values)]
          : [],
      ),
      ways: cube.flatMap((term) => (term.kind === 'fork' ? (this.ways(Number(term.id), term.present) ?? []) : [])),
    };
  }

  #renewal(id: string, values: readonly string[]): Alternative['found'][number] {
    return { what: this.names.part(id, this.procedure.space.everything), values, kind: 'renewal' };
  }

  #identified(id: string, values: readonly string[]): Alternative['found'][number] {
    return { what: this.names.value(id), values, kind: 'identified' };
  }

  #isPart(id: string): boolean {
    return this.procedure.family?.part(id) !== undefined;
  }
}

function wayOf(set: BuildSet, isTaken: boolean): BuildSet {
  return isTaken ? set : set.complement();
}
