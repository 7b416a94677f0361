import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert } from './edits';
import { fitting } from './fitting';
import type { Scene } from './scene';
import { fits, names } from './touching';

/**
 * What is left off is fitted where it was made ready, or before what goes on over it or holds it. Where nothing in the
 * text says so, its place is not certain.
 */
export function leftOffFixes(scene: Scene): Candidate[] {
  const { about, cause, relations } = scene;
  const over = [...relations.behind(about), ...relations.fasteners(about)];
  const next = scene.first((one) => over.some((id) => fits(one, id)), cause?.index);
  const treated = scene.last((one) => one.view.instruction.verb === 'apply' && names(one, about));
  const ready = treated !== undefined && treated.index > (cause?.index ?? -1) ? treated : undefined;
  const title = `Fit ${scene.the(about)}`;
  const alone: EntryLines[] = [[`install: ${about}`]];
  const whole = fitting(scene, about, scene.family.part(about)?.renew?.value === 'always');
  return [
    ...insert(scene, title, 'behind', ready, alone, 'failing'),
    ...insert(scene, title, 'before', next, alone, 'failing'),
    ...(whole === undefined ? [] : insert(scene, title, 'before', next, whole, 'failing')),
  ];
}
