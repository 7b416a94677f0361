import type { EntryLines } from './block';
import type { Scene } from './scene';
import { cleaning, lubrication, threadlocking } from './stores';

/** The instructions that fit a part, with what the family asks before; undefined where one of them would have to be made up. */
export function fitting(scene: Scene, part: string, renewed: boolean): EntryLines[] | undefined {
  const facts = scene.family.part(part);
  if (facts === undefined || facts.sizes !== undefined) return undefined;
  const entries: EntryLines[] = [];
  for (const { value } of facts.beforeFitting ?? []) {
    const entry = value === undefined ? undefined : preparation(scene, part, value, renewed);
    if (entry === undefined) return undefined;
    if (entry.length > 0) entries.push(entry);
  }
  return [...entries, [`install: ${part}`]];
}

/** The instructions that take a used part off and fit a new one. */
export function renewal(scene: Scene, part: string): EntryLines[] | undefined {
  const fitted = fitting(scene, part, true);
  return fitted === undefined ? undefined : [[`remove: ${part}`], ...fitted];
}

/** What one word of `before-fitting` asks for: nothing of a new part that is clean and sound already. */
function preparation(scene: Scene, part: string, word: string, renewed: boolean): EntryLines | undefined {
  if (word === 'clean') return renewed ? [] : cleaning(scene, part);
  if (word === 'inspect') return renewed ? [] : [`inspect: ${part}`];
  if (word === 'lubricate') return lubrication(scene, part);
  if (word === 'threadlock') return threadlocking(scene, part);
  return undefined;
}
