import type { BuildSet } from './buildSet';
import type { BuildSpace } from './buildSpace';
import type { Aspect } from './buildVariables';
import { type DiagramNode, NEVER } from './decisionDiagram';

/** One thing said about a build or outcome. */
export type BuildTerm =
  /** It is one of these variants, in the family's order. */
  | { readonly kind: 'variants'; readonly ids: readonly string[] }
  /** `finished`: the option is, or is not, in the finished unit; `arrival`: in the unit as received. */
  | { readonly kind: 'finished' | 'arrival'; readonly id: string; readonly present: boolean }
  /** The bench found one of these values. */
  | { readonly kind: 'outcome'; readonly id: string; readonly values: readonly string[] }
  /** The work takes the side way at the fork of this number, or does not. */
  | { readonly kind: 'fork'; readonly id: string; readonly present: boolean };

/** Terms that hold together: variants first, then options, arrivals and outcomes, each in the family's order. */
export type BuildCube = readonly BuildTerm[];

/** A set as an "or" of cubes. Not `complete` where it would take more cubes than anyone would read. */
export interface BuildCover {
  readonly cubes: readonly BuildCube[];
  readonly complete: boolean;
}

interface Choice {
  readonly aspect: Aspect;
  readonly values: readonly { readonly id: string; readonly node: DiagramNode }[];
}

/** A choice narrowed to some of its values, by index. */
interface Narrowed {
  readonly choice: Choice;
  readonly chosen: ReadonlySet<number>;
}

const MOST_CUBES = 16;
/** A variant that follows from the rest of a cube is still named, since a fitter looks there first; but not a long list. */
const MOST_IMPLIED_VARIANTS = 3;
const ABSENT = 0;

/**
 * A set in few and short cubes: each says only what tells it from everything that exists, no term of it can be left
 * out, and no cube lies within the others. The order follows the facts alone, so the same set always reads the same.
 */
export function coverOf(set: BuildSet, space: BuildSpace): BuildCover {
  // A set of a space is one object, and a dozen findings may hold for the same builds.
  const known = covers.get(set) ?? findCover(set, space);
  covers.set(set, known);
  return known;
}

const covers = new WeakMap<BuildSet, BuildCover>();

function findCover(set: BuildSet, space: BuildSpace): BuildCover {
  const choices = relevantChoices(set, space);
  const primes: (readonly Narrowed[])[] = [];
  let rest = set.key;
  while (rest !== NEVER && primes.length < MOST_CUBES) {
    const prime = widened(shortened(pointOf(rest, choices, space), set, space), set, space);
    primes.push(prime);
    rest = space.diagram.minus(rest, cubeNode(prime, space));
  }
  const needed = withoutRedundant(primes, space);
  return { cubes: needed.map((prime) => termsOf(prime, space)), complete: rest === NEVER };
}

/** What the set looks at, and what decides whether those outcomes exist at all. */
function relevantChoices(set: BuildSet, space: BuildSpace): Choice[] {
  const names = new Set(space.outcomesOf(set));
  const aspects = new Map<string, Aspect>();
  const add = (aspect: Aspect): void => void aspects.set(aspectKey(aspect), aspect);
  for (const aspect of space.aspectsOf(set)) add(aspect);
  for (const name of names) {
    for (const aspect of space.aspectsOf(space.outcomeExists(name))) {
      add(aspect);
      if (aspect.kind === 'outcome') names.add(aspect.id);
    }
  }
  const forks = [...aspects.values()].filter((aspect) => aspect.kind === 'fork');
  return [...allAspects(space), ...forks.sort((a, b) => Number(a.id) - Number(b.id))]
    .filter((aspect) => aspects.has(aspectKey(aspect)))
    .map((aspect) => choiceOf(aspect, space));
}

function aspectKey(aspect: Aspect): string {
  return aspect.kind === 'variant' ? aspect.kind : `${aspect.kind} ${aspect.id}`;
}

function allAspects(space: BuildSpace): Aspect[] {
  const options = [...space.facts.options.keys()];
  return [
    { kind: 'variant' },
    ...options.map((id) => ({ kind: 'finished', id }) as const),
    ...options.map((id) => ({ kind: 'arrival', id }) as const),
    ...[...space.facts.outcomes.keys()].map((id) => ({ kind: 'outcome', id }) as const),
  ];
}

function choiceOf(aspect: Aspect, space: BuildSpace): Choice {
  if (aspect.kind === 'variant') {
    return { aspect, values: [...space.variables.variants].map(([id, node]) => ({ id, node })) };
  }
  if (aspect.kind === 'outcome') {
    const values = space.facts.outcomes.get(aspect.id)?.values ?? [];
    const nodeOf = (value: string) => space.set({ kind: 'outcome', name: aspect.id, value }).key;
    return { aspect, values: values.map((value) => ({ id: value, node: nodeOf(value) })) };
  }
  const present = presentNode(aspect, space);
  return {
    aspect,
    values: [
      { id: 'absent', node: space.diagram.not(present) },
      { id: 'present', node: present },
    ],
  };
}

