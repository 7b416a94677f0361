import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert } from './edits';
import { fitting } from './fitting';
import type { Scene } from './scene';
import { cleaning, lubrication, threadlocking } from './stores';
import { treatedFirst } from './touching';

export function cleanFixes(scene: Scene): Candidate[] {
  const { about, showing } = scene;
  const what = showing?.view.instruction.verb === 'apply' ? 'before threadlocker is put on it' : 'before it is fitted';
  // What was put on the part already would be wiped off again.
  const treated = treatedFirst(scene, about);
  const places = [...(treated === undefined ? [] : [treated]), showing];
  const title = `Clean ${scene.the(about)} ${what}`;
  return places.flatMap((place) => insert(scene, title, 'before', place, [cleaning(scene, about)]));
}

export function inspectFixes(scene: Scene): Candidate[] {
  const { about, showing } = scene;
  return insert(scene, `Inspect ${scene.the(about)} before it is fitted`, 'before', showing, [[`inspect: ${about}`]]);
}

export function lubricateFixes(scene: Scene): Candidate[] {
  return applied(scene, lubrication(scene, scene.about));
}

/** On a fastener that was loosened in place it has to come off first: threadlocker does not get under it there. */
export function threadlockFixes(scene: Scene): Candidate[] {
  const { about, showing } = scene;
  if (showing?.view.instruction.verb !== 'tighten') return applied(scene, threadlocking(scene, about));
  const again = fitting(scene, about, false);
  if (again === undefined) return [];
  const title = `Take off ${scene.the(about)} and put threadlocker on it`;
  return insert(scene, title, 'before', showing, [[`remove: ${about}`], ...again]);
}

function applied(scene: Scene, entry: EntryLines | undefined): Candidate[] {
  if (entry === undefined) return [];
  const consumable = entry[0]?.slice('apply: '.length) ?? '';
  const name = scene.procedure.consumables.get(consumable)?.entry.value.name?.text ?? consumable;
  const { about, showing } = scene;
  return insert(scene, `Put ${name} on ${scene.the(about)} before it is fitted`, 'before', showing, [entry]);
}
