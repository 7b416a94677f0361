import type { OptionFact } from './buildFacts';
import type { BuildSpace } from './buildSpace';

/** Why a build that a user named cannot be picked. `text` says it in a sentence without its final stop. */
export type PickProblem = { readonly text: string } & (
  | { readonly kind: 'unknown-id'; readonly name: string; readonly near: readonly string[] }
  | { readonly kind: 'outcome-named'; readonly name: string }
  | { readonly kind: 'several-variants'; readonly variants: readonly string[] }
  | { readonly kind: 'variant-missing'; readonly choices: readonly string[] }
  /** A variant that the procedure does not cover, or an option that can neither arrive nor be added. */
  | { readonly kind: 'not-covered'; readonly id: string }
  | { readonly kind: 'cannot-arrive'; readonly option: string }
  | { readonly kind: 'option-needs'; readonly option: string; readonly missing: readonly string[] }
  | { readonly kind: 'option-excludes'; readonly option: string; readonly other: string }
  | { readonly kind: 'option-not-for-variant'; readonly option: string; readonly variant: string }
  /** The names are fine one by one. `because`: a few of them, and of what was left out, that contradict each other. */
  | { readonly kind: 'does-not-exist'; readonly because: readonly string[] }
);

/** The names a user gave, sorted. `arrives` is undefined where the received unit was not described. */
export interface PickedNames {
  readonly variants: readonly string[];
  readonly finished: Set<string>;
  readonly arrives: Set<string> | undefined;
}

/** What is wrong with known names, told by the fact behind it rather than by "does not exist". */
export function checkPickedNames(space: BuildSpace, picked: PickedNames): PickProblem[] {
  const finished = unitProblems(space, picked.finished, picked.variants[0], '');
  const received = unitProblems(space, picked.arrives ?? new Set(), picked.variants[0], ' when it arrives');
  return [
    ...variantProblems(space, picked.variants),
    ...coverProblems(space, picked),
    ...finished,
    // What is wrong with both units is said once.
    ...received.filter(({ text }) => !finished.some((said) => text.startsWith(said.text))),
  ];
}

function variantProblems(space: BuildSpace, variants: readonly string[]): PickProblem[] {
  const choices = space.facts.variants.map(({ id }) => id);
  if (variants.length === 0) {
    return [{ kind: 'variant-missing', choices, text: `Name the variant: ${choices.join(', ')}` }];
  }
  if (variants.length === 1) return [];
  return [{ kind: 'several-variants', variants, text: `A unit is one variant, not ${variants.join(' and ')}` }];
}

function coverProblems(space: BuildSpace, { variants, finished, arrives }: PickedNames): PickProblem[] {
  const { options } = space.facts;
  const covered = space.variables.variants;
  const strange = variants.filter((id) => !covered.has(id));
  const notCovered = [...finished].filter((id) => !options.get(id)?.mayArrive && !options.get(id)?.mayBeAdded);
  const cannotArrive = [...(arrives ?? [])].filter((id) => !options.get(id)?.mayArrive && !notCovered.includes(id));
  return [
    ...[...strange, ...notCovered].map(
      (id) => ({ kind: 'not-covered', id, text: `${id} is not covered here` }) as const,
    ),
    ...cannotArrive.map((option) => {
      return { kind: 'cannot-arrive', option, text: `No unit covered here arrives with ${option}` } as const;
    }),
  ];
}

function unitProblems(
  space: BuildSpace,
  unit: ReadonlySet<string>,
  variant: string | undefined,
  when: string,
): PickProblem[] {
  return [...unit].flatMap((id) => {
    const option = space.facts.options.get(id);
    return option === undefined ? [] : optionProblems(option, unit, variant, when);
  });
}

function optionProblems(
  { id, needs, excludes, variants }: OptionFact,
  unit: ReadonlySet<string>,
  variant: string | undefined,
  when: string,
): PickProblem[] {
  const problems: PickProblem[] = [];
  const missing = needs.filter((other) => !unit.has(other));
  if (missing.length > 0) {
    problems.push({ kind: 'option-needs', option: id, missing, text: `${id} needs ${missing.join(' and ')}${when}` });
  }
  for (const other of excludes) {
    if (!unit.has(other) || other < id) continue;
    problems.push({ kind: 'option-excludes', option: id, other, text: `${id} and ${other} exclude each other${when}` });
  }
  if (variant !== undefined && variants !== 'every' && !variants.includes(variant)) {
    problems.push({ kind: 'option-not-for-variant', option: id, variant, text: `${id} is not for ${variant}` });
  }
  return problems;
}
