import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert, moveInstruction, moveStep } from './edits';
import { fitting } from './fitting';
import { partFirst, takeOutPart } from './partLists';
import type { Place, Scene } from './scene';
import { takeOffFirst } from './takingOff';
import { fits, isAlone, names } from './touching';

/** What was fitted too early goes on later, or the part goes on sooner. */
export function inTheWayFixes(scene: Scene): Candidate[] {
  const { showing, cause, about, other } = scene;
  if (showing !== undefined && names(showing, other)) return partFirst(scene, showing, about, other);
  const trial = cause?.view.instruction.verb === 'install' && cause.view.instruction.trial?.value === true;
  if (trial) return takeOffFirst(scene, about, other);
  return [
    ...swap(scene, cause, showing, `Move the fitting of ${scene.the(other)} behind ${scene.the(about)}`, 'behind'),
    ...swap(scene, showing, cause, `Move the fitting of ${scene.the(about)} before ${scene.the(other)}`, 'before'),
  ];
}

/** What is loosened, taken off or tightened before it is there: it is fitted later, or was never to be done. */
export function notFittedFixes(scene: Scene): Candidate[] {
  const { showing, about } = scene;
  const fitted = scene.first((one) => fits(one, about), showing?.index);
  if (showing === undefined) return [];
  const { verb } = showing.view.instruction;
  const taken = verb === 'loosen' || verb === 'remove' ? takeOutPart(scene) : [];
  return [...taken, ...afterFitting(scene, fitted), ...fitFirst(scene, about, showing)];
}

/** What a fastener holds is fitted later, or its fitting is missing. */
export function nothingHeldFixes(scene: Scene): Candidate[] {
  const { showing, about, other } = scene;
  const fitted = scene.first((one) => fits(one, other), showing?.index);
  // Where the fastener was fitted too early as well, what it holds goes before that.
  const fastener = scene.last((one) => fits(one, about), showing?.index);
  const title = `Move the fitting of ${scene.the(other)} before ${scene.the(about)}`;
  const before = fitted?.step.phase === fastener?.step.phase ? swap(scene, fitted, fastener, title, 'before') : [];
  return [
    ...before,
    ...afterFitting(scene, fitted),
    ...(fastener === undefined ? [] : fitFirst(scene, other, fastener)),
    ...fitFirst(scene, other, showing),
  ];
}

/** Within a phase the order alone may be wrong. */
function afterFitting(scene: Scene, fitted: Place | undefined): Candidate[] {
  const { showing } = scene;
  if (showing === undefined || fitted === undefined || fitted.step.phase !== showing.step.phase) return [];
  const { verb } = showing.view.instruction;
  const [part] = scene.failure.other === undefined ? [scene.about] : [scene.other];
  return [
    ...swap(
      scene,
      showing,
      fitted,
      `Move "${verb}: ${scene.about}" behind the fitting of ${scene.the(part)}`,
      'behind',
    ),
    ...swap(scene, fitted, showing, `Move the fitting of ${scene.the(part)} before this`, 'before'),
  ];
}

/** What was made ready before needs no more than to be fitted. */
function fitFirst(scene: Scene, part: string, beside: Place | undefined): Candidate[] {
  const title = `Fit ${scene.the(part)} before this`;
  const whole = fitting(scene, part, false);
  const ways: EntryLines[][] = [[[`install: ${part}`]], ...(whole === undefined ? [] : [whole])];
  return ways.flatMap((entries) => insert(scene, title, 'before', beside, entries, 'failing'));
}

/** An instruction that names one part moves alone; with a step that is about nothing else, or whose order alone is wrong, the step does. */
function swap(
  scene: Scene,
  moved: Place | undefined,
  beside: Place | undefined,
  title: string,
  side: 'before' | 'behind',
): Candidate[] {
  const alone = moved !== undefined && isAlone(moved) ? moveInstruction(scene, title, moved, side, beside) : [];
  return [...alone, ...moveStep(scene, moved, side, beside)];
}
