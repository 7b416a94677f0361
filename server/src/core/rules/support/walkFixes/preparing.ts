import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert } from './edits';
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

export function threadlockFixes(scene: Scene): Candidate[] {
  return applied(scene, threadlocking(scene, scene.about));
}

function applied(scene: Scene, entry: EntryLines | undefined): Candidate[] {
  if (entry === undefined) return [];
  const consumable = entry[0]?.slice('apply: '.length) ?? '';
  const name = scene.procedure.consumables.get(consumable)?.entry.value.name?.text ?? consumable;
  const { about, showing } = scene;
  const verb = showing?.view.instruction.verb === 'tighten' ? 'tightened' : 'fitted';
  return insert(scene, `Put ${name} on ${scene.the(about)} before it is ${verb}`, 'before', showing, [entry]);
}
