import { FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import { type BuildSpace, buildsOf, countBuilds } from '../../builds';
import type { Ref } from '../../model/values';
import { namedBuildsRow } from './buildWords';
import { type Card, type CardRow, row } from './card';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A variant: the builds that it has, and what the family has for it alone. */
export function variantCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const variant = FamilyView.of(document)?.value.variants?.find((one) => one.id === declared)?.value;
  if (variant === undefined) return undefined;
  return {
    name,
    kind: 'variant',
    id,
    rows: [
      ...countRows(scene, id),
      ...row('Note', variant.note?.text),
      ...stepsRow('Decides in', scene.uses.of('variant', id)),
    ],
  };
}

/** An option: which variants can have it, what goes with it, and the builds that do. */
export function optionCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const option = family?.value.options?.find((one) => one.id === declared)?.value;
  if (family === undefined || option === undefined) return undefined;
  const names = (refs: readonly Ref[] | undefined, things: readonly { id: string; name: string }[]) =>
    (refs ?? []).map((ref) => things.find((one) => one.id === ref.id)?.name ?? ref.id).join(', ');
  const facts = family.buildFacts();
  return {
    name,
    kind: 'option',
    id,
    rows: [
      ...row('Variants', names(option.variants, facts.variants)),
      ...row('Only with', names(option.needs, facts.options)),
      ...row('Never with', names(option.excludes, facts.options)),
      ...countRows(scene, id),
      ...row('In this procedure', rolesOf(scene, id).join(', ')),
      ...row('Note', option.note?.text),
      ...stepsRow('Decides in', scene.uses.of('option', id)),
    ],
  };
}

/** How many builds have a variant or an option, and which. */
function countRows({ space, procedure }: Scene, id: string): CardRow[] {
  if (space === undefined) return [];
  const set = space.set({ kind: 'is', id });
  const [found, all] = [countBuilds(set, space), countBuilds(space.everything, space)];
  if (found === 0) return row('Builds', procedure === undefined ? 'none' : 'none that this procedure covers');
  return [...row('Builds', `${found} of ${all}`), ...namedBuildsRow('By name', set, space)];
}

function rolesOf({ procedure, space }: Scene, id: string): string[] {
  if (procedure === undefined || space === undefined) return [];
  const added = (procedure.value.adds ?? []).some((ref) => ref.id === id);
  const arrives = arrivesWith(space, id);
  return [...(arrives ? ['a unit may arrive with it'] : []), ...(added ? ['may be fitted'] : [])];
}

function arrivesWith(space: BuildSpace, id: string): boolean {
  return buildsOf(space.set({ kind: 'arrives', id }), space, 1).length > 0;
}
