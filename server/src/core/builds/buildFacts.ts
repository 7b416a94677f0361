import { type ConditionExpr, conditionAtoms, RE_USED, RENEWED } from './condition';

/** What a family, and a procedure where there is one, say about builds and outcomes. It may be broken anywhere. */
export interface BuildFacts {
  variants: readonly { id: string; name: string }[];
  /** `variants` absent or empty: the option goes with every variant. */
  options: readonly {
    id: string;
    name: string;
    variants?: readonly string[];
    needs: readonly string[];
    excludes: readonly string[];
  }[];
  identify: readonly { id: string; name: string; values: readonly string[]; when: ConditionExpr }[];
  /** Parts renewed on condition: their outcome is `re-used` or `renewed`. */
  renewable: readonly { id: string; name: string; when: ConditionExpr }[];
  /**
   * What a procedure covers. A list that is absent means all of the family, and so does a list of variants none of
   * which exists: were a half-typed name to leave no build at all, every check would fall silent.
   */
  covers?: { variants?: readonly string[]; options?: readonly string[] };
  /** What a procedure may add. Absent: nothing; but every option where `covers` is absent too, the family on its own. */
  adds?: readonly string[];
}

/** What is wrong with the facts. None of it stops the rest from being decided. */
export type BuildFactsProblem =
  /** The first of the two counts. */
  | { kind: 'duplicate-id'; id: string }
  /** A name that nothing has: it counts as never true. `owner` is the id of what names it, '' for a procedure. */
  | {
      kind: 'unknown-name';
      name: string;
      owner: string;
      key: 'needs' | 'excludes' | 'variants' | 'covers' | 'adds' | 'when';
    }
  /** Ignored, as the option could not exist at all. */
  | { kind: 'excludes-itself'; id: string }
  /** Its condition leads back to itself, so the bench could never find it: it counts as never found. */
  | { kind: 'outcome-cycle'; id: string }
  /** Something to identify that lists no value. */
  | { kind: 'outcome-without-values'; id: string }
  /** `needs`, `excludes` and `variants` contradict each other. */
  | { kind: 'option-never-exists'; id: string };

export interface VariantFact {
  readonly id: string;
  readonly name: string;
}

/** An option with only names that exist. `impossible`: it needs or is for something that does not exist. */
export interface OptionFact {
  readonly id: string;
  readonly name: string;
  readonly variants: readonly string[] | 'every';
  readonly needs: readonly string[];
  /** Both ways round, whoever said it. */
  readonly excludes: ReadonlySet<string>;
  readonly impossible: boolean;
  readonly mayArrive: boolean;
  readonly mayBeAdded: boolean;
}

export interface OutcomeFact {
  readonly id: string;
  readonly name: string;
  readonly values: readonly string[];
  readonly when: ConditionExpr;
  readonly impossible: boolean;
}

/** The facts made sound: ids unique, references resolved, cycles cut. */
export interface SoundFacts {
  /** Those that the procedure covers. */
  readonly variants: readonly VariantFact[];
  /** All of the family, in its order. */
  readonly knownVariants: ReadonlyMap<string, VariantFact>;
  readonly options: ReadonlyMap<string, OptionFact>;
  readonly outcomes: ReadonlyMap<string, OutcomeFact>;
  readonly problems: readonly BuildFactsProblem[];
}

/** A family that names no variant is one kind of unit; it still has builds, by its options. */
const ONLY_VARIANT: VariantFact = { id: '', name: '' };

export function soundFacts(facts: BuildFacts): SoundFacts {
  const problems: BuildFactsProblem[] = [];
  const taken = new Set<string>();
  const knownVariants = firstById(facts.variants, taken, problems);
  const options = soundOptions(facts, firstById(facts.options, taken, problems), knownVariants, problems);
  return {
    variants: coveredVariants(facts, knownVariants, problems),
    knownVariants,
    options,
    outcomes: soundOutcomes(facts, problems),
    problems,
  };
}

function firstById<T extends { id: string }>(
  items: readonly T[],
  taken: Set<string>,
  problems: BuildFactsProblem[],
): Map<string, T> {
  const kept = new Map<string, T>();
  for (const item of items) {
    if (taken.has(item.id)) problems.push({ kind: 'duplicate-id', id: item.id });
    else kept.set(item.id, item);
    taken.add(item.id);
  }
  return kept;
}

