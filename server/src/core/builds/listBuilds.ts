import type { BuildSet } from './buildSet';
import type { BuildSpace } from './buildSpace';
import { ALWAYS, type DiagramNode, NEVER } from './decisionDiagram';

/** One build as a person names it. Outcomes stay open, and so does how the unit arrives where `arrives` is absent. */
export interface Build {
  /** As given on a command line: `v4-28r,cover-44,wheel-44`; with `arrives`, also `arrives=cover-44` or `arrives=none`. */
  readonly id: string;
  /** For people: `V4-28R + 44 mm machined compressor wheel`. */
  readonly label: string;
  readonly variant: string;
  /** The options of the finished unit, in the family's order. */
  readonly finished: readonly string[];
  /** The options of the unit as received, in the family's order. */
  readonly arrives?: readonly string[];
}

export function makeBuild(
  space: BuildSpace,
  variant: string,
  finished: ReadonlySet<string>,
  arrives?: ReadonlySet<string>,
): Build {
  const inOrder = (ids: ReadonlySet<string>) => [...space.facts.options.keys()].filter((id) => ids.has(id));
  const build = { variant, finished: inOrder(finished) };
  if (arrives === undefined) return { ...build, id: buildId(build), label: buildLabel(space, build) };
  const received = { ...build, arrives: inOrder(arrives) };
  return { ...received, id: buildId(received), label: buildLabel(space, received) };
}

type NamedOptions = Pick<Build, 'variant' | 'finished' | 'arrives'>;

function buildId({ variant, finished, arrives }: NamedOptions): string {
  const received = arrives?.length === 0 ? ['none'] : (arrives ?? []);
  const names = [variant, ...finished, ...received.map((id) => `arrives=${id}`)];
  return names.filter((name) => name !== '').join(',');
}

function buildLabel(space: BuildSpace, { variant, finished, arrives }: NamedOptions): string {
  const nameOf = (id: string) => space.facts.knownVariants.get(id)?.name || space.facts.options.get(id)?.name || id;
  const names = [variant, ...finished].filter((id) => id !== '').map(nameOf);
  const label = names.length === 0 ? 'no options' : names.join(' + ');
  if (arrives === undefined) return label;
  return `${label}, received with ${arrives.length === 0 ? 'no options' : arrives.map(nameOf).join(' + ')}`;
}

/**
 * The finished builds of a set for which at least one way of arriving and one outcome lies in it; at most `limit`, the
 * plainest first: by number of options, then in the family's order.
 */
export function buildsOf(set: BuildSet, space: BuildSpace, limit: number): Build[] {
  const finished = finishedOnly(set, space);
  const wanted = Math.min(limit, countFinished(finished, space));
  const builds: Build[] = [];
  for (let size = 0; builds.length < wanted && size <= space.facts.options.size; size += 1) {
    for (const [variant, node] of space.variables.variants) {
      const start = space.diagram.and(finished, node);
      for (const chosen of selections(start, [...space.facts.options.keys()], size, space)) {
        if (builds.length < wanted) builds.push(makeBuild(space, variant, new Set(chosen)));
        else return builds;
      }
    }
  }
  return builds;
}

/** How many finished builds, by variant and options, a set touches; exact up to 2^53. */
export function countBuilds(set: BuildSet, space: BuildSpace): number {
  return countFinished(finishedOnly(set, space), space);
}

function finishedOnly(set: BuildSet, space: BuildSpace): DiagramNode {
  return space.diagram.exists(set.key, (level) => {
    const { kind } = space.variables.aspectOf(level);
    return kind === 'arrival' || kind === 'outcome';
  });
}

/** Several settings of the variant's levels mean one variant; only the one with nothing set after the first counts. */
function countFinished(finished: DiagramNode, space: BuildSpace): number {
  const { diagram, variables } = space;
  let atMostOne = ALWAYS;
  let noneBelow = ALWAYS;
  for (const level of [...variables.variantLevels].reverse()) {
    const set = diagram.variable(level);
    atMostOne = diagram.ifThenElse(set, noneBelow, atMostOne);
    noneBelow = diagram.minus(noneBelow, set);
  }
  const levels = [...variables.variantLevels, ...variables.finishedLevels];
  return diagram.count(diagram.and(finished, atMostOne), levels);
}

/** Every way to have exactly `size` of the options, in their order. */
function* selections(
  node: DiagramNode,
  options: readonly string[],
  size: number,
  space: BuildSpace,
): Generator<string[]> {
  if (node === NEVER || size > options.length) return;
  const [option, ...rest] = options;
  if (option === undefined) {
    yield [];
    return;
  }
  const present = space.variables.options.get(option)?.finished ?? NEVER;
  if (size > 0) {
    const nodeWith = space.diagram.and(node, present);
    for (const more of selections(nodeWith, rest, size - 1, space)) yield [option, ...more];
  }
  yield* selections(space.diagram.minus(node, present), rest, size, space);
}
