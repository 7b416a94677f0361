import type { Consumable } from '../../../model/generated/types';
import { listOf } from '../storesUses';
import type { EntryLines } from './block';
import type { Scene } from './scene';

type Kind = NonNullable<NonNullable<Consumable['kind']>['value']>;

/** The consumables of these kinds that the procedure lists. */
export function listed({ procedure }: Scene, kinds: readonly Kind[]): string[] {
  return listOf(procedure, 'consumable').flatMap(({ id }) => {
    const kind = procedure.consumables.get(id)?.entry.value.kind?.value;
    return kind !== undefined && kinds.includes(kind) ? [id] : [];
  });
}

/** How a part is cleaned; with what, only where there is one way that the family does not forbid. */
export function cleaning(scene: Scene, part: string): EntryLines {
  const cleaners = listed(scene, ['solvent', 'cleaner']);
  const [only] = cleaners;
  const kind = only === undefined ? undefined : scene.procedure.consumables.get(only)?.entry.value.kind?.value;
  const spoils = scene.family.part(part)?.neverCleanWith?.some(({ value }) => value === kind) === true;
  return [`clean: ${part}`, ...(cleaners.length === 1 && !spoils ? [`using: ${only}`] : [])];
}

/** Oil, grease or paste on a part; undefined where more than one could be meant. Anti-seize is for threads. */
export function lubrication(scene: Scene, part: string): EntryLines | undefined {
  const kinds: Kind[] = ['oil', 'grease', 'assembly-paste'];
  const threaded = scene.family.part(part)?.thread !== undefined;
  return application(part, listed(scene, threaded ? [...kinds, 'anti-seize'] : kinds));
}

export function threadlocking(scene: Scene, part: string): EntryLines | undefined {
  return application(part, listed(scene, ['threadlocker']));
}

function application(part: string, consumables: readonly string[]): EntryLines | undefined {
  return consumables.length === 1 ? [`apply: ${consumables[0]}`, `to: ${part}`] : undefined;
}
