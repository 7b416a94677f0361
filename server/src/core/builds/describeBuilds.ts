import { type BuildCube, type BuildTerm, coverOf } from './buildCubes';
import type { BuildSet } from './buildSet';
import type { BuildSpace } from './buildSpace';

const MOST_SHOWN = 3;
const MOST_VARIANTS = 3;

/** What the two ways of a fork are called, to stand behind "when". */
export type ForkWords = (index: number) => { readonly taken: string; readonly notTaken: string } | undefined;

/**
 * A set in words, to stand in a finding: '' where it is everything that exists, 'no build' where it is empty, else for
 * instance "V4-28R with the 44 mm machined compressor wheel, when the hand of the compressor nut is left". At most three
 * alternatives are written out, then "and N more".
 */
export function describeBuilds(
  set: BuildSet,
  space: BuildSpace,
  forks: ForkWords | undefined = () => undefined,
): string {
  if (set.isEverything) return '';
  if (set.isEmpty) return 'no build';
  const { cubes, complete } = coverOf(set, space);
  const shown = cubes.slice(0, MOST_SHOWN).map((cube) => cubeText(cube, space, forks));
  const more = cubes.length - shown.length;
  const tail = complete ? `and ${more} more` : 'and more';
  return more > 0 || !complete ? `${shown.join('; ')}; ${tail}` : shown.join('; or ');
}

function cubeText(cube: BuildCube, space: BuildSpace, forks: ForkWords): string {
  const head = [variantText(cube, space), optionText(cube, space, 'finished', true, 'with')].filter(
    (text) => text !== '',
  );
  const parts = [
    head.join(' '),
    optionText(cube, space, 'finished', false, 'without'),
    optionText(cube, space, 'arrival', true, 'received with'),
    optionText(cube, space, 'arrival', false, 'received without'),
    outcomeText(cube, space, forks),
  ];
  return parts.filter((text) => text !== '').join(', ');
}

function variantText(cube: BuildCube, space: BuildSpace): string {
  const ids = cube.flatMap((term) => (term.kind === 'variants' ? term.ids : []));
  if (ids.length === 0) return '';
  const others = space.facts.variants.filter(({ id }) => !ids.includes(id));
  if (ids.length > MOST_VARIANTS && others.length < MOST_VARIANTS) {
    return `every variant but ${listed(others.map(nameOf), 'and')}`;
  }
  return listed(space.facts.variants.filter(({ id }) => ids.includes(id)).map(nameOf), 'or');
}

function optionText(
  cube: BuildCube,
  space: BuildSpace,
  kind: 'finished' | 'arrival',
  present: boolean,
  preposition: string,
): string {
  const names = cube.flatMap((term) => {
    if (term.kind !== kind || term.present !== present) return [];
    return [`the ${nameOf(space.facts.options.get(term.id) ?? { id: term.id, name: '' })}`];
  });
  return names.length === 0 ? '' : `${preposition} ${listed(names, present ? 'and' : 'or')}`;
}

function outcomeText(cube: BuildCube, space: BuildSpace, forks: ForkWords): string {
  const found = cube.filter((term): term is Extract<BuildTerm, { kind: 'outcome' }> => term.kind === 'outcome');
  const clauses = found.map(({ id, values }) => {
    const name = nameOf(space.facts.outcomes.get(id) ?? { id, name: '' });
    return `the ${name} is ${listed(values, 'or')}`;
  });
  const ways = cube.flatMap((term) => (term.kind === 'fork' ? wayText(term.id, term.present, forks) : []));
  const all = [...clauses, ...ways];
  return all.length === 0 ? '' : `when ${listed(all, 'and')}`;
}

function wayText(id: string, taken: boolean, forks: ForkWords): string[] {
  const words = forks(Number(id));
  return words === undefined ? [] : [taken ? words.taken : words.notTaken];
}

function nameOf({ id, name }: { id: string; name: string }): string {
  return name === '' ? id : name;
}

function listed(items: readonly string[], last: 'and' | 'or'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}
