import type { ProcedureView } from '../../analysis/procedureView';
import { type BuildCube, type BuildSet, coverOf } from '../../builds';
import type { Alternative, Phrases } from '../sentences/language';
import type { Condition } from '../sheet';

/** Puts into words when something applies, leaving out all that the reader already knows. */
export class ConditionWords {
  /** Options whose presence on arrival was asked for, in the order met. */
  readonly arrivals = new Set<string>();

  constructor(
    private readonly procedure: ProcedureView,
    private readonly phrases: Phrases,
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
    const said = space.setOf(space.diagram.simplify(where.key, known.key));
    const { cubes } = coverOf(said, space);
    return this.phrases.clause(cubes.map((cube) => this.#alternative(cube, known)));
  }

  #alternative(cube: BuildCube, known: BuildSet): Alternative {
    const { facts } = this.procedure.space;
    const nameOf = (id: string, name: string | undefined) => (name === undefined || name === '' ? id : name);
    const options = (kind: 'finished' | 'arrival') =>
      cube.flatMap((term) =>
        term.kind === kind ? [{ name: nameOf(term.id, facts.options.get(term.id)?.name), present: term.present }] : [],
      );
    for (const term of cube) if (term.kind === 'arrival') this.arrivals.add(term.id);
    return {
      variants: cube.flatMap((term) => (term.kind === 'variants' ? this.#variants(term.ids, known) : [])),
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
    };
  }

  /** A variant that follows from the build is not said again. */
  #variants(ids: readonly string[], known: BuildSet): string[] {
    const { space } = this.procedure;
    const these = space.union(ids.map((id) => space.set({ kind: 'is', id })));
    return known.isWithin(these) ? [] : ids.map((id) => space.facts.knownVariants.get(id)?.name || id);
  }

  #isPart(id: string): boolean {
    return this.procedure.family?.part(id) !== undefined;
  }
}
