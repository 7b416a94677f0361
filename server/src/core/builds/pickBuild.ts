import { nearest } from '../text/near';
import type { BuildSet } from './buildSet';
import type { BuildSpace } from './buildSpace';
import { conditionAtomText, parseConditionText } from './condition';
import { type DiagramNode, NEVER } from './decisionDiagram';
import { type Build, makeBuild } from './listBuilds';
import { checkPickedNames, type PickedNames, type PickProblem } from './pickProblems';
import { type Literal, whyImpossible } from './whyImpossible';

const ARRIVES = 'arrives=';

export type PickedBuild =
  | { readonly kind: 'picked'; readonly build: Build; readonly set: BuildSet }
  | { readonly kind: 'refused'; readonly problems: readonly PickProblem[] };

/**
 * Reads a build as a user names it: `v4-28r,wheel-44,arrives=cover-44`, in any order.
 *
 * What is named is the finished unit, exactly: an option that is not named is not in it. How the unit arrives stays open
 * unless it is stated, because the same finished unit comes out of different work: a wheel that arrived is put back, one
 * that did not is new, and one that is replaced must first come off. A sheet that chose one of these silently would be
 * wrong for the others. One `arrives=` states the whole received unit, so options not named there did not arrive;
 * `arrives=none` says that none did. What arrives stays, so it need not be named again unless something named replaces
 * it. Outcomes stay open: nobody knows them before the work. A family with a single variant need not be told it.
 */
export function pickBuild(space: BuildSpace, text: string): PickedBuild {
  const names = text.split(/[\s,]+/).filter((name) => name !== '');
  const problems: PickProblem[] = [];
  const picked = sortNames(space, names, problems);
  if (problems.length === 0) problems.push(...checkPickedNames(space, picked));
  const variant = picked.variants[0];
  if (problems.length > 0 || variant === undefined) return { kind: 'refused', problems };
  const literals = literalsOf(space, variant, picked);
  const set = space.setOf(space.diagram.all(literals.map(({ node }) => node)));
  if (!set.isEmpty) return { kind: 'picked', build: makeBuild(space, variant, picked.finished, picked.arrives), set };
  const because = whyImpossible(space, literals);
  return {
    kind: 'refused',
    problems: [{ kind: 'does-not-exist', because, text: `No build is ${because.join(', ')}` }],
  };
}

function sortNames(space: BuildSpace, names: readonly string[], problems: PickProblem[]): PickedNames {
  const variants = new Set<string>();
  const finished = new Set<string>();
  let arrives: Set<string> | undefined;
  for (const name of names) {
    const atom = parseConditionText(name);
    if (name === 'arrives=none') arrives ??= new Set();
    else if (atom === undefined || space.unknownNames(atom).length > 0) problems.push(unknownId(space, name));
    else if (atom.kind === 'arrives') arrives = new Set(arrives).add(atom.id);
    else if (atom.kind === 'is') (space.facts.options.has(atom.id) ? finished : variants).add(atom.id);
    else {
      const text = `${conditionAtomText(atom)} is found on the bench, so it is not part of a build`;
      problems.push({ kind: 'outcome-named', name, text });
    }
  }
  if (variants.size === 0 && space.facts.variants.length === 1) variants.add(space.facts.variants[0]?.id ?? '');
  const added = [...finished].filter((id) => arrives?.has(id) !== true);
  for (const id of arrives ?? []) if (!isReplaced(space, id, added)) finished.add(id);
  return { variants: [...variants], finished, arrives };
}

function isReplaced(space: BuildSpace, id: string, added: readonly string[]): boolean {
  const excludes = space.facts.options.get(id)?.excludes;
  return added.some((other) => excludes?.has(other) && space.facts.options.get(other)?.mayBeAdded);
}

function unknownId(space: BuildSpace, name: string): PickProblem {
  const { knownVariants, options } = space.facts;
  const [prefix, id] = name.startsWith(ARRIVES) ? [ARRIVES, name.slice(ARRIVES.length)] : ['', name];
  const known = prefix === '' ? [...knownVariants.keys(), ...options.keys()] : options.keys();
  const near = nearest(id, known).map((other) => `${prefix}${other}`);
  const hint = near.length === 0 ? '' : `; near: ${near.join(', ')}`;
  return { kind: 'unknown-id', name, near, text: `No variant or option is called ${name}${hint}` };
}

function literalsOf(space: BuildSpace, variant: string, { finished, arrives }: PickedNames): Literal[] {
  const { diagram, variables } = space;
  const said = (text: string, node: DiagramNode, holds: boolean): Literal => {
    return { text, node: holds ? node : diagram.not(node), absence: !holds };
  };
  const literals = [said(variant, variables.variants.get(variant) ?? NEVER, true)];
  for (const id of space.facts.options.keys()) {
    const nodes = variables.options.get(id);
    const stays = finished.has(id);
    literals.push(said(stays ? `with ${id}` : `without ${id}`, nodes?.finished ?? NEVER, stays));
    if (arrives === undefined) continue;
    const came = arrives.has(id);
    literals.push(said(came ? `received with ${id}` : `received without ${id}`, nodes?.arrives ?? NEVER, came));
  }
  return literals;
}