function presentNode(aspect: Exclude<Aspect, { kind: 'variant' }>, space: BuildSpace): DiagramNode {
  if (aspect.kind === 'fork') return space.fork(Number(aspect.id)).key;
  const nodes = space.variables.options.get(aspect.id);
  return (aspect.kind === 'finished' ? nodes?.finished : nodes?.arrives) ?? NEVER;
}

/**
 * The first build and outcome of `rest`, in the order of the facts, absent before present. An outcome that does not
 * exist there is left out: the builds, chosen before it, already say so.
 */
function pointOf(rest: DiagramNode, choices: readonly Choice[], space: BuildSpace): Narrowed[] {
  const point: Narrowed[] = [];
  let node = rest;
  for (const choice of choices) {
    const index = choice.values.findIndex((value) => space.diagram.and(node, value.node) !== NEVER);
    if (index < 0) continue;
    node = space.diagram.and(node, choice.values[index]?.node ?? NEVER);
    point.push({ choice, chosen: new Set([index]) });
  }
  return point;
}

function cubeNode(cube: readonly Narrowed[], space: BuildSpace): DiagramNode {
  const terms = cube.map(({ choice, chosen }) =>
    space.diagram.any([...chosen].map((index) => choice.values[index]?.node ?? NEVER)),
  );
  return space.diagram.and(space.existing, space.diagram.all(terms));
}

/** Drops every term that the others make needless, the least telling first. */
function shortened(point: readonly Narrowed[], set: BuildSet, space: BuildSpace): readonly Narrowed[] {
  let cube = point;
  for (const term of [...point].sort((a, b) => tellingOf(a) - tellingOf(b))) {
    const without = cube.filter((other) => other !== term);
    if (space.diagram.implies(cubeNode(without, space), set.key)) cube = without;
  }
  return cube;
}

/** People name a unit by what it has rather than by what it lacks, and by its variant before anything else. */
function tellingOf({ choice, chosen }: Narrowed): number {
  const { kind } = choice.aspect;
  if (kind === 'variant') return 5;
  if (kind === 'outcome' || kind === 'fork') return 2;
  if (chosen.has(ABSENT)) return kind === 'finished' ? 0 : 1;
  return kind === 'finished' ? 3 : 4;
}

/** Lets every term take in all the values that keep the cube within the set. */
function widened(cube: readonly Narrowed[], set: BuildSet, space: BuildSpace): readonly Narrowed[] {
  let wide = cube;
  for (const [place, { choice }] of cube.entries()) {
    for (const index of choice.values.keys()) {
      const tried = wide.map((term, at) =>
        at === place ? { choice, chosen: new Set([...term.chosen, index]) } : term,
      );
      if (space.diagram.implies(cubeNode(tried, space), set.key)) wide = tried;
    }
  }
  return wide;
}

function withoutRedundant(primes: readonly (readonly Narrowed[])[], space: BuildSpace): (readonly Narrowed[])[] {
  let kept = primes.map((prime) => ({ prime, node: cubeNode(prime, space) }));
  for (const cube of [...kept]) {
    const others = kept.filter((other) => other !== cube);
    if (space.diagram.implies(cube.node, space.diagram.any(others.map(({ node }) => node)))) kept = others;
  }
  return kept.map(({ prime }) => prime);
}

/** Only values that can occur are named: widening may have taken in some that the rest of the cube rules out. */
function termsOf(cube: readonly Narrowed[], space: BuildSpace): BuildCube {
  const node = cubeNode(cube, space);
  const variants = possibleVariants(node, cube, space);
  const others = cube.flatMap(({ choice, chosen }) => {
    const possible = [...chosen].sort((a, b) => a - b).flatMap((index) => choice.values[index] ?? []);
    return termOf(
      choice.aspect,
      possible.filter((value) => space.diagram.and(node, value.node) !== NEVER),
    );
  });
  return variants.length === 0 ? others : [{ kind: 'variants', ids: variants }, ...others];
}

function possibleVariants(node: DiagramNode, cube: readonly Narrowed[], space: BuildSpace): string[] {
  const { variants } = space.variables;
  const possible = [...variants].flatMap(([id, own]) => (space.diagram.and(node, own) === NEVER ? [] : [id]));
  if (possible.length === variants.size) return [];
  const said = cube.some(({ choice }) => choice.aspect.kind === 'variant');
  return said || possible.length <= MOST_IMPLIED_VARIANTS ? possible : [];
}

function termOf(aspect: Aspect, values: readonly { id: string }[]): BuildTerm[] {
  if (aspect.kind === 'variant') return [];
  if (aspect.kind === 'outcome') return [{ kind: 'outcome', id: aspect.id, values: values.map(({ id }) => id) }];
  return [{ kind: aspect.kind, id: aspect.id, present: values.some(({ id }) => id === 'present') }];
}