function coveredVariants(
  facts: BuildFacts,
  known: ReadonlyMap<string, VariantFact>,
  problems: BuildFactsProblem[],
): readonly VariantFact[] {
  const named = resolve(facts.covers?.variants ?? [], known, '', 'covers', problems);
  const covered = [...known.values()].filter(({ id }) => named.includes(id));
  if (covered.length > 0) return covered;
  return known.size > 0 ? [...known.values()] : [ONLY_VARIANT];
}

function soundOptions(
  facts: BuildFacts,
  options: ReadonlyMap<string, BuildFacts['options'][number]>,
  variants: ReadonlyMap<string, unknown>,
  problems: BuildFactsProblem[],
): Map<string, OptionFact> {
  const excluded = exclusions(options, problems);
  const arriving = facts.covers?.options ?? [...options.keys()];
  const arrives = resolve(arriving, options, '', 'covers', problems);
  const added = facts.adds ?? (facts.covers === undefined ? [...options.keys()] : []);
  const adds = resolve(added, options, '', 'adds', problems);
  const sound = new Map<string, OptionFact>();
  for (const option of options.values()) {
    const { id, name } = option;
    const needs = resolve(option.needs, options, id, 'needs', problems);
    const named = option.variants ?? [];
    const allowed = resolve(named, variants, id, 'variants', problems);
    sound.set(id, {
      id,
      name,
      variants: named.length > 0 ? allowed : 'every',
      needs,
      excludes: excluded.get(id) ?? new Set(),
      impossible: needs.length < option.needs.length,
      mayArrive: arrives.includes(id),
      mayBeAdded: adds.includes(id),
    });
  }
  return sound;
}

/** Two parts that cannot be in one unit exclude each other, whichever of the two says so. */
function exclusions(
  options: ReadonlyMap<string, BuildFacts['options'][number]>,
  problems: BuildFactsProblem[],
): Map<string, Set<string>> {
  const excluded = new Map([...options.keys()].map((id) => [id, new Set<string>()]));
  for (const { id, excludes } of options.values()) {
    for (const other of resolve(excludes, options, id, 'excludes', problems)) {
      if (other === id) {
        problems.push({ kind: 'excludes-itself', id });
        continue;
      }
      excluded.get(id)?.add(other);
      excluded.get(other)?.add(id);
    }
  }
  return excluded;
}

function resolve(
  names: readonly string[],
  known: ReadonlyMap<string, unknown>,
  owner: string,
  key: 'needs' | 'excludes' | 'variants' | 'covers' | 'adds',
  problems: BuildFactsProblem[],
): string[] {
  return names.filter((name) => {
    if (known.has(name)) return true;
    problems.push({ kind: 'unknown-name', name, owner, key });
    return false;
  });
}

function soundOutcomes(facts: BuildFacts, problems: BuildFactsProblem[]): Map<string, OutcomeFact> {
  const renewable = facts.renewable.map((part) => ({ ...part, values: [RE_USED, RENEWED] }));
  const outcomes = firstById([...facts.identify, ...renewable], new Set(), problems);
  const sound = new Map<string, OutcomeFact>();
  for (const { id, name, values, when } of outcomes.values()) {
    const cyclic = leadsBackTo(id, when, outcomes, new Set());
    if (cyclic) problems.push({ kind: 'outcome-cycle', id });
    if (values.length === 0) problems.push({ kind: 'outcome-without-values', id });
    sound.set(id, { id, name, values: [...new Set(values)], when, impossible: cyclic || values.length === 0 });
  }
  return sound;
}

function leadsBackTo(
  id: string,
  when: ConditionExpr,
  outcomes: ReadonlyMap<string, { when: ConditionExpr }>,
  seen: Set<string>,
): boolean {
  for (const atom of conditionAtoms(when)) {
    if (atom.kind !== 'outcome') continue;
    if (atom.name === id) return true;
    const next = outcomes.get(atom.name);
    if (next === undefined || seen.has(atom.name)) continue;
    seen.add(atom.name);
    if (leadsBackTo(id, next.when, outcomes, seen)) return true;
  }
  return false;
}
